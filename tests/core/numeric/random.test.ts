import { expect, test } from 'vitest';
import { createRandom, xoshiro128 } from '../../../core/numeric/random';

test('the generator gives the words of its definition', () => {
  // From the state 1, 2, 3, 4 by hand: rotl(2·5, 7)·9 = 11520; then b is 0; then b = 1029 … (xoshiro128** as published).
  const word = xoshiro128([1, 2, 3, 4]);
  expect([word(), word(), word(), word()]).toEqual([11520, 0, 5927040, 70819200]);
});

test('a seed gives the same stream again, another seed another', () => {
  const stream = (seed: number) => {
    const random = createRandom(seed);
    return Array.from({ length: 20 }, () => random.uniform());
  };
  expect(stream(7)).toEqual(stream(7));
  expect(stream(7)).not.toEqual(stream(8));
});

test('even numbers lie evenly in 0 … 1: a hundred bins, chi-square within four standard deviations', () => {
  const random = createRandom(1);
  const bins = new Array<number>(100).fill(0);
  for (let i = 0; i < 200_000; i++) bins[Math.floor(100 * random.uniform())]++;
  const chi = bins.reduce((sum, n) => sum + (n - 2000) ** 2 / 2000, 0);
  expect(Math.abs(chi - 99)).toBeLessThan(4 * Math.sqrt(2 * 99));
});

test('normal numbers have mean 0, variance 1 and the tails of the normal law', () => {
  const random = createRandom(2);
  const n = 200_000;
  const values = Array.from({ length: n }, () => random.normal());
  const mean = values.reduce((a, b) => a + b, 0) / n;
  const variance = values.reduce((a, b) => a + b * b, 0) / n;
  expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(n));
  expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(2 / n));
  // Table of the normal law: 5 % beyond 1.6449, 0.135 % beyond 3.
  for (const [limit, share] of [
    [1.6449, 0.05],
    [3, 0.00135],
  ]) {
    const beyond = values.filter((v) => v > limit).length;
    expect(Math.abs(beyond - n * share)).toBeLessThan(4 * Math.sqrt(n * share));
  }
});
