import type { Results } from '../../../core';

type Spectrum = Results['stages']['field']['spectrum'];

/** The harmonics worked out nearest to a radius and to the middle of the copper. [m, T] */
export function spectrumNearest({ radii, heights, bz }: Spectrum, radius: number): { radius: number; sizes: number[] } {
  const r = nearest(radii, radius);
  const z = nearest(heights, 0);
  return { radius: radii[r] ?? radius, sizes: bz.map((harmonic) => harmonic[z]?.[r] ?? 0) };
}

const nearest = (values: readonly number[], to: number): number =>
  values.reduce((best, value, i) => (Math.abs(value - to) < Math.abs((values[best] ?? Infinity) - to) ? i : best), 0);
