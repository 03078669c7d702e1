import { fieldProbe } from '../../core/index';
import type { Design } from '../../core/design/schema';
import { gaussLegendre } from '../../core/numeric/integrate';
import { barycentricWeights, chebyshevNodes, interpolationCoefficients } from '../../core/numeric/interpolate';
import { layoutModel } from '../../core/winding/layouts';
import type { WindingResult } from '../../core/winding/stage';

/** Points along the radius, round one pole pair, and through the copper's height. */
export interface Grid {
  radii: number;
  angles: number;
  /** Odd. */
  heights: number;
}

interface Rule {
  nodes: number[];
  weights: number[];
}
const middles = (count: number): Rule => ({
  nodes: Array.from({ length: count }, (_, i) => (i + 0.5) / count),
  weights: Array.from({ length: count }, () => 1 / count),
});

const evenly = (count: number, from: number, to: number) =>
  Array.from({ length: count }, (_, i) => (count > 1 ? from + ((to - from) * i) / (count - 1) : (from + to) / 2));

/** Harmonics 1, 3, 5 … of B_z by radius and height: every magnet and every image at every point. [T] */
function harmonicsOn(design: Design, radii: number[], heights: number[], electrical: number[], orders: number[]): number[][][] {
  const field = fieldProbe(design);
  const pairs = design.discs.poles / 2;
  return radii.map((r) =>
    heights.map((z) => {
      const harmonics = orders.map(() => 0);
      for (const angle of electrical) {
        const bz = field(r * Math.cos(angle / pairs), r * Math.sin(angle / pairs), z)[2];
        orders.forEach((n, h) => (harmonics[h] += (2 / electrical.length) * bz * Math.cos(n * angle)));
      }
      return harmonics;
    }),
  );
}

/** Added up over the heights by their shares. */
const meanOf = (harmonics: number[][][], shares: number[]) =>
  harmonics.map((levels) => levels[0].map((_, h) => levels.reduce((sum, level, j) => sum + shares[j] * level[h], 0)));

/** Linkage of the mean turn from b_n by radius: along the straight edges of turns over the whole leg. [Wb] */
function overTurns(
  { winding: { layout }, discs }: Design,
  across: Rule,
  along: Rule,
  orders: number[],
  at: (r: number) => number[],
): number[] {
  const linkage = orders.map(() => 0);
  across.nodes.forEach((turn, i) => {
    const { edges, repeat } = layoutModel(layout).fluxEdges(layout, discs.poles, layout.legWidth * turn);
    for (const [[x0, y0], [x1, y1]] of edges)
      along.nodes.forEach((share, k) => {
        const [x, y] = [x0 + share * (x1 - x0), y0 + share * (y1 - y0)];
        const angle = (discs.poles / 2) * Math.atan2(y, x);
        const weight = (2 * repeat * across.weights[i] * along.weights[k] * (x * (x1 - x0) + y * (y1 - y0))) / discs.poles;
        at(Math.hypot(x, y)).forEach((b, h) => (linkage[h] -= (weight * b * Math.sin(orders[h] * angle)) / orders[h]));
      });
  });
  return linkage;
}

const oddOrders = (count: number) => Array.from({ length: count }, (_, h) => 2 * h + 1);

const stretch = (nodes: number[], x: number) => {
  const place = ((nodes.length - 1) * (x - nodes[0])) / (nodes[nodes.length - 1] - nodes[0]);
  const first = Math.min(nodes.length - 2, Math.max(0, Math.floor(place)));
  return { first, share: place - first };
};

/** The plain way: a uniform grid from rim to rim and face to face, straight lines between its radii and heights, Simpson's rule through the height. */
export function plainField(design: Design, { innerRadius, outerRadius, copperHeight }: WindingResult, grid: Grid) {
  const orders = oddOrders(Math.floor(grid.angles / 4));
  const radii = evenly(grid.radii, innerRadius, outerRadius);
  const heights = evenly(grid.heights, -copperHeight / 2, copperHeight / 2);
  const electrical = Array.from({ length: grid.angles }, (_, k) => (2 * Math.PI * k) / grid.angles);
  const harmonics = harmonicsOn(design, radii, heights, electrical, orders);
  return {
    linkage: () => {
      const ends = (j: number) => j === 0 || j === heights.length - 1;
      const simpson = heights.map((_, j) => (ends(j) ? 1 : j % 2 === 1 ? 4 : 2) / (3 * (heights.length - 1)));
      const mean = meanOf(harmonics, simpson);
      return overTurns(design, middles(16), middles(80), orders, (r) => {
        const { first, share } = stretch(radii, r);
        return orders.map((_, h) => mean[first][h] + share * (mean[first + 1][h] - mean[first][h]));
      });
    },
    bz: (r: number, angle: number, z: number) => {
      const [across, along] = [stretch(radii, r), stretch(heights, z)];
      const at = (i: number, j: number) =>
        harmonics[across.first + i][along.first + j].reduce((sum, b, h) => sum + b * Math.cos(orders[h] * angle), 0);
      const line = (j: number) => (1 - across.share) * at(0, j) + across.share * at(1, j);
      return (1 - along.share) * line(0) + along.share * line(1);
    },
  };
}

/** As exact as it gets: spectral in every direction, a quarter period, half the height. */
export function exactLinkage(design: Design, { innerRadius, outerRadius, copperHeight }: WindingResult): number[] {
  const samples = 40;
  const orders = oddOrders(samples);
  const radii = chebyshevNodes(72, innerRadius, outerRadius);
  const electrical = Array.from({ length: samples }, (_, k) => ((k + 0.5) * Math.PI) / (2 * samples));
  const { nodes, weights } = gaussLegendre(8, 0, 0.5);
  const heights = nodes.map((share) => copperHeight * share);
  const mean = meanOf(
    harmonicsOn(design, radii, heights, electrical, orders),
    weights.map((w) => 2 * w),
  );
  const barycentric = barycentricWeights(radii);
  return overTurns(design, gaussLegendre(24, 0, 1), gaussLegendre(60, 0, 1), orders, (r) => {
    const coefficients = interpolationCoefficients(radii, r, barycentric);
    return orders.map((_, h) => coefficients.reduce((sum, c, i) => sum + c * mean[i][h], 0));
  });
}

/** Steps of an additive recurrence that fills a cube evenly and meets no grid: powers of the real root of x⁴ = x + 1. */
const STEPS = [1, 2, 3].map((k) => 1.2207440846057596 ** -k);
const PLACES = 4000;

/** RMS error of B_z over the copper as a share of the peak. */
export function fieldOff(
  design: Design,
  { innerRadius, outerRadius, copperHeight }: WindingResult,
  peak: number,
  bz: (r: number, angle: number, z: number) => number,
): number {
  const field = fieldProbe(design);
  const pairs = design.discs.poles / 2;
  let squares = 0;
  for (let i = 1; i <= PLACES; i++) {
    const [across, round, along] = STEPS.map((step) => (i * step) % 1);
    const r = innerRadius + across * (outerRadius - innerRadius);
    const angle = Math.PI * round;
    const z = copperHeight * (along - 0.5);
    const there = field(r * Math.cos(angle / pairs), r * Math.sin(angle / pairs), z)[2];
    squares += (bz(r, angle, z) - there) ** 2;
  }
  return Math.sqrt(squares / PLACES) / peak;
}

/** RMS by which the volts round a period differ, as a share of the exact ones. */
export function voltsOff(linkage: readonly number[], exact: readonly number[]): number {
  const volts = (l: readonly number[], h: number) => (2 * h + 1) * (l[h] ?? 0);
  const off = exact.map((_, h) => volts(linkage, h) - volts(exact, h));
  return Math.hypot(...off) / Math.hypot(...exact.map((_, h) => volts(exact, h)));
}
