import { chebyshevNodes, interpolationCoefficients } from '../numeric/interpolate';
import type { Body } from './images';
import type { FieldSource } from './source';

/** Which part of the field: B_z as a series of cosines, or B_θ as one of sines. */
export type Component = 'bz' | 'bTheta';

/** Harmonics of one component on a grid of heights and radii; values run over harmonic, height, radius, the last fastest. [T] */
export interface HarmonicGrid {
  radii: number[];
  heights: number[];
  harmonics: number;
  component: Component;
  values: Float64Array;
}

/**
 * A grid with nothing in it yet.
 *
 * @param radii      Radii. [m]
 * @param heights    Heights over the mid-plane. [m]
 * @param harmonics  Number of odd orders. [-]
 * @param component  Which part of the field. [-]
 * @returns          Grid of zeros. [T]
 *
 * Source    by definition.
 */
export function emptyGrid(radii: number[], heights: number[], harmonics: number, component: Component): HarmonicGrid {
  return { radii, heights, harmonics, component, values: new Float64Array(harmonics * heights.length * radii.length) };
}

/** Where to sample round the disc, and what each sample counts for in each harmonic: `cosine` for B_z, `sine` for B_θ, by harmonic and sample. */
export interface Sampling {
  electrical: number[];
  harmonics: number;
  cosine: Float64Array;
  sine: Float64Array;
}

const samplings = new Map<number, Sampling>();

/**
 * Samples of a quarter of the electrical period. The sum over all magnets is even about a magnet and odd about the middle between two, so N samples give
 * the N lowest odd orders:
 *
 *   b_n = (2/N) Σ_j f(ε_j) cos n ε_j,   ε_j = (j + ½) π / 2N
 *
 * @param harmonics  Orders wanted, N. [-]
 * @returns          Electrical angles in rad and their weights. [-]
 *
 * Source    discrete cosine transform, type IV.
 * Checked   tests/reference/field-rotors.test.ts
 */
export function quarterSampling(harmonics: number): Sampling {
  const kept = samplings.get(harmonics);
  if (kept) return kept;
  const electrical = Array.from({ length: harmonics }, (_, j) => ((j + 0.5) * Math.PI) / (2 * harmonics));
  const table = (wave: (x: number) => number) => {
    const weights = new Float64Array(harmonics * harmonics);
    for (let h = 0; h < harmonics; h++)
      for (let j = 0; j < harmonics; j++) weights[h * harmonics + j] = (2 / harmonics) * wave((2 * h + 1) * electrical[j]);
    return weights;
  };
  const sampling = { electrical, harmonics, cosine: table(Math.cos), sine: table(Math.sin) };
  samplings.set(harmonics, sampling);
  return sampling;
}

/**
 * The same harmonics from few samples, for a part of the field that is smooth round the quarter period: interpolated to the places of `quarterSampling`.
 *
 * @param samples    Samples to take. [-]
 * @param harmonics  Orders wanted, the same as the rough part's. [-]
 * @returns          Electrical angles in rad and their weights. [-]
 *
 * Source    Chebyshev interpolation of an even (B_z) and an odd (B_θ) function.
 * Checked   tests/reference/field-rotors.test.ts
 */
export function smoothSampling(samples: number, harmonics: number): Sampling {
  if (samples >= harmonics) return quarterSampling(harmonics);
  const key = samples * 1000 + harmonics;
  const kept = samplings.get(key);
  if (kept) return kept;
  const fine = quarterSampling(harmonics);
  const nodes = chebyshevNodes(2 * samples, -Math.PI / 2, Math.PI / 2);
  const rows = fine.electrical.map((e) => interpolationCoefficients(nodes, e));
  const table = (weights: Float64Array, parity: number) => {
    const folded = new Float64Array(harmonics * samples);
    for (let h = 0; h < harmonics; h++)
      for (let k = 0; k < samples; k++)
        for (let j = 0; j < harmonics; j++)
          folded[h * samples + k] += weights[h * harmonics + j] * (rows[j][samples + k] + parity * rows[j][samples - 1 - k]);
    return folded;
  };
  const sampling = { electrical: nodes.slice(samples), harmonics, cosine: table(fine.cosine, 1), sine: table(fine.sine, -1) };
  samplings.set(key, sampling);
  return sampling;
}

/**
 * Adds to a grid the harmonics of some magnets of some bodies.
 *
 * @param source    Magnets on their discs. [-]
 * @param bodies    Heights along the axle at which the discs or their images stand. [m]
 * @param magnets   Numbers of the magnets, counted from the one on +x. [-]
 * @param sampling  Where to sample. [-]
 * @param grid      Where to add. [T]
 * @param lower     What the lower disc's bodies count for: −1 for the difference of the discs. [-]
 *
 * Valid     once every magnet of a body has been added with the same number of harmonics; a part alone has not the symmetry that the sampling rests on.
 * Source    superposition.
 * Checked   tests/reference/field-rotors.test.ts
 */
export function addHarmonics(
  source: FieldSource,
  bodies: Body[],
  magnets: number[],
  sampling: Sampling,
  grid: HarmonicGrid,
  lower = 1,
): void {
  const { radii, heights, values } = grid;
  const { poles, offset, remanence } = source;
  const { electrical, harmonics } = sampling;
  const table = grid.component === 'bz' ? sampling.cosine : sampling.sine;
  const stride = heights.length * radii.length;
  const samples = electrical.length;
  const fields = bodies.map((body) => pointField(source, body, grid.component));
  const shares = bodies.map((body) => (body.upper ? remanence : lower * remanence));
  const centres = bodies.map((body) => body.zCentre);
  const cosines = new Float64Array(magnets.length);
  const sines = new Float64Array(magnets.length);
  const around = new Float64Array(stride);
  for (let j = 0; j < samples; j++) {
    for (let m = 0; m < magnets.length; m++) {
      const angle = (2 * (electrical[j] - Math.PI * magnets[m])) / poles;
      cosines[m] = Math.cos(angle);
      sines[m] = Math.sin(angle);
    }
    around.fill(0);
    for (let b = 0; b < bodies.length; b++) {
      const field = fields[b];
      for (let m = 0; m < magnets.length; m++) {
        const share = magnets[m] % 2 === 0 ? shares[b] : -shares[b];
        for (let k = 0, i = 0; k < heights.length; k++)
          for (let l = 0; l < radii.length; l++, i++)
            around[i] += share * field(radii[l] * cosines[m] - offset, radii[l] * sines[m], heights[k] - centres[b], cosines[m], sines[m]);
      }
    }
    for (let h = 0; h < harmonics; h++) {
      const weight = table[h * samples + j];
      for (let i = 0, to = h * stride; i < stride; i++, to++) values[to] += weight * around[i];
    }
  }
}

/** The component, in the machine's frame, of one magnet of a body at a point of the magnet's frame, which stands turned by the angle of cosine c and sine s. */
function pointField(
  source: FieldSource,
  { axial }: Body,
  component: Component,
): (x: number, y: number, z: number, c: number, s: number) => number {
  if (component === 'bz') return source.axialFieldOf(axial);
  const into = source.fieldOf(axial);
  const local = new Float64Array(3);
  return (x, y, z, c, s) => {
    local.fill(0);
    into(x, y, z, 1, local);
    return local[1] * c - local[0] * s;
  };
}
