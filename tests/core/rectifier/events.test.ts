import { expect, test } from 'vitest';
import { firstFailure, type Level } from '../../../core/rectifier/events';

/** Looks at a guard at both ends of a stretch and asks for its first failure there. */
function failureOf(value: (x: number) => number, slope: (x: number) => number, low: number, high: number): number | undefined {
  const guard = (x: number): Level => ({ value: value(x), slope: slope(x) });
  return firstFailure(guard, low, guard(low), high, guard(high));
}

test.each([
  ['cos x', Math.cos, (x: number) => -Math.sin(x), 0, 2, Math.PI / 2],
  ['1 − x³', (x: number) => 1 - x ** 3, (x: number) => -3 * x ** 2, 0, 3, 1],
  ['e⁻²⁰ˣ − e⁻²⁰', (x: number) => Math.exp(-20 * x) - Math.exp(-20), (x: number) => -20 * Math.exp(-20 * x), 0, 5, 1],
])('%s, below zero at the second look, fails where it crosses', (_name, value, slope, low, high, expected) => {
  expect(Math.abs(failureOf(value, slope, low, high)! - expected)).toBeLessThan(1e-7);
});

test('of a dip between two looks the way down is found: (x − 0.7)² − 0.01 crosses zero at 0.6', () => {
  const angle = failureOf(
    (x) => (x - 0.7) ** 2 - 0.01,
    (x) => 2 * (x - 0.7),
    0,
    1,
  );
  expect(angle).toBeCloseTo(0.6, 10);
});

test('a dip too narrow for the cubic through the ends is found all the same', () => {
  const angle = failureOf(
    (x) => (x - 0.7) ** 2 - 1e-6,
    (x) => 2 * (x - 0.7),
    0,
    1,
  );
  expect(angle).toBeCloseTo(0.7 - 1e-3, 9);
});

test.each([
  ['a valley above zero', (x: number) => (x - 0.7) ** 2 + 0.001, (x: number) => 2 * (x - 0.7)],
  ['a hump', (x: number) => 1 - (x - 0.5) ** 2, (x: number) => -2 * (x - 0.5)],
  ['a fall that ends above zero', (x: number) => 1.5 - x, () => -1],
  ['zero itself, but for rounding', () => -1e-12, () => 0],
])('%s holds', (_name, value, slope) => {
  expect(failureOf(value, slope, 0, 1)).toBeUndefined();
});
