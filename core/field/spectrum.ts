import { chebyshevNodes, chebyshevWeights, clusteredNodes, interpolationCoefficients } from '../numeric/interpolate';
import {
  addHarmonics,
  type Component,
  emptyGrid,
  type HarmonicGrid,
  quarterSampling,
  type Sampling,
  smoothSampling,
} from './ring-harmonics';
import { FINEST, resolution, type Box } from './resolution';
import { type FieldSource, IMAGE_TOLERANCE, MOST_SETS } from './source';
import type { GapSpectrum } from './stage';
import { tangential } from './tangential';

/** Interpolation from nodes to points, row by row; nothing where the two are the same list. */
function interpolationTable(nodes: number[], points: number[]): Float64Array | undefined {
  if (nodes === points) return undefined;
  const weights = chebyshevWeights(nodes.length);
  const table = new Float64Array(points.length * nodes.length);
  points.forEach((x, i) => table.set(interpolationCoefficients(nodes, x, weights), i * nodes.length));
  return table;
}

/** Adds a coarse grid's harmonics to a finer one's heights from `first` on, interpolated. Returns the greatest value added. */
function addInterpolated(coarse: HarmonicGrid, fine: HarmonicGrid, heights = fine.heights, first = 0): number {
  const across = interpolationTable(coarse.radii, fine.radii);
  const along = interpolationTable(coarse.heights, heights);
  const nr = coarse.radii.length;
  const nz = coarse.heights.length;
  const wide = fine.radii.length;
  const line = new Float64Array(nr);
  let greatest = 0;
  for (let h = 0; h < Math.min(coarse.harmonics, fine.harmonics); h++) {
    for (let z = 0; z < heights.length; z++) {
      const row = (h * fine.heights.length + first + z) * wide;
      if (along) {
        line.fill(0);
        for (let k = 0; k < nz; k++)
          for (let r = 0, from = (h * nz + k) * nr; r < nr; r++) line[r] += along[z * nz + k] * coarse.values[from + r];
      } else {
        for (let r = 0, from = (h * nz + z) * nr; r < nr; r++) line[r] = coarse.values[from + r];
      }
      for (let r = 0, from = 0; r < wide; r++, from += nr) {
        let sum = across ? 0 : line[r];
        if (across) for (let k = 0; k < nr; k++) sum += across[from + k] * line[k];
        fine.values[row + r] += sum;
        greatest = Math.max(greatest, Math.abs(sum));
      }
    }
  }
  return greatest;
}

/** Nodes that settle a smooth function of size `share`, whose nearest source is `distance` away, over an interval of half-length `half`. */
function smoothNodes(distance: number, half: number, share: number): number {
  if (half <= 0) return 1;
  const digits = Math.log(Math.max(share / (FINEST / 4), Math.E));
  return Math.min(16, Math.max(2, 1 + Math.ceil(digits / Math.asinh(distance / half))));
}

/** What the lower disc counts for: 1 in the field of both, −1 in their difference. */
type Lower = 1 | -1;

/** At which distance the grid's own number of orders is needed, and how many radii are needed at a distance. */
type Fineness = Pick<ReturnType<typeof resolution>, 'nearest' | 'radiiFrom'>;

/**
 * Samples of a quarter period that settle magnets beyond the one on +x: even about it, rough only from `beyond` the line half-way to the next.
 */
function evenSamples({ poles, pitchRadius }: FieldSource, beyond: number, distance: number): number {
  const perMetre = poles / Math.PI / pitchRadius;
  // Bernstein's ellipse through the nearest rough place, x + iy: its foci stand at ±1, its half axes add up to the rate of convergence.
  const [x, y] = [1 + beyond * perMetre, distance * perMetre];
  const major = (Math.sqrt((x + 1) ** 2 + y * y) + Math.sqrt((x - 1) ** 2 + y * y)) / 2;
  return Math.ceil(Math.log(4 / FINEST) / Math.log(major + Math.sqrt(major * major - 1)) / 2) + 1;
}

/**
 * The magnets themselves, body by body and height by height: the one on +x on the grid's own radii, with as many samples as its distance asks for, its two
 * neighbours on a coarser grid, the rest, which are smooth there, on a coarser one still.
 */
function addMagnets(
  source: FieldSource,
  region: Box,
  [grid, beside, smooth]: HarmonicGrid[],
  { nearest, radiiFrom }: Fineness,
  lower: Lower,
): void {
  const { poles, stack, edges, clearance } = source;
  const { innerRadius, outerRadius } = region;
  const rest = Array.from({ length: poles - 3 }, (_, i) => i + 2);
  grid.heights.forEach((z, row) => {
    const level = [z];
    for (const body of stack.set(0)) {
      const distance = Math.abs(z - body.zCentre) - body.axial / 2;
      // The same for all of a body: only together have its magnets the symmetry that the sampling rests on.
      const harmonics = Math.min(grid.harmonics, Math.ceil((grid.harmonics * nearest) / distance) + 3);
      const add = (magnets: number[], sampling: Sampling, radii: number[], into: HarmonicGrid) => {
        const part = emptyGrid(radii, level, harmonics, grid.component);
        addHarmonics(source, [body], magnets, sampling, part, lower);
        addInterpolated(part, into, level, row);
      };
      const needed = radiiFrom(distance);
      // Interpolating costs about as much as a few more rows.
      const radii = needed > 0.8 * grid.radii.length ? grid.radii : clusteredNodes(needed, innerRadius, outerRadius, edges, distance);
      add([0], quarterSampling(harmonics), radii, grid);
      add([-1, 1], smoothSampling(evenSamples(source, clearance, distance), harmonics), beside.radii, beside);
      add(rest, smoothSampling(4, harmonics), smooth.radii, smooth);
    }
  });
}

/** Images, set by set until the last no longer counts. The farther, the smoother: few orders and few nodes. */
function addImages(source: FieldSource, region: Box, smooth: HarmonicGrid, peak: number, lower: Lower): void {
  const { poles, pitchRadius, stack } = source;
  const halfSpan = (region.outerRadius - region.innerRadius) / 2;
  const decay = poles / 2 / pitchRadius;
  const all = Array.from({ length: poles }, (_, i) => i);
  const top = Math.max(...smooth.heights.map(Math.abs));
  for (let k = 1; k < MOST_SETS; k++) {
    const bodies = stack.set(k);
    if (bodies.length === 0) return;
    const distance = Math.min(...bodies.map((b) => Math.abs(b.zCentre) - b.axial / 2)) - top;
    const share = Math.exp(-decay * distance);
    const orders = Math.min(smooth.harmonics, Math.max(1, Math.ceil(Math.log(20 / FINEST) / (2 * decay * distance))));
    const levels = chebyshevNodes(smoothNodes(distance, top, share), -top, top);
    const kept = stack.symmetric ? levels.slice(Math.floor(levels.length / 2)) : levels;
    const radii = chebyshevNodes(smoothNodes(distance, halfSpan, share), region.innerRadius, region.outerRadius);
    const part = emptyGrid(radii, kept, orders, smooth.component);
    addHarmonics(source, bodies, all, quarterSampling(orders), part, lower);
    if (addInterpolated(stack.symmetric ? mirrored(part, levels, lower) : part, smooth) < IMAGE_TOLERANCE * peak) return;
  }
}

/** Harmonics of the whole machine, its discs in line, or of the difference of its discs, on the grid's nodes. */
function machineHarmonics(
  source: FieldSource,
  region: Box,
  grid: HarmonicGrid,
  peak: number,
  fineness: Fineness,
  lower: Lower = 1,
): HarmonicGrid {
  const { innerRadius, outerRadius } = region;
  const on = (radii: number[]) => emptyGrid(radii, grid.heights, grid.harmonics, grid.component);
  const aside = Math.sqrt(fineness.nearest ** 2 + source.clearance ** 2);
  const beside = on(clusteredNodes(fineness.radiiFrom(aside), innerRadius, outerRadius, source.edges, aside));
  const neighbour = 2 * source.pitchRadius * Math.sin((1.25 * Math.PI) / source.poles);
  const smooth = on(chebyshevNodes(smoothNodes(neighbour, (outerRadius - innerRadius) / 2, 0.2), innerRadius, outerRadius));
  addMagnets(source, region, [grid, beside, smooth], fineness, lower);
  addImages(source, region, smooth, peak, lower);
  addInterpolated(smooth, beside);
  addInterpolated(beside, grid);
  return grid;
}

/** Completes a grid kept for z ≥ 0 only: B_z is even in z, B_θ odd; of the difference of the discs B_z is odd, B_θ even. */
function mirrored(half: HarmonicGrid, heights: number[], lower: Lower): HarmonicGrid {
  const nr = half.radii.length;
  const nz = half.heights.length;
  const parity = half.component === 'bz' ? lower : -lower;
  const whole = emptyGrid(half.radii, heights, half.harmonics, half.component);
  for (let h = 0; h < half.harmonics; h++) {
    for (let z = 0; z < heights.length; z++) {
      const below = z < heights.length - nz;
      const from = (h * nz + (below ? nz - 1 - z : z - (heights.length - nz))) * nr;
      const to = (h * heights.length + z) * nr;
      for (let r = 0; r < nr; r++) whole.values[to + r] = (below ? parity : 1) * half.values[from + r];
    }
  }
  return whole;
}

/**
 * Harmonics of the gap field over the winding's radii and the copper's height.
 *
 * @param source  Magnets and images. [-]
 * @param region  Where the copper can be. [m]
 * @param peak    Field on a magnet's centre line at mid-plane, the measure of accuracy. [T]
 * @returns       Spectrum, orders odd. [T]
 *
 * Valid     to about 0.1 % of the peak in the copper as a whole; where copper lies within a hundredth of a pitch radius of a sharp magnet edge, the single
 *           point may be off by a few times as much, in ripples that cancel along a turn.
 *           The mean square that eddy loss goes by, orders squared, is within 0.2 % of the direct sum with 0.7 mm of air before the copper, 0.7 % with 0.3 mm.
 * Source    quarter-wave Fourier sums; Chebyshev interpolation, Trefethen 2013 (from memory).
 * Checked   tests/reference/field-rotors.test.ts, tests/core/heat/eddy.test.ts
 */
export function gapSpectrum(source: FieldSource, region: Box, peak: number): GapSpectrum {
  const size = Math.abs(peak);
  const count = resolution(source, region, size);
  const radii = clusteredNodes(count.radii, region.innerRadius, region.outerRadius, source.edges, count.nearest);
  const heights = chebyshevNodes(count.heights, -region.halfHeight, region.halfHeight);
  const { symmetric } = source.stack;
  const kept = symmetric ? heights.slice(Math.floor(heights.length / 2)) : heights;
  const onGrid = (levels: number[], component: Component, lower: Lower) =>
    machineHarmonics(source, region, emptyGrid(radii, levels, count.harmonics, component), size, count, lower);
  const both = (lower: Lower) => {
    const half = onGrid(kept, 'bz', lower);
    const bz = symmetric ? mirrored(half, heights, lower) : half;
    // Between two discs in line there is no B_θ at mid-height; elsewhere it is worked out at one height, away from the magnets.
    const start = [symmetric ? 0 : region.halfHeight];
    const known = symmetric && lower === 1 ? emptyGrid(radii, start, count.harmonics, 'bTheta') : onGrid(start, 'bTheta', lower);
    return [bz.values, tangential(bz, known, source.poles).values];
  };
  const [bz, bTheta] = both(1);
  const [dz, dTheta] = source.misalignment > 0 ? both(-1) : [];
  return {
    poles: source.poles,
    orders: Array.from({ length: count.harmonics }, (_, h) => 2 * h + 1),
    radii,
    heights,
    bz,
    bTheta,
    ...(dz && { misaligned: { angle: source.misalignment, dz, dTheta } }),
  };
}

const PROFILE_HARMONICS = 24;

/**
 * b_n of B_z at pitch radius.
 *
 * @param source  Magnets and images. [-]
 * @param z       Height over the mid-plane. [m]
 * @returns       b_1, b_3, b_5 …; their sum is the field on a magnet's centre line. [T]
 *
 * Source    as `gapSpectrum`.
 * Checked   tests/reference/field-rotors.test.ts
 */
export function pitchHarmonics(source: FieldSource, z: number): number[] {
  const at = source.pitchRadius;
  const grid = emptyGrid([at], [z], PROFILE_HARMONICS, 'bz');
  const point = { innerRadius: at, outerRadius: at, halfHeight: 0 };
  return Array.from(machineHarmonics(source, point, grid, source.remanence / 10, { nearest: Infinity, radiiFrom: () => 1 }).values);
}
