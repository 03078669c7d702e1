import { barycentricWeights, interpolationCoefficients } from '../numeric/interpolate';
import type { GapSpectrum } from './stage';

/** Reads the spectrum at any radius and height in the winding's region. */
export interface SpectrumReader {
  /** Every b_n of B_z at r and z, in the order of `spectrum.orders`. [T] */
  bz(r: number, z: number): Float64Array;
  /** Every b_n of B_θ. [T] */
  bTheta(r: number, z: number): Float64Array;
}

/**
 * Interpolates the spectrum between its nodes.
 *
 * @param spectrum  Spectrum. [T]
 * @returns         Reader of its harmonics at r and z. [m] → [T]
 *
 * Valid     inside the region the spectrum was worked out for; the ends lie a little outside the outermost nodes, as they should.
 * Source    numeric/interpolate.ts.
 * Checked   tests/reference/field-rotors.test.ts
 */
export function spectrumReader(spectrum: GapSpectrum): SpectrumReader {
  const radiusWeights = barycentricWeights(spectrum.radii);
  const heightWeights = barycentricWeights(spectrum.heights);
  const read = (table: number[][][], r: number, z: number) => {
    const across = interpolationCoefficients(spectrum.radii, r, radiusWeights);
    const along = interpolationCoefficients(spectrum.heights, z, heightWeights);
    return Float64Array.from(table, (levels) => {
      let sum = 0;
      for (let k = 0; k < along.length; k++) {
        const row = levels[k];
        let line = 0;
        for (let i = 0; i < across.length; i++) line += across[i] * row[i];
        sum += along[k] * line;
      }
      return sum;
    });
  };
  return { bz: (r, z) => read(spectrum.bz, r, z), bTheta: (r, z) => read(spectrum.bTheta, r, z) };
}

/**
 * One harmonic of B_z.
 *
 * @param spectrum  Spectrum. [T]
 * @param order     Order, n, one of `spectrum.orders`. [-]
 * @param r         Radius. [m]
 * @param z         Height over the mid-plane. [m]
 * @returns         b_n; 0 for an order the spectrum does not hold. [T]
 *
 * Source    as `spectrumReader`.
 * Checked   tests/reference/field-rotors.test.ts
 */
export function bzHarmonic(spectrum: GapSpectrum, order: number, r: number, z: number): number {
  const index = spectrum.orders.indexOf(order);
  return index < 0 ? 0 : spectrumReader(spectrum).bz(r, z)[index];
}
