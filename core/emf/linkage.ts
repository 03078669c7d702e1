import type { SpectrumReader } from '../field/harmonics';
import type { GapSpectrum } from '../field/stage';
import { gaussLegendre } from '../numeric/integrate';
import type { LayoutModel } from '../winding/layouts';
import type { Layout } from '../winding/section';

const OFFSETS = 8;
const HEIGHTS = 3;
const ALONG = 14;

/**
 * Flux linkage of one turn, averaged over the leg's section, as harmonics of the rotor's electrical angle: Λ(α) = Σ λ_h cos(n_h p α).
 *
 * @param reader    Gap field. [T]
 * @param spectrum  Its orders and poles. [-]
 * @param model     Layout's geometry. [-]
 * @param layout    Layout. [m]
 * @param height    Middle of the coil over the mid-plane. [m]
 * @param thickness Axial height of its copper. [m]
 * @returns         λ_h in the order of `spectrum.orders`. [Wb] per turn
 *
 * In the gauge A_θ = 0, A_r = −r Σ b_n sin(n p θ)/(n p), the flux of a turn is ∮ A_r dr along it: edges at constant radius give nothing, straight ones
 * are a Gauss quadrature each.
 *
 * Source    Stokes's theorem on the spectrum of field/.
 * Checked   tests/reference/linkage.test.ts
 */
export function turnLinkage(
  reader: SpectrumReader,
  spectrum: GapSpectrum,
  model: LayoutModel<Layout>,
  layout: Layout,
  height: number,
  thickness: number,
): number[] {
  const p = spectrum.poles / 2;
  const linkage = new Array<number>(spectrum.orders.length).fill(0);
  const offsets = gaussLegendre(OFFSETS, 0, layout.legWidth);
  const heights = gaussLegendre(HEIGHTS, height - thickness / 2, height + thickness / 2);
  const along = gaussLegendre(ALONG, 0, 1);
  offsets.nodes.forEach((offset, i) => {
    const { edges, repeat } = model.fluxEdges(layout, spectrum.poles, offset);
    for (const [[x0, y0], [x1, y1]] of edges)
      along.nodes.forEach((share, k) => {
        const [x, y] = [x0 + share * (x1 - x0), y0 + share * (y1 - y0)];
        const r = Math.hypot(x, y);
        const angle = p * Math.atan2(y, x);
        const dr = (x * (x1 - x0) + y * (y1 - y0)) / r;
        const weight = (repeat * offsets.weights[i] * along.weights[k] * dr * r) / layout.legWidth / thickness / p;
        heights.nodes.forEach((z, j) => {
          const b = reader.bz(r, z);
          spectrum.orders.forEach((n, h) => {
            linkage[h] -= (weight * heights.weights[j] * b[h] * Math.sin(n * angle)) / n;
          });
        });
      });
  });
  return linkage;
}
