import { gaussLegendre } from '../numeric/integrate';
import { chebyshevWeights, interpolationCoefficients } from '../numeric/interpolate';
import type { HarmonicGrid } from './ring-harmonics';

/**
 * B_θ from B_z: with no current in the gap ∂B_θ/∂z = (1/r) ∂B_z/∂θ, harmonic by harmonic.
 *
 *   t_n(r, z) = t_n(r, z₀) − (n p / r) ∫ b_n(r, ζ) dζ from z₀ to z
 *
 * @param bz     B_z on Chebyshev heights. [T]
 * @param from   B_θ on the same radii at one height, z₀. [T]
 * @param poles  2p. [-]
 * @returns      B_θ on the grid of B_z. [T]
 *
 * Source    Ampère's law; Gauss–Legendre on the interpolant.
 * Checked   tests/core/field/tangential.test.ts
 */
export function tangential(bz: HarmonicGrid, from: HarmonicGrid, poles: number): HarmonicGrid {
  const { radii, heights, harmonics } = bz;
  const [start] = from.heights;
  const weights = chebyshevWeights(heights.length);
  const along = heights.map((z) => {
    const { nodes, weights: lengths } = gaussLegendre(Math.ceil(heights.length / 2), start, z);
    const row = new Float64Array(heights.length);
    nodes.forEach((at, k) => interpolationCoefficients(heights, at, weights).forEach((c, j) => (row[j] += lengths[k] * c)));
    return row;
  });
  const values = new Float64Array(bz.values.length);
  const width = radii.length;
  for (let h = 0; h < harmonics; h++) {
    const wave = ((2 * h + 1) * poles) / 2;
    along.forEach((row, k) => {
      const to = (h * heights.length + k) * width;
      for (let i = 0; i < width; i++) {
        let sum = 0;
        for (let j = 0; j < row.length; j++) sum += row[j] * bz.values[(h * row.length + j) * width + i];
        values[to + i] = from.values[h * width + i] - (wave / radii[i]) * sum;
      }
    });
  }
  return { ...bz, component: 'bTheta', values };
}
