import { expect, test } from 'vitest';
import { chanceOf, normalTail, studentFactor } from '../../../core/numeric/distribution';

// Abramowitz & Stegun 1964, table 26.10 (percentage points of t, both tails), from memory.
test.each([
  [1, 12.706],
  [2, 4.303],
  [3, 3.182],
  [5, 2.571],
  [10, 2.228],
  [30, 2.042],
  [120, 1.98],
])('with %s degrees of freedom 95 in 100 lie within %s standard errors', (degrees, t) => {
  expect(studentFactor(0.95, degrees)).toBeCloseTo(t, 3);
});

test('with very many degrees of freedom t becomes the normal factor', () => {
  expect(studentFactor(0.95, 100_000)).toBeCloseTo(1.95999, 4);
});

// Abramowitz & Stegun 1964, table 26.8 (percentage points of χ²), from memory.
test.each([
  [1, 3.841, 0.05],
  [5, 11.07, 0.05],
  [10, 18.307, 0.05],
  [30, 43.773, 0.05],
  [10, 29.588, 0.001],
])('χ² with %s degrees of freedom passes %s with a chance of %s', (degrees, chi, chance) => {
  expect(Math.abs(chanceOf(chi, degrees) - chance)).toBeLessThan(0.1 * chance);
});

test('without degrees of freedom nothing is unlikely', () => {
  expect(chanceOf(100, 0)).toBe(1);
});

test('half of a normal distribution lies beyond its middle, 2.5 % beyond 1.96', () => {
  expect(normalTail(0)).toBeCloseTo(0.5, 6);
  expect(normalTail(1.959964)).toBeCloseTo(0.025, 6);
  expect(normalTail(-1.959964)).toBeCloseTo(0.975, 6);
});
