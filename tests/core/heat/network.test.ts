import { describe, expect, test } from 'vitest';
import { HOTTEST } from '../../../core/heat/cooling';
import { adiabaticSeconds } from '../../../core/heat/brake';
import { heatBalance, heatCapacity, secondsToReach, type HeatBalance } from '../../../core/heat/network';

const COEFFICIENT = 0.00393;
/** A constant current through copper that loses `watts` at 20 °C. */
const copper = (watts: number, conductance: number, airTemperature = 20): HeatBalance => ({
  lossAt: (t) => watts * (1 + COEFFICIENT * (t - 20)),
  conductance: () => conductance,
  airTemperature,
});

describe('where copper settles', () => {
  test('100 W at 20 °C with 2 W/K settle at 82.2 °C', () => {
    // 100 (1 + 0.00393 x) = 2 x → x = 100 / (2 − 0.393) = 62.23 K
    expect(heatBalance(copper(100, 2))).toMatchObject({ runaway: false });
    expect(heatBalance(copper(100, 2)).temperature).toBeCloseTo(82.23, 2);
  });

  test('a steady loss settles at loss over conductance', () => {
    expect(heatBalance({ lossAt: () => 100, conductance: () => 2, airTemperature: 10 }).temperature).toBeCloseTo(60, 6);
  });

  test('when each kelvin brings more loss than it carries away, it is a run-away', () => {
    // 600 · 0.00393 = 2.36 W/K of loss against 2 W/K of conductance.
    expect(heatBalance(copper(600, 2))).toEqual({ temperature: HOTTEST, runaway: true });
  });

  test('of two balances the cooler one is found: it is met first', () => {
    // 50 + (x/10)² = 3 x in x = T − 20: x = 150 ± √(150² − 5000) = 17.71 and 282.29.
    const found = heatBalance({ lossAt: (t) => 50 + ((t - 20) / 10) ** 2, conductance: () => 3, airTemperature: 20 });
    expect(found.temperature).toBeCloseTo(37.71, 2);
  });
});

describe('time to warm', () => {
  test('never past a balance on the way', () => {
    const dip: HeatBalance = { lossAt: (t) => (t > 50 && t < 70 ? 0 : 300), conductance: () => 2, airTemperature: 20 };
    expect(secondsToReach(dip, 1000, 20, 90)).toBeUndefined();
  });

  test('with no cooling it is the adiabatic time', () => {
    expect(secondsToReach(copper(1000, 0), 385, 20, 120)).toBeCloseTo(adiabaticSeconds(1000, 385, 20, 120, COEFFICIENT), 6);
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
