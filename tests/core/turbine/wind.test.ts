import { expect, test } from 'vitest';
import { peakedCoefficient } from '../../../core/turbine/power-coefficient';
import { startTorque, startWind, wheelPower, windPower, type Wheel } from '../../../core/turbine/wind';

const wheel: Wheel = { radius: 1, airDensity: 1.225, coefficient: peakedCoefficient(0.35, 6, 11) };

test('a wheel of 2 m pulls away at 5 m/s with 0.56 N·m', () => {
  // Cp/λ at standstill 0.2 · 0.35/6 = 0.011667; ½ · 1.225 · π · 1² · 5² · 1 m · 0.011667 = 0.5612
  expect(startTorque(wheel, 5)).toBeCloseTo(0.5612, 3);
  // Torque goes with the cube of the radius.
  expect(startTorque({ ...wheel, radius: 2 }, 5) / startTorque(wheel, 5)).toBeCloseTo(8, 9);
});

test('with 0.04 N·m of drag it starts at 1.3 m/s', () => {
  // 0.022449 v² = 0.04 → v = 1.335
  expect(startWind(wheel, 0.04)).toBeCloseTo(1.335, 2);
});

test('start torque is shaft power over speed near standstill', () => {
  expect(wheelPower(wheel, 5, 1e-3) / 1e-3).toBeCloseTo(startTorque(wheel, 5), 3);
});

test('a wheel without start torque never starts by itself', () => {
  expect(startWind({ ...wheel, coefficient: (ratio) => (ratio < 2 ? -0.01 * ratio : 0.3) }, 0.04)).toBeNull();
});

test('in no wind nothing pulls', () => expect(startTorque(wheel, 0)).toBe(0));

test('a wheel of 4 m gives its best in 5 m/s at 15 rad/s, where its tips go six times the wind', () => {
  expect(wheelPower({ ...wheel, radius: 2 }, 5, 15)).toBeCloseTo(0.35 * windPower(5, 2, 1.225), 9);
});
