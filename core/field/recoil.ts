import { gapAdmittance, layerPotentials } from './layers';
import type { DiscsSection } from './section';

/** The unrolled machine: everything along the pitch circle. */
export interface UnrolledMachine {
  arrangement: DiscsSection['arrangement'];
  /** Whether steel lies behind the magnets. */
  steel: boolean;
  /** Pole pitch along the pitch circle. [m] */
  polePitch: number;
  /** Mean width of a magnet along the pitch circle. [m] */
  magnetWidth: number;
  magnetHeight: number;
  gapLength: number;
  recoilPermeability: number;
}

/**
 * Factor by which a recoil permeability above 1 weakens the gap field, from the fundamental of the two-dimensional solution with and without it.
 *
 * @param machine  Unrolled machine. [m]
 * @returns        Factor, at most 1. [-]
 *
 * Valid     μ_r up to about 1.2. The layer is taken to have μ_r all round the disc, the spaces between magnets included, which exaggerates the loss by up to
 *           a sixth of itself: 0.4 % of the field at μ_r = 1.05.
 * Source    Furlani 2001; Bumby & Martin 2005 (from memory).
 * Checked   tests/reference/field-iron.test.ts
 */
export function recoilFactor({ arrangement, steel, polePitch, magnetHeight, gapLength, recoilPermeability }: UnrolledMachine): number {
  const wave = Math.PI / polePitch;
  const layer = { wave, height: magnetHeight, back: steel ? Infinity : 1, front: gapAdmittance(arrangement, wave, gapLength) };
  return layerPotentials({ ...layer, recoilPermeability }).front / layerPotentials({ ...layer, recoilPermeability: 1 }).front;
}
