import { chebyshevNodes, clusteredNodes } from '../numeric/interpolate';
import type { Body } from './images';
import { quarterSampling } from './ring-harmonics';
import type { FieldSource } from './source';
import type { FieldRegion } from './stage';

export type Box = Pick<FieldRegion, 'innerRadius' | 'outerRadius' | 'halfHeight'>;

/** What is left off each series, as a share of the field under a magnet. */
export const FINEST = 5e-4;

const MOST_HARMONICS = 48;
const MOST_RADII = 64;
const MOST_HEIGHTS = 12;

/** How many terms of a series stand before what is left adds up to less than `limit`. */
function termsKept(coefficients: number[], limit: number): number {
  let tail = 0;
  let kept = coefficients.length;
  while (kept > 1 && (tail += Math.abs(coefficients[kept - 1])) < limit) kept--;
  return kept;
}

const cosines = new Map<number, Float64Array>();

/** Coefficients of the Chebyshev series through values at `chebyshevNodes`. */
function chebyshevSeries(values: number[]): number[] {
  const n = values.length;
  let table = cosines.get(n);
  if (!table) {
    table = Float64Array.from({ length: n * n }, (_, i) => {
      const k = Math.floor(i / n);
      return ((k === 0 ? 1 : 2) / n) * Math.cos((k * (2 * (n - 1 - (i % n)) + 1) * Math.PI) / (2 * n));
    });
    cosines.set(n, table);
  }
  const series = new Array<number>(n);
  for (let k = 0; k < n; k++) {
    let sum = 0;
    for (let j = 0, from = k * n; j < n; j++) sum += values[j] * table[from + j];
    series[k] = sum;
  }
  return series;
}

/**
 * Orders and nodes a spectrum needs, from the tails of trial series near the magnets' faces, where the field is roughest: round a quarter period, across the
 * radii, and along the height under the middle and under the edge of a magnet.
 *
 * @param source  Magnets and images. [-]
 * @param region  Where the copper can be. [m]
 * @param peak    Field on a magnet's centre line. [T]
 * @returns       Number of odd orders, radii and heights, and the least distance from copper to magnet faces in m. [-]
 *
 * Omits     images, which are smooth.
 * Source    tails of Fourier and Chebyshev series, Trefethen 2013, ch. 7–8 (from memory).
 * Checked   tests/reference/field-rotors.test.ts
 */
export function resolution(source: FieldSource, region: Box, peak: number) {
  const { poles, offset, pitchRadius, remanence, stack } = source;
  const top = stack.symmetric ? region.halfHeight : -region.halfHeight;
  const farthest = stack.symmetric ? 0 : -top;
  const distance = (body: Body, z: number) => Math.abs(z - body.zCentre) - body.axial / 2;
  const body = stack.set(0).reduce((best, other) => (distance(other, top) < distance(best, top) ? other : best));
  const field = source.fieldOf(body.axial);
  const axialField = source.axialFieldOf(body.axial);
  const local = new Float64Array(3);
  /** B_z of the magnet on +x and of the next. */
  const sampleBz = (r: number, electrical: number, z: number) => {
    const at = (angle: number) => axialField(r * Math.cos(angle) - offset, r * Math.sin(angle), z - body.zCentre);
    return remanence * (at((2 * electrical) / poles) - at((2 * (electrical - Math.PI)) / poles));
  };
  /** [B_z, B_θ] of the nearest disc's magnets of the given numbers. */
  const sample = (r: number, electrical: number, z: number, magnets: number[]): [bz: number, bTheta: number] => {
    let bz = 0;
    let bTheta = 0;
    for (const m of magnets) {
      const angle = (2 * (electrical - Math.PI * m)) / poles;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      local.fill(0);
      field(r * c - offset, r * s, z - body.zCentre, m % 2 === 0 ? remanence : -remanence, local);
      bz += local[2];
      bTheta += local[1] * c - local[0] * s;
    }
    return [bz, bTheta];
  };
  const limit = FINEST * peak;
  const r = Math.min(Math.max(pitchRadius, region.innerRadius), region.outerRadius);

  const { electrical: quarter, cosine, sine } = quarterSampling(MOST_HARMONICS);
  const all = Array.from({ length: Math.min(poles, 8) }, (_, i) => i - Math.min(poles, 8) / 2 + 1);
  const round = quarter.map((e) => sample(r, e, top, all));
  const fourier = (weights: Float64Array, component: 0 | 1) =>
    quarter.map((_, h) => round.reduce((sum, b, j) => sum + b[component] * weights[h * MOST_HARMONICS + j], 0));
  const edge = quarter[round.reduce((best, b, j) => (Math.abs(b[1]) > Math.abs(round[best][1]) ? j : best), 0)];

  const radiiNeeded = (z: number) => {
    const trial = clusteredNodes(MOST_RADII, region.innerRadius, region.outerRadius, source.edges, distance(body, z));
    return Math.max(...[0, 0.4, 0.8, 1.2, edge].map((e) => termsKept(chebyshevSeries(trial.map((x) => sampleBz(x, e, z))), limit)));
  };
  const radii = radiiNeeded(top);
  const nearest = distance(body, top);
  // Between the trials at the roughest and the smoothest height, a power of the distance.
  const spread = Math.log(distance(body, farthest) / nearest);
  const power = spread > 0 ? Math.log(radii / radiiNeeded(farthest)) / spread : 0;

  const levels = chebyshevNodes(MOST_HEIGHTS, -region.halfHeight, region.halfHeight);
  const under = levels.map((z) => sampleBz(r, 0, z));
  const beside = levels.map((z) => sample(r, edge, z, [0, 1]));
  const along = [under, beside.map((b) => b[0]), beside.map((b) => b[1])];
  return {
    harmonics: Math.max(termsKept(fourier(cosine, 0), limit), termsKept(fourier(sine, 1), limit)),
    radii,
    /** Radii that a body at the given distance asks for. What the power misses between the trials is within three: without them single places were 0.5 % off. */
    radiiFrom: (away: number) => (away > nearest ? Math.min(radii, Math.ceil(radii * (nearest / away) ** power) + 3) : radii),
    heights: region.halfHeight > 0 ? Math.max(...along.map((values) => termsKept(chebyshevSeries(values), limit))) : 1,
    nearest,
  };
}
