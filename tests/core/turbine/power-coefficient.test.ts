import { expect, test } from 'vitest';
import { measuredCoefficient, peakedCoefficient } from '../../../core/turbine/power-coefficient';

test('the curve meets its peak and its run-away, is flat at the peak and brakes beyond run-away', () => {
  const cp = peakedCoefficient(0.35, 6, 11);
  expect(cp(0)).toBe(0);
  expect(cp(6)).toBeCloseTo(0.35, 12);
  expect(cp(11)).toBeCloseTo(0, 12);
  expect(cp(12)).toBeLessThan(0);
  expect((cp(6.001) - cp(5.999)) / 0.002).toBeCloseTo(0, 4);
  for (let ratio = 0.1; ratio < 11; ratio += 0.1) expect(cp(ratio)).toBeGreaterThan(0);
});

test('measured points are met, joined without overshoot, and run out to a run-away', () => {
  const cp = measuredCoefficient([
    [2, 0.1],
    [4, 0.3],
    [8, 0.2],
  ]);
  expect(cp(4)).toBeCloseTo(0.3, 12);
  expect(cp(8)).toBeCloseTo(0.2, 12);
  for (let ratio = 2; ratio < 8; ratio += 0.1) expect(cp(ratio)).toBeLessThanOrEqual(0.3 + 1e-12);
  expect(cp(0)).toBeCloseTo(0, 12);
  expect(cp(1)).toBeGreaterThan(0);
  expect(cp(1)).toBeLessThan(0.1);
  expect(cp(100)).toBeLessThan(0);
});

test('below the first point that turns, torque is steady, whatever was read at standstill', () => {
  const points: [number, number][] = [
    [3, 0.06],
    [5, 0.3],
    [8, 0.1],
  ];
  const cp = measuredCoefficient(points);
  expect(cp(1.5)).toBeCloseTo(0.03, 12);
  expect(measuredCoefficient([[0, 0.05], ...points])(0)).toBe(0);
});

test('half way from the peak to run-away three quarters of the peak are left', () => {
  // A parabola: 1 − ½².
  expect(peakedCoefficient(0.4, 6, 10)(8)).toBeCloseTo(0.3, 12);
});
