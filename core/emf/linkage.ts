import type { GapSpectrum } from '../field/stage';
import { gaussLegendre } from '../numeric/integrate';
import { barycentricWeights, interpolationCoefficients } from '../numeric/interpolate';
import type { Edge } from '../winding/layouts';

/** Gauss nodes across the leg, through the copper's height, and along each straight edge. */
const OFFSETS = 8;
const HEIGHTS = 4;
const ALONG = 14;

/** One turn's straight edges at an offset, of which the whole turn has `repeat` sets. [m] */
export type EdgesAt = (offset: number) => { edges: Edge[]; repeat: number };

/** Where the turns of a coil lie. [m] */
export interface Section {
  legWidth: number;
  /** Middle of the coil over the mid-plane. */
  height: number;
  thickness: number;
}

/** b_n on the spectrum's radii, averaged over the copper's height. No turn's path depends on its height, so this goes first. [T] */
function meanOverHeight({ bz, heights }: GapSpectrum, { height, thickness }: Section): number[][] {
  const { nodes, weights } = gaussLegendre(HEIGHTS, height - thickness / 2, height + thickness / 2);
  const barycentric = barycentricWeights(heights);
  const share = heights.map(() => 0);
  nodes.forEach((z, j) => {
    interpolationCoefficients(heights, z, barycentric).forEach((c, k) => (share[k] += (weights[j] / thickness) * c));
  });
  return bz.map((levels) => levels[0].map((_, i) => levels.reduce((sum, row, k) => sum + share[k] * row[i], 0)));
}

/**
 * Flux linkage of one turn, averaged over the leg's section, as harmonics of the shaft's electrical angle: Λ(α) = Σ λ_n cos(n p α).
 *
 * @param spectrum  Gap field over the copper, of discs in line. [T]
 * @param edgesAt   Straight edges of the turn at an offset. [m]
 * @param section   Leg width, height, thickness. [m]
 * @returns         λ_n in the order of `spectrum.orders`. [Wb]
 *
 * In the gauge A_θ = 0, A_r = −r Σ b_n sin(n p θ)/(n p), the flux of a turn is ∮ A_r dr along it: arcs about the axle give nothing, a straight edge is one
 * Gauss quadrature.
 *
 * Valid     a coil lying on +x; another one's linkage is the same, later.
 * Omits     the few turns' own grid: turns are spread evenly over the section.
 * Source    Stokes's theorem on the spectrum of field/.
 * Checked   tests/reference/linkage.test.ts
 */
export function turnLinkage(spectrum: GapSpectrum, edgesAt: EdgesAt, section: Section): number[] {
  const { orders, radii } = spectrum;
  const p = spectrum.poles / 2;
  const mean = meanOverHeight(spectrum, section);
  const barycentric = barycentricWeights(radii);
  const linkage = orders.map(() => 0);
  const offsets = gaussLegendre(OFFSETS, 0, section.legWidth);
  const along = gaussLegendre(ALONG, 0, 1);
  offsets.nodes.forEach((offset, i) => {
    const { edges, repeat } = edgesAt(offset);
    for (const [[x0, y0], [x1, y1]] of edges)
      along.nodes.forEach((share, k) => {
        const [x, y] = [x0 + share * (x1 - x0), y0 + share * (y1 - y0)];
        const r = Math.hypot(x, y);
        const angle = p * Math.atan2(y, x);
        const dr = (x * (x1 - x0) + y * (y1 - y0)) / r;
        const weight = (repeat * offsets.weights[i] * along.weights[k] * dr * r) / section.legWidth / p;
        const across = interpolationCoefficients(radii, r, barycentric);
        for (let h = 0; h < orders.length; h++) {
          let b = 0;
          for (let j = 0; j < across.length; j++) b += across[j] * mean[h][j];
          linkage[h] -= (weight * b * Math.sin(orders[h] * angle)) / orders[h];
        }
      });
  });
  return linkage;
}
