import { expect, test } from 'vitest';
import type { HarmonicGrid } from '../../../core/field/ring-harmonics';
import { tangential } from '../../../core/field/tangential';
import { chebyshevNodes } from '../../../core/numeric/interpolate';

// A field with no curl round the radius, in closed form: b = cosh kz, t = −(n p / r) sinh kz / k.
test('from B_z and one height of B_θ comes B_θ at every height', () => {
  const k = 120;
  const radii = [0.1, 0.13];
  const heights = chebyshevNodes(8, -0.006, 0.006);
  const grid = (levels: number[], value: (n: number, r: number, z: number) => number): HarmonicGrid => ({
    radii,
    heights: levels,
    harmonics: 3,
    component: 'bz',
    values: Float64Array.from([1, 3, 5].flatMap((n) => levels.flatMap((z) => radii.map((r) => value(n, r, z))))),
  });
  const expected = (n: number, r: number, z: number) => (-6 * n * Math.sinh(k * z)) / (r * k);
  for (const start of [0, 0.006]) {
    const found = tangential(
      grid(heights, (_, __, z) => Math.cosh(k * z)),
      grid([start], expected),
      12,
    );
    const wanted = grid(heights, expected).values;
    expect(found.component).toBe('bTheta');
    found.values.forEach((t, i) => expect(t).toBeCloseTo(wanted[i], 7));
  }
});
