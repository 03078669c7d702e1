import { expect, test } from 'vitest';
import { quantileOf } from '../../../core/numeric/quantile';
import { createRandom } from '../../../core/numeric/random';

test('a quantile lies between the values of its rank', () => {
  const sorted = [0, 1, 2, 3, 4];
  expect(quantileOf(sorted, 0.5).value).toBe(2);
  expect(quantileOf(sorted, 0.05).value).toBeCloseTo(0.2, 12);
  expect(quantileOf([7], 0.95)).toEqual({ value: 7, low: 7, high: 7 });
  expect(quantileOf([1, 2, Infinity, Infinity], 0.95).value).toBe(Infinity);
});

test('its interval holds the true quantile 19 times in 20', () => {
  // Of even numbers in 0 … 1 the quantile is the share itself. 2000 samples of 400; the count is binomial, ± 4 standard deviations.
  const random = createRandom(3);
  let held = 0;
  for (let k = 0; k < 2000; k++) {
    const sorted = Float64Array.from({ length: 400 }, () => random.uniform()).sort();
    const { low, high } = quantileOf(sorted, 0.05);
    if (low <= 0.05 && 0.05 <= high) held++;
  }
  expect(held / 2000).toBeGreaterThan(0.95 - 4 * Math.sqrt((0.95 * 0.05) / 2000));
  expect(held / 2000).toBeLessThan(0.995);
});
