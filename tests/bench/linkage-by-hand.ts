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

/** Harmonics 1, 3, 5 … of B_z at each radius, averaged over the copper's height: every magnet and every image at every point. [T] */
function meanHarmonics(
  design: Design,
  { copperHeight }: WindingResult,
  radii: number[],
  through: Rule,
  electrical: number[],
  orders: number[],
) {
  const field = fieldProbe(design);
  const pairs = design.discs.poles / 2;
  return radii.map((r) => {
    const harmonics = orders.map(() => 0);
    for (const angle of electrical) {
      const [x, y] = [r * Math.cos(angle / pairs), r * Math.sin(angle / pairs)];
      let mean = 0;
      through.nodes.forEach((share, j) => (mean += through.weights[j] * field(x, y, copperHeight * (share - 0.5))[2]));
      orders.forEach((n, h) => (harmonics[h] += (2 / electrical.length) * mean * Math.cos(n * angle)));
    }
    return harmonics;
  });
}

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

/** The plain way: a uniform grid, sums for integrals, straight lines between the grid's radii. */
export function plainLinkage(design: Design, winding: WindingResult, grid: Grid): number[] {
  const orders = oddOrders(Math.floor(grid.angles / 4));
  const step = (winding.outerRadius - winding.innerRadius) / (grid.radii - 1);
  const radii = Array.from({ length: grid.radii }, (_, i) => winding.innerRadius + i * step);
  const electrical = Array.from({ length: grid.angles }, (_, k) => (2 * Math.PI * k) / grid.angles);
  const mean = meanHarmonics(design, winding, radii, middles(grid.heights), electrical, orders);
  return overTurns(design, middles(8), middles(40), orders, (r) => {
    const place = (r - winding.innerRadius) / step;
    const i = Math.min(grid.radii - 2, Math.max(0, Math.floor(place)));
    return orders.map((_, h) => mean[i][h] + (place - i) * (mean[i + 1][h] - mean[i][h]));
  });
}

/** As exact as it gets: spectral in every direction, a quarter period, half the height. */
export function exactLinkage(design: Design, winding: WindingResult): number[] {
  const samples = 40;
  const orders = oddOrders(samples);
  const radii = chebyshevNodes(72, winding.innerRadius, winding.outerRadius);
  const electrical = Array.from({ length: samples }, (_, k) => ((k + 0.5) * Math.PI) / (2 * samples));
  const half = gaussLegendre(8, 0.5, 1);
  const through = { nodes: half.nodes, weights: half.weights.map((w) => 2 * w) };
  const mean = meanHarmonics(design, winding, radii, through, electrical, orders);
  const barycentric = barycentricWeights(radii);
  return overTurns(design, gaussLegendre(24, 0, 1), gaussLegendre(60, 0, 1), orders, (r) => {
    const coefficients = interpolationCoefficients(radii, r, barycentric);
    return orders.map((_, h) => coefficients.reduce((sum, c, i) => sum + c * mean[i][h], 0));
  });
}

/** RMS by which the volts round a period differ, as a share of the exact ones. */
export function voltsOff(linkage: readonly number[], exact: readonly number[]): number {
  const volts = (l: readonly number[], h: number) => (2 * h + 1) * (l[h] ?? 0);
  const off = exact.map((_, h) => volts(linkage, h) - volts(exact, h));
  return Math.hypot(...off) / Math.hypot(...exact.map((_, h) => volts(exact, h)));
}
