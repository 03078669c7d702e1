import { expect, test } from 'vitest';
import { balances, settledSpeed, speedFrom, windToReach, type LoadPoint } from '../../../core/turbine/match';
import { peakedCoefficient } from '../../../core/turbine/power-coefficient';
import { turbineStage } from '../../../core/turbine/stage';
import { windPower, type Wheel } from '../../../core/turbine/wind';

const wheel: Wheel = { radius: 1, airDensity: 1.225, coefficient: peakedCoefficient(0.35, 6, 11) };
const curve = (watts: (speed: number) => number): LoadPoint[] =>
  Array.from({ length: 201 }, (_, i) => ({ speed: i * 0.6 + 1e-6, shaftWatts: watts(i * 0.6 + 1e-6) }));

test('a load that takes just the best power at λ = 6 settles there', () => {
  // At 10 m/s the best is 0.35·½·1.225·π·1000 = 673.5 W at 60 rad/s; a cubic load through that point takes the best power at every wind.
  const best = 0.35 * windPower(10, 1, 1.225);
  expect(best).toBeCloseTo(673.5, 1);
  const load = curve((w) => best * (w / 60) ** 3);
  for (const wind of [5, 8, 10]) expect(settledSpeed(balances(wheel, wind, load))).toBeCloseTo(6 * wind, 0);
});

test('without load the wheel runs away to λ = 11', () => {
  expect(
    settledSpeed(
      balances(
        wheel,
        8,
        curve(() => 0),
      ),
    ),
  ).toBeCloseTo(88, 0);
});

test('drag above the start-up torque keeps it still', () => {
  expect(
    settledSpeed(
      balances(
        wheel,
        3,
        curve((w) => 5 * w),
      ),
    ),
  ).toBe(0);
});

test('balances come in turn, stable and unstable, where a stiff load crosses the hump twice', () => {
  const load = curve((w) => (w < 20 ? 0 : 40 * (w - 20)));
  const found = balances(wheel, 10, load);
  found.slice(1).forEach((balance, i) => expect(balance.stable).not.toBe(found[i].stable));
  expect(found[0].stable).toBe(true);
});

test('the wind that reaches a speed without drag is that of run-away, and drag asks for more', () => {
  const turbine = turbineStage({ rows: 1, diameter: 2, peakCp: 0.35, tipSpeedRatio: 6, runawayRatio: 11 }, { airDensity: 1.225 });
  expect(windToReach(turbine, 55, 0)).toBeCloseTo(5, 3);
  const dragged = windToReach(turbine, 55, 40)!;
  expect(dragged).toBeGreaterThan(5);
  expect(windPower(dragged, 1, 1.225) * wheel.coefficient(55 / dragged)).toBeCloseTo(40, 3);
});

test('a shaft that already turns goes to the stable balance on its own side of the unstable one', () => {
  const found = [
    { speed: 10, stable: true },
    { speed: 30, stable: false },
    { speed: 50, stable: true },
  ];
  expect([5, 29, 31, 70].map((from) => speedFrom(found, from))).toEqual([10, 10, 50, 50]);
});

test('a shaft braked at every speed stops', () => expect(speedFrom([], 40)).toBe(0));

test('a wheel that cannot pass its first, unstable balance stays still', () => {
  const found = [
    { speed: 5, stable: false },
    { speed: 20, stable: true },
  ];
  expect(settledSpeed(found)).toBe(0);
});
