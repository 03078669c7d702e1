import { expect, test } from 'vitest';
import { fillOf, HAND_FILL, mostTurns, PATTERN_FILL } from '../../../core/wire/fill';

test('one wire as wide as its square window fills π/4 of it, the square pattern’s limit', () => {
  expect(fillOf(1, 1, 1e-3, 1e-6)).toBeCloseTo(PATTERN_FILL.square, 12);
});

test('patterns fill more than a hand does', () => {
  expect(PATTERN_FILL.hexagonal).toBeCloseTo(0.9069, 4);
  expect(HAND_FILL).toBeLessThan(PATTERN_FILL.square);
});

test('the most turns fill no more than a hand reaches, one more does', () => {
  const most = mostTurns(2, 1.1e-3, 0.018, 0.01);
  expect(fillOf(most, 2, 1.1e-3, 0.018 * 0.01)).toBeLessThanOrEqual(HAND_FILL);
  expect(fillOf(most + 1, 2, 1.1e-3, 0.018 * 0.01)).toBeGreaterThan(HAND_FILL);
});

test('a strand thicker than the leg does not go in however few there are', () => {
  expect(mostTurns(1, 2e-3, 0.001, 0.1)).toBe(0);
});
