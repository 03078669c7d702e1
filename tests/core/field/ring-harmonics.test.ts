import { expect, test } from 'vitest';
import { quarterSampling, smoothSampling } from '../../../core/field/ring-harmonics';

const harmonicsOf = (weights: Float64Array, samples: number[], orders: number) =>
  Array.from({ length: orders }, (_, h) => samples.reduce((sum, f, j) => sum + f * weights[h * samples.length + j], 0));

test('as many samples as orders give each order back', () => {
  const { electrical, cosine, sine } = quarterSampling(5);
  const even = electrical.map((e) => 2 * Math.cos(e) - 0.5 * Math.cos(3 * e) + 0.1 * Math.cos(9 * e));
  const odd = electrical.map((e) => 3 * Math.sin(e) + 0.2 * Math.sin(7 * e));
  harmonicsOf(cosine, even, 5).forEach((b, h) => expect(b).toBeCloseTo([2, -0.5, 0, 0, 0.1][h], 12));
  harmonicsOf(sine, odd, 5).forEach((b, h) => expect(b).toBeCloseTo([3, 0, 0, 0.2, 0][h], 12));
});

test('a smooth part needs few samples for the same harmonics', () => {
  const fine = quarterSampling(16);
  const few = smoothSampling(4, 16);
  expect(few.electrical.length).toBe(4);
  const bz = (e: number) => 1 / (6 + Math.cos(e / 2));
  const bTheta = (e: number) => Math.sin(e / 2) / (6 + Math.cos(e / 2));
  for (const [f, from, to] of [
    [bz, few.cosine, fine.cosine],
    [bTheta, few.sine, fine.sine],
  ] as const) {
    const expected = harmonicsOf(to, fine.electrical.map(f), 16);
    harmonicsOf(from, few.electrical.map(f), 16).forEach((b, h) => expect(b).toBeCloseTo(expected[h], 6));
  }
});
