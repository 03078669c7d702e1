import { expect, test } from 'vitest';
import { refined } from '../../../core/numeric/refine';

const sum = (known: readonly number[], weights: readonly number[]) => known.reduce((total, value, i) => total + value * weights[i], 0);

function sampled(count: number, stride: number, f: (x: number) => number, tolerance: number) {
  const worked: number[] = [];
  const work = (place: number) => {
    worked.push(place);
    return f(place);
  };
  const { at } = refined<number>(count, stride, { work, mix: sum, far: (guess, value) => Math.abs(guess - value) > tolerance });
  const quarters = Array.from({ length: 4 * (count - 1) + 1 }, (_, i) => i / 4);
  return { at, worked, error: Math.max(...quarters.map((x) => Math.abs(at(x) - f(x)))) };
}

test('a cubic is exact from the first places and their middles', () => {
  const { error, worked } = sampled(49, 12, (x) => 1 + x * (2 - x * (0.3 - 0.01 * x)), 1e-6);
  expect(error).toBeLessThan(1e-9);
  expect(worked.length).toBe(9);
});

test('a smooth function comes out far better than the tolerance, from a part of its places, none of them worked out twice', () => {
  const { error, worked } = sampled(61, 10, (x) => Math.sin(x / 12), 1e-2);
  expect(error).toBeLessThan(2e-3);
  expect(worked.length).toBeLessThan(25);
  expect(new Set(worked).size).toBe(worked.length);
});

test('about a kink every place is worked out', () => {
  const { error, worked } = sampled(49, 12, (x) => Math.abs(x - 21), 1e-3);
  expect(error).toBeLessThan(0.2);
  expect([20, 21, 22].every((place) => worked.includes(place))).toBe(true);
});

test('where a cubic overshoots into what cannot be, a straight line is taken', () => {
  const step = (x: number) => (x > 8 ? 1 : 0);
  const { at } = refined<number>(17, 4, { work: step, mix: sum, far: () => false, possible: (value) => value >= 0 && value <= 1 });
  for (let x = 0; x <= 16; x += 0.25) expect(at(x)).toBeGreaterThanOrEqual(0);
  expect(at(9)).toBeCloseTo(0.5, 12);
});

test.each([1, 2, 3])('%i places are all worked out', (count) => {
  const { at } = sampled(count, 8, (x) => x * x, 0);
  expect(Array.from({ length: count }, (_, i) => at(i))).toEqual([0, 1, 4].slice(0, count));
});
