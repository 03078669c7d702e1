import type { Design } from '../design/schema';
import { turnLinkage } from '../emf/linkage';
import { fieldSource } from '../field/source';
import type { GapSpectrum } from '../field/stage';
import { chebyshevNodes } from '../numeric/interpolate';
import { layoutModel } from '../winding/layouts';

/** Radii, and sets of images: what lies farther is smooth and hardly tells one magnet from its neighbours. */
const RADII = 7;
const SETS = 4;
/** Samples to a pole pitch, and harmonics for each pole pair. */
const SAMPLES = 12;
const HARMONICS = 7;

/**
 * Linkage of one turn of a coil with one magnet place alone (the magnets of both discs there), by orders of the whole turn.
 *
 *   Λ₁(α) = Σ φ_k cos kα, k = 1, 2, …   so that all places together give λ_n = 2p φ_np
 *
 * Scaled so that the sum over all places has the fundamental that the whole machine has.
 *
 * @param design       Magnets, discs and winding. [m]
 * @param gapLength    Gap. [m]
 * @param fundamental  λ_1 of the whole machine. [Wb]
 * @returns            φ_1, φ_2, … [Wb]
 *
 * Valid     coils by themselves; every magnet passes a serpentine ring alike, which therefore knows no single one.
 * Omits     the field's change over the copper's height, but for the scale.
 * Source    the magnet's closed-form field and its images (field/source.ts), Fourier series round the turn.
 * Checked   tests/core/bench/single-magnet.test.ts
 */
export function singleMagnetLinkage({ magnets, discs, winding }: Design, gapLength: number, fundamental: number): number[] {
  const { layout, thickness } = winding;
  const { poles } = discs;
  const model = layoutModel(layout);
  const source = fieldSource(magnets.shape, 1, discs, gapLength);
  const sets = Array.from({ length: SETS }, (_, k) => source.stack.set(k)).flat();
  const bodies = sets.map(({ zCentre, axial }) => ({ zCentre, into: source.fieldOf(axial) }));
  const orders = Array.from({ length: (HARMONICS * poles) / 2 }, (_, i) => i + 1);
  const radii = chebyshevNodes(RADII, ...model.extent(layout));
  const count = (SAMPLES * poles) / 2;
  const local = new Float64Array(3);
  const bz = new Float64Array(orders.length * RADII);
  radii.forEach((r, i) => {
    // The field is even in the angle: half a turn, at the middles of equal steps.
    for (let j = 0; j < count; j++) {
      const angle = (Math.PI * (j + 0.5)) / count;
      local.fill(0);
      for (const { into, zCentre } of bodies) into(r * Math.cos(angle) - source.offset, r * Math.sin(angle), -zCentre, 1, local);
      for (let h = 0; h < orders.length; h++) bz[h * RADII + i] += (2 / count) * local[2] * Math.cos(orders[h] * angle);
    }
  });
  const spectrum: GapSpectrum = { poles: 2, orders, radii, heights: [0], bz, bTheta: new Float64Array(bz.length) };
  const section = { legWidth: layout.legWidth, height: 0, thickness };
  const linkage = turnLinkage(spectrum, (offset) => model.fluxEdges(layout, poles, offset), section);
  const scale = fundamental / (poles * linkage[poles / 2 - 1]);
  return linkage.map((l) => l * scale);
}
