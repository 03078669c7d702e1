import { chebyshevWeights, interpolationCoefficients } from '../numeric/interpolate';
import type { GapSpectrum } from './stage';

/** Reads the spectrum at any radius and height in the winding's region. */
export interface SpectrumReader {
  /** Cosine part of every harmonic of B_z at r and z, in the order of `spectrum.orders`. [T] */
  bz: (r: number, z: number) => Float64Array;
  /** Sine part of every harmonic of B_θ. [T] */
  bTheta: (r: number, z: number) => Float64Array;
  /** Sine part of B_z and cosine part of B_θ: nothing but where the discs are misaligned. [T] */
  bzSine?: (r: number, z: number) => Float64Array;
  bThetaCosine?: (r: number, z: number) => Float64Array;
}

/** Heights kept ready at once. */
const MOST_LEVELS = 64;

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
  const { radii, heights } = spectrum;
  const orders = spectrum.orders.length;
  const radiusWeights = chebyshevWeights(radii.length);
  const heightWeights = chebyshevWeights(heights.length);
  let lastRadius = NaN;
  let across: number[] = [];

  /** `shares` is what each order counts for. */
  const reader = (table: Float64Array, shares?: readonly number[]) => {
    /** Harmonics at one height, by radius and order: whoever integrates comes back to the same few heights again and again. */
    const levels = new Map<number, Float64Array>();
    const level = (z: number) => {
      const kept = levels.get(z);
      if (kept) return kept;
      const along = interpolationCoefficients(heights, z, heightWeights);
      const made = new Float64Array(radii.length * orders);
      for (let h = 0; h < orders; h++)
        for (let k = 0; k < heights.length; k++) {
          const share = along[k] * (shares ? shares[h] : 1);
          for (let i = 0, row = (h * heights.length + k) * radii.length; i < radii.length; i++)
            made[i * orders + h] += share * table[row + i];
        }
      if (levels.size >= MOST_LEVELS) levels.clear();
      levels.set(z, made);
      return made;
    };
    return (r: number, z: number) => {
      const values = level(z);
      if (r !== lastRadius) {
        across = interpolationCoefficients(radii, r, radiusWeights);
        lastRadius = r;
      }
      const sum = new Float64Array(orders);
      for (let i = 0; i < radii.length; i++) {
        const share = across[i];
        const row = i * orders;
        for (let h = 0; h < orders; h++) sum[h] += share * values[row + h];
      }
      return sum;
    };
  };
  const { misaligned } = spectrum;
  if (!misaligned) return { bz: reader(spectrum.bz), bTheta: reader(spectrum.bTheta) };
  const { both, difference } = misalignmentShares(spectrum);
  return {
    bz: reader(spectrum.bz, both),
    bTheta: reader(spectrum.bTheta, both),
    bzSine: reader(misaligned.dz, difference),
    bThetaCosine: reader(
      misaligned.dTheta,
      difference.map((share) => -share),
    ),
  };
}

/**
 * What is left of each harmonic of two discs turned against each other, and what each takes of their difference: cos n p δ/2 and sin n p δ/2.
 *
 * @param spectrum  Spectrum with its misalignment, δ. [rad]
 * @returns         By order. [-]
 *
 * Source    shift theorem of the Fourier series.
 * Checked   tests/core/field/misalignment.test.ts
 */
export function misalignmentShares({ poles, orders, misaligned }: GapSpectrum): { both: number[]; difference: number[] } {
  const turns = orders.map((n) => (n * poles * (misaligned?.angle ?? 0)) / 4);
  return { both: turns.map(Math.cos), difference: turns.map(Math.sin) };
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
