import { describe, expect, test } from 'vitest';
import { heatCapacity, secondsToReach, type HeatBalance } from '../../../core/heat/network';

const COEFFICIENT = 0.00393;
/** A constant current through copper that loses `watts` at 20 °C. */
const copper = (watts: number, conductance: number, airTemperature = 20): HeatBalance => ({
  lossAt: (t) => watts * (1 + COEFFICIENT * (t - 20)),
  conductance: () => conductance,
  airTemperature,
});

describe('time to warm', () => {
  test('never past a balance on the way', () => {
    const dip: HeatBalance = { lossAt: (t) => (t > 50 && t < 70 ? 0 : 300), conductance: () => 2, airTemperature: 20 };
    expect(secondsToReach(dip, 1000, 20, 90)).toBeUndefined();
  });

  test('with no cooling it is the adiabatic time', () => {
    // C dT/dt = P (1 + α x): 385 / (0.00393 · 1000) · ln(1 + 0.00393 · 100) = 97.964 · 0.331460 = 32.471 s; a steady 1000 W: 385 · 100 / 1000 = 38.5 s.
    expect(secondsToReach(copper(1000, 0), 385, 20, 120)).toBeCloseTo(32.471, 3);
    expect(secondsToReach({ ...copper(0, 0), lossAt: () => 1000 }, 385, 20, 120)).toBeCloseTo(38.5, 6);
  });

  test('with cooling it is the time constant’s logarithm', () => {
    // C/G = 1000/2 = 500 s; 100 W: 50 K at last; to 40 K: −500 ln(1 − 40/50) = 804.7 s
    const steady: HeatBalance = { lossAt: () => 100, conductance: () => 2, airTemperature: 20 };
    expect(secondsToReach(steady, 1000, 20, 60)).toBeCloseTo(804.72, 1);
  });

  test('never above where it settles', () => expect(secondsToReach(copper(100, 2), 1000, 20, 90)).toBeUndefined());

  test('no time to where it is', () => expect(secondsToReach(copper(100, 2), 1000, 90, 80)).toBe(0));
});

test('2 kg of copper in half a litre of resin take 1430 J/K', () => {
  // 2 · 385 + 1100 · 1200 · 0.0005 = 770 + 660
  expect(heatCapacity('copper', 2, 0.0005)).toBeCloseTo(1430, 9);
});
