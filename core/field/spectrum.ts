import { barycentricWeights, chebyshevNodes, interpolationCoefficients } from '../numeric/interpolate';
import type { Body } from './images';
import { type FieldSource, IMAGE_TOLERANCE, MOST_SETS } from './source';
import type { FieldRegion, GapSpectrum } from './stage';

/** b_n on a grid: harmonic, height, radius, flattened in that order. */
interface Grid {
  radii: number[];
  heights: number[];
  harmonics: number;
  bz: Float64Array;
  bTheta: Float64Array;
}

const emptyGrid = (radii: number[], heights: number[], harmonics: number): Grid => ({
  radii,
  heights,
  harmonics,
  bz: new Float64Array(harmonics * heights.length * radii.length),
  bTheta: new Float64Array(harmonics * heights.length * radii.length),
});

/** Wanted accuracy of the spectrum as a share of the field under a magnet. */
const ACCURACY = 2e-4;

/**
 * Harmonics of some magnets (numbered from the one on +x) of some bodies, sampled over a quarter of the electrical period. The sum over all magnets is even
 * about a magnet and odd about the middle between two, so N samples give the N lowest odd orders.
 *
 *   b_n = (2/N) Σ_j f(ε_j) cos n ε_j,   ε_j = (j + ½) π / 2N
 */
function sampledHarmonics(source: FieldSource, bodies: Body[], magnets: number[], grid: Grid): void {
  const { radii, heights, harmonics: count } = grid;
  const { poles, offset, remanence } = source;
  const stride = heights.length * radii.length;
  const cosine = new Float64Array(count * count);
  const sine = new Float64Array(count * count);
  for (let h = 0; h < count; h++) {
    for (let j = 0; j < count; j++) {
      const angle = ((2 * h + 1) * (j + 0.5) * Math.PI) / (2 * count);
      cosine[h * count + j] = (2 / count) * Math.cos(angle);
      sine[h * count + j] = (2 / count) * Math.sin(angle);
    }
  }
  const local = new Float64Array(3);
  const fields = bodies.map((body) => source.fieldOf(body.axial));
  for (let j = 0; j < count; j++) {
    const theta = ((j + 0.5) * Math.PI) / (count * poles);
    const cosines = magnets.map((m) => Math.cos(theta - (2 * Math.PI * m) / poles));
    const sines = magnets.map((m) => Math.sin(theta - (2 * Math.PI * m) / poles));
    for (let i = 0; i < stride; i++) {
      const r = radii[i % radii.length];
      const z = heights[(i / radii.length) | 0];
      let bz = 0;
      let bTheta = 0;
      for (let m = 0; m < magnets.length; m++) {
        const c = cosines[m];
        const s = sines[m];
        local[0] = local[1] = local[2] = 0;
        for (let b = 0; b < bodies.length; b++) fields[b](r * c - offset, r * s, z - bodies[b].zCentre, 1, local);
        const sign = magnets[m] % 2 === 0 ? remanence : -remanence;
        bz += sign * local[2];
        bTheta += sign * (local[1] * c - local[0] * s);
      }
      for (let h = 0; h < count; h++) {
        grid.bz[h * stride + i] += bz * cosine[h * count + j];
        grid.bTheta[h * stride + i] += bTheta * sine[h * count + j];
      }
    }
  }
}

/** Adds a coarse grid's harmonics, interpolated, to a finer one. Returns the greatest |b_z| added. */
function addInterpolated(coarse: Grid, fine: Grid): number {
  const across = interpolationTable(coarse.radii, fine.radii);
  const along = interpolationTable(coarse.heights, fine.heights);
  const [nr, nz] = [coarse.radii.length, coarse.heights.length];
  const line = new Float64Array(nr);
  let greatest = 0;
  const fineStride = fine.heights.length * fine.radii.length;
  for (let h = 0; h < Math.min(coarse.harmonics, fine.harmonics); h++) {
    for (const [from, to] of [
      [coarse.bz, fine.bz],
      [coarse.bTheta, fine.bTheta],
    ] as const) {
      for (let z = 0; z < fine.heights.length; z++) {
        for (let r = 0; r < nr; r++) {
          let sum = 0;
          for (let k = 0; k < nz; k++) sum += along[z][k] * from[(h * nz + k) * nr + r];
          line[r] = sum;
        }
        for (let r = 0; r < fine.radii.length; r++) {
          let sum = 0;
          for (let k = 0; k < nr; k++) sum += across[r][k] * line[k];
          to[h * fineStride + z * fine.radii.length + r] += sum;
          if (from === coarse.bz && Math.abs(sum) > greatest) greatest = Math.abs(sum);
        }
      }
    }
  }
  return greatest;
}

function interpolationTable(nodes: number[], points: number[]): number[][] {
  const weights = barycentricWeights(nodes);
  return points.map((x) => interpolationCoefficients(nodes, x, weights));
}

/**
 * Harmonics of the whole machine on given nodes. Only the nearest magnets of the nearest bodies need every node; the rest is smooth and is worked out on fewer
 * nodes and interpolated.
 */
function machineHarmonics(source: FieldSource, region: Box, radii: number[], heights: number[], harmonics: number): Grid {
  const grid = emptyGrid(radii, heights, harmonics);
  const { poles, pitchRadius, stack } = source;
  const near = [-1, 0, 1];
  const rest = Array.from({ length: poles - 3 }, (_, i) => i + 2);
  const magnets = stack.set(0);
  sampledHarmonics(source, magnets, near, grid);
  const halfSpan = (region.outerRadius - region.innerRadius) / 2;
  const decay = poles / 2 / pitchRadius;
  const coarse = (distance: number, share: number, orders: number) => {
    const digits = Math.log(Math.max(share / (ACCURACY / 10), Math.E));
    const nodes = (half: number, most: number) =>
      half > 0 ? Math.min(most, Math.max(2, 1 + Math.ceil(digits / Math.asinh(distance / half)))) : 1;
    const levels = chebyshevNodes(nodes(region.halfHeight, 7), -region.halfHeight, region.halfHeight);
    return emptyGrid(
      chebyshevNodes(nodes(halfSpan, 16), region.innerRadius, region.outerRadius),
      stack.symmetric ? levels.filter((z) => z > -1e-12) : levels,
      orders,
    );
  };
  if (rest.length > 0) {
    const part = coarse(pitchRadius * Math.sin((1.5 * Math.PI) / poles) * 1.5, 0.1, harmonics);
    sampledHarmonics(source, magnets, rest, part);
    addInterpolated(mirrored(part, stack.symmetric), grid);
  }
  const all = Array.from({ length: poles }, (_, i) => i);
  let peak = 0;
  for (const b of grid.bz) peak = Math.max(peak, Math.abs(b));
  for (let k = 1; k < MOST_SETS; k++) {
    const bodies = stack.set(k);
    if (bodies.length === 0) break;
    const distance = Math.min(...bodies.map((b) => Math.abs(b.zCentre) - b.axial / 2)) - region.halfHeight;
    const share = Math.exp(-decay * distance);
    const orders = Math.max(1, Math.min(harmonics, Math.ceil(Math.log(20 / ACCURACY) / (2 * decay * distance))));
    const part = coarse(distance, share, orders);
    sampledHarmonics(source, bodies, all, part);
    if (addInterpolated(mirrored(part, stack.symmetric), grid) < IMAGE_TOLERANCE * peak) break;
  }
  return grid;
}

/** Completes a grid kept for z ≥ 0 only: B_z is even in z, B_θ odd. */
function mirrored(half: Grid, symmetric: boolean): Grid {
  if (!symmetric) return half;
  const nr = half.radii.length;
  const kept = half.heights.length;
  const below = half.heights.filter((z) => z > 1e-12).length;
  const heights = [
    ...half.heights
      .filter((z) => z > 1e-12)
      .map((z) => -z)
      .reverse(),
    ...half.heights,
  ];
  const whole = emptyGrid(half.radii, heights, half.harmonics);
  for (let h = 0; h < half.harmonics; h++) {
    for (let z = 0; z < heights.length; z++) {
      const from = z < below ? kept - 1 - z : z - below;
      const sign = z < below ? -1 : 1;
      for (let r = 0; r < nr; r++) {
        const target = (h * heights.length + z) * nr + r;
        const source = (h * kept + from) * nr + r;
        whole.bz[target] = half.bz[source];
        whole.bTheta[target] = sign * half.bTheta[source];
      }
    }
  }
  return whole;
}

type Box = Pick<FieldRegion, 'innerRadius' | 'outerRadius' | 'halfHeight'>;

/** How many terms of a series stand before what is left adds up to less than `limit`. */
function termsKept(coefficients: number[], limit: number): number {
  let tail = 0;
  let kept = coefficients.length;
  while (kept > 1 && (tail += Math.abs(coefficients[kept - 1])) < limit) kept--;
  return kept;
}

function chebyshevCoefficients(values: number[]): number[] {
  const n = values.length;
  return values.map((_, k) => {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += values[j] * Math.cos((k * (2 * (n - 1 - j) + 1) * Math.PI) / (2 * n));
    return ((k === 0 ? 1 : 2) / n) * sum;
  });
}

const MOST_HARMONICS = 24;
const MOST_RADII = 48;
const MOST_HEIGHTS = 11;

/** Orders and nodes that the nearest magnets call for, from the tails of three trial series at the top of the copper, where the field is roughest. */
function resolution(source: FieldSource, region: Box, peak: number) {
  const magnets = source.stack.set(0);
  const fields = magnets.map((body) => source.fieldOf(body.axial));
  const local = new Float64Array(3);
  const bz = (r: number, theta: number, z: number): number => {
    local[0] = local[1] = local[2] = 0;
    for (let m = -1; m <= 1; m++) {
      const angle = theta - (2 * Math.PI * m) / source.poles;
      const sign = m === 0 ? source.remanence : -source.remanence;
      magnets.forEach((body, b) => fields[b](r * Math.cos(angle) - source.offset, r * Math.sin(angle), z - body.zCentre, sign, local));
    }
    return local[2];
  };
  const top = source.stack.symmetric ? region.halfHeight : -region.halfHeight;
  const limit = ACCURACY * peak;
  const middle = (region.innerRadius + region.outerRadius) / 2;
  const r = Math.min(Math.max(source.pitchRadius, region.innerRadius), region.outerRadius);
  const quarter = Array.from({ length: MOST_HARMONICS }, (_, j) => ((j + 0.5) * Math.PI) / (2 * MOST_HARMONICS));
  const samples = quarter.map((e) => bz(r, (2 * e) / source.poles, top));
  const series = quarter.map(
    (_, h) => (2 / MOST_HARMONICS) * samples.reduce((sum, f, j) => sum + f * Math.cos((2 * h + 1) * quarter[j]), 0),
  );
  const across = chebyshevCoefficients(chebyshevNodes(MOST_RADII, region.innerRadius, region.outerRadius).map((x) => bz(x, 0, top)));
  const along = chebyshevCoefficients(chebyshevNodes(MOST_HEIGHTS, -region.halfHeight, region.halfHeight).map((z) => bz(middle, 0, z)));
  return {
    harmonics: termsKept(series, limit),
    radii: termsKept(across, limit),
    heights: region.halfHeight > 0 ? termsKept(along, limit) : 1,
  };
}

/**
 * Harmonics of the gap field over the winding's radii and the copper's height.
 *
 * @param source  Magnets and images. [-]
 * @param region  Where the copper can be. [m]
 * @returns       Spectrum, orders odd. [T]
 *
 * Valid     to about 0.1 % of the field under a magnet; orders and nodes are cut where what is left falls below that.
 * Source    quarter-wave Fourier sums; Chebyshev interpolation, Trefethen 2013 (from memory).
 * Checked   tests/reference/field-rotors.test.ts
 */
export function gapSpectrum(source: FieldSource, region: Box): GapSpectrum {
  const peak = pitchHarmonics(source).reduce((sum, b) => sum + b, 0);
  const count = resolution(source, region, Math.abs(peak));
  const radii = chebyshevNodes(count.radii, region.innerRadius, region.outerRadius);
  const levels = chebyshevNodes(count.heights, -region.halfHeight, region.halfHeight);
  const half = source.stack.symmetric ? levels.filter((z) => z > -1e-12) : levels;
  const grid = mirrored(machineHarmonics(source, region, radii, half, count.harmonics), source.stack.symmetric);
  const nested = (flat: Float64Array) =>
    Array.from({ length: grid.harmonics }, (_, h) =>
      grid.heights.map((_, z) => {
        const from = (h * grid.heights.length + z) * radii.length;
        return Array.from(flat.subarray(from, from + radii.length));
      }),
    );
  return {
    poles: source.poles,
    orders: Array.from({ length: grid.harmonics }, (_, h) => 2 * h + 1),
    radii,
    heights: grid.heights,
    bz: nested(grid.bz),
    bTheta: nested(grid.bTheta),
  };
}

/** b_n at pitch radius and mid-plane, n = 1, 3, 5 …; their sum is the field on a magnet's centre line. [T] */
export function pitchHarmonics(source: FieldSource): number[] {
  const at = source.pitchRadius;
  const grid = machineHarmonics(source, { innerRadius: at, outerRadius: at, halfHeight: 0 }, [at], [0], MOST_HARMONICS);
  return Array.from(grid.bz);
}
