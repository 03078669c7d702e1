import type { DiscsSection } from './section';

/** A magnet, or its image in steel: same place and polarity on the disc, its own middle and height along the axle. */
export interface Body {
  zCentre: number;
  axial: number;
  /** Of the upper disc's magnets, not the lower's; tells only where the two are turned against each other. */
  upper?: boolean;
}

/** All bodies that make the field, in sets from the nearest outwards: the magnets themselves are the first. */
export interface BodyStack {
  /** The k-th set; empty when there are no more. */
  set(k: number): Body[];
  /** Whether the field mirrors at z = 0, as it does between two like discs. */
  symmetric: boolean;
  /** Where steel begins, below and above; the field behind is not worked out. [m] */
  steelBelow: number;
  steelAbove: number;
}

/**
 * Bodies for an arrangement of discs. A magnet touching a plate of high permeability doubles in height; two plates make an endless stack.
 *
 *   facing pair, steel     (2k + 1) H, height 2h, H = g/2 + h
 *   single, steel          −H, height 2h
 *   return plate           everything mirrored at z = +g/2; with steel behind the magnets as well, period 2 (g + h)
 *
 * @param arrangement    Discs and return plate. [-]
 * @param steel          Whether steel lies behind the magnets. [-]
 * @param gapLength      Gap, g; the winding's middle is z = 0. [m]
 * @param magnetHeight   Height of a magnet, h. [m]
 * @returns              Bodies in sets, heights and places in m; which disc each belongs to.
 *
 * Valid     plates much wider than a pole pitch, touching the magnets, unsaturated (saturation.ts corrects).
 * Source    method of images, Jackson 1999, *Classical Electrodynamics*, §5.11 (from memory).
 * Checked   tests/reference/field-iron.test.ts
 */
export function bodyStack(arrangement: DiscsSection['arrangement'], steel: boolean, gapLength: number, magnetHeight: number): BodyStack {
  const face = gapLength / 2;
  const back = face + magnetHeight;
  const own: Body = steel ? { zCentre: -back, axial: 2 * magnetHeight } : { zCentre: -(face + magnetHeight / 2), axial: magnetHeight };
  const at = (zCentre: number, upper?: boolean): Body => ({ zCentre, axial: own.axial, ...(upper && { upper }) });
  const first = (bodies: Body[]) => (k: number) => (k === 0 ? bodies : []);
  const steelBelow = steel ? -back : -Infinity;

  if (arrangement === 'facing-pair') {
    return {
      // A disc's images stand across the other's plate and its own in turn.
      set: steel
        ? (k) => [at(-(2 * k + 1) * back, k % 2 === 1), at((2 * k + 1) * back, k % 2 === 0)]
        : first([own, at(-own.zCentre, true)]),
      symmetric: true,
      steelBelow,
      steelAbove: -steelBelow,
    };
  }
  if (arrangement === 'single') return { set: first([own]), symmetric: false, steelBelow, steelAbove: Infinity };
  const period = 2 * (gapLength + magnetHeight);
  return {
    set: steel
      ? (k) => (k === 0 ? [own, at(own.zCentre + period)] : [at(own.zCentre - k * period), at(own.zCentre + (k + 1) * period)])
      : first([own, at(gapLength - own.zCentre)]),
    symmetric: false,
    steelBelow,
    steelAbove: face,
  };
}
