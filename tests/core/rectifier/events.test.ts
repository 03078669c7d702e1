import { expect, test } from 'vitest';
import { failure, suspicion, type Look } from '../../../core/rectifier/events';

const looks = (guard: (angle: number) => number, angles: number[]): Look[] => angles.map((angle) => ({ angle, guards: [1, guard(angle)] }));

test('a guard that is negative at the last look failed since the one before', () => {
  const seen = looks((x) => 1.5 - x, [0, 1, 2]);
  expect(suspicion(seen)).toEqual({ low: seen[1], high: 2 });
  expect(suspicion(seen.slice(1))).toEqual({ low: seen[1], high: 2 });
});

test('a dip between two looks is found at its bottom: (x − 0.7)² − 0.01 is positive at 0, 0.5 and 1', () => {
  const seen = looks((x) => (x - 0.7) ** 2 - 0.01, [0, 0.5, 1]);
  expect(suspicion(seen)).toEqual({ low: seen[1], high: expect.closeTo(0.7, 12) as number });
  const early = looks((x) => (x - 0.3) ** 2 - 0.01, [0, 0.5, 1]);
  expect(suspicion(early)).toEqual({ low: early[0], high: expect.closeTo(0.3, 12) as number });
});

test('of two dips the deeper is looked at', () => {
  const seen = [0, 0.5, 1].map((x) => ({ angle: x, guards: [(x - 0.7) ** 2 - 0.01, (x - 0.8) ** 2 - 0.03] }));
  expect(suspicion(seen)?.high).toBeCloseTo(0.8, 12);
});

test('a valley above zero, a hump and two looks hint at nothing', () => {
  expect(suspicion(looks((x) => (x - 0.7) ** 2 + 0.01, [0, 0.5, 1]))).toBeUndefined();
  expect(suspicion(looks((x) => 1 - (x - 0.5) ** 2, [0, 0.5, 1]))).toBeUndefined();
  expect(suspicion(looks((x) => (x - 0.7) ** 2 - 0.01, [0.5, 1]))).toBeUndefined();
});

test.each([
  ['cos x', Math.cos, 0, 2, Math.PI / 2],
  ['1 − x³', (x: number) => 1 - x ** 3, 0, 3, 1],
  ['e⁻²⁰ˣ − e⁻²⁰', (x: number) => Math.exp(-20 * x) - Math.exp(-20), 0, 5, 1],
])('%s fails where it crosses zero, and the angle lies just past it', (_name, margin, low, high, expected) => {
  const angle = failure(margin, low, margin(low), high, margin(high));
  expect(margin(angle)).toBeLessThan(0);
  expect(angle - expected).toBeLessThan(1e-9);
});
