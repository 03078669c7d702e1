import type { GapSpectrum } from '../field/stage';
import { gaussLegendre } from '../numeric/integrate';
import { chebyshevWeights, interpolationCoefficients } from '../numeric/interpolate';
import type { Edge } from '../winding/layouts';

/** Gauss nodes across the leg, through the copper's height, and along a straight edge as long as the copper's whole reach along the radius. */
const OFFSETS = 8;
const HEIGHTS = 4;
const ALONG = 24;
const FEWEST_ALONG = 8;

/** One turn's straight edges at an offset, of which the whole turn has `repeat` sets. [m] */
export type EdgesAt = (offset: number) => { edges: Edge[]; repeat: number };

/** Where the turns of a coil lie. [m] */
export interface Section {
  legWidth: number;
  /** Middle of the coil over the mid-plane. */
  height: number;
  thickness: number;
}

/** b_n averaged over the copper's height, by radius and order, the last fastest. No turn's path depends on its height, so this goes first. [T] */
function meanOverHeight({ bz, heights, radii, orders }: GapSpectrum, { height, thickness }: Section): Float64Array {
  const { nodes, weights } = gaussLegendre(HEIGHTS, height - thickness / 2, height + thickness / 2);
  const chebyshev = chebyshevWeights(heights.length);
  const share = heights.map(() => 0);
  nodes.forEach((z, j) => {
    interpolationCoefficients(heights, z, chebyshev).forEach((c, k) => (share[k] += (weights[j] / thickness) * c));
  });
  const mean = new Float64Array(radii.length * orders.length);
  for (let h = 0; h < orders.length; h++)
    for (let k = 0; k < heights.length; k++)
      for (let i = 0, row = (h * heights.length + k) * radii.length; i < radii.length; i++)
        mean[i * orders.length + h] += share[k] * bz[row + i];
  return mean;
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
 * Valid     a coil lying on +x; another one's linkage is the same, later; orders evenly spaced.
 * Omits     the few turns' own grid: turns are spread evenly over the section.
 * Source    Stokes's theorem on the spectrum of field/.
 * Checked   tests/reference/linkage.test.ts
 */
export function turnLinkage(spectrum: GapSpectrum, edgesAt: EdgesAt, section: Section): number[] {
  const { orders, radii } = spectrum;
  const p = spectrum.poles / 2;
  const count = orders.length;
  const step = count > 1 ? orders[1] - orders[0] : 1;
  const mean = meanOverHeight(spectrum, section);
  const chebyshev = chebyshevWeights(radii.length);
  const linkage = new Float64Array(count);
  const field = new Float64Array(count);
  const offsets = gaussLegendre(OFFSETS, 0, section.legWidth);
  const reach = radii[radii.length - 1] - radii[0];
  for (let i = 0; i < OFFSETS; i++) {
    const { edges, repeat } = edgesAt(offsets.nodes[i]);
    const turns = (repeat * offsets.weights[i]) / section.legWidth / p;
    for (const [[x0, y0], [x1, y1]] of edges) {
      const length = Math.hypot(x1 - x0, y1 - y0);
      const along = gaussLegendre(Math.max(FEWEST_ALONG, Math.min(2 * ALONG, Math.ceil((ALONG * length) / reach))), 0, 1);
      for (let k = 0; k < along.nodes.length; k++) {
        const x = x0 + along.nodes[k] * (x1 - x0);
        const y = y0 + along.nodes[k] * (y1 - y0);
        const r = Math.sqrt(x * x + y * y);
        const across = interpolationCoefficients(radii, r, chebyshev);
        field.fill(0);
        // Two radii at a time: half the loads and stores.
        for (let j = 1; j < across.length; j += 2) {
          const [one, two] = [across[j - 1], across[j]];
          for (let h = 0, row = j * count; h < count; h++) field[h] += one * mean[row - count + h] + two * mean[row + h];
        }
        if (across.length % 2 === 1) {
          const last = across.length - 1;
          for (let h = 0; h < count; h++) field[h] += across[last] * mean[last * count + h];
        }
        const angle = p * Math.atan2(y, x);
        // dr · r
        const weight = turns * along.weights[k] * (x * (x1 - x0) + y * (y1 - y0));
        // sin nε from the two orders before it: they are evenly spaced.
        const twice = 2 * Math.cos(step * angle);
        for (let h = 0, sine = Math.sin(orders[0] * angle), before = Math.sin((orders[0] - step) * angle); h < count; h++) {
          linkage[h] -= (weight * field[h] * sine) / orders[h];
          [sine, before] = [twice * sine - before, sine];
        }
      }
    }
  }
  return Array.from(linkage);
}
