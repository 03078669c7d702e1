import type { DiscsSection } from './section';

/**
 * Field in the gap by the textbook's magnetic circuit: all flux crosses the gap straight, steel takes no effort.
 *
 *   B = B_r / (1 + μ_r g / h)
 *
 * @param remanence           Remanence at temperature, B_r. [T]
 * @param recoilPermeability  μ_r. [-]
 * @param gapLength           From face to face, or to the return plate, g. [m]
 * @param magnetHeight        Height of magnet that the flux crosses, both discs' together, h. [m]
 * @returns                   Flux density under a magnet. [T]
 *
 * Valid     gaps much less than magnets are wide.
 * Omits     leakage from magnet to magnet, fall-off at the ends, saturation: what `fieldStage` works out.
 * Source    Hanselman 2003, *Brushless Permanent Magnet Motor Design*, ch. 2 (from memory).
 * Checked   tests/core/field/textbook.test.ts
 */
export function circuitField(remanence: number, recoilPermeability: number, gapLength: number, magnetHeight: number): number {
  return remanence / (1 + (recoilPermeability * gapLength) / magnetHeight);
}

/**
 * Height of magnet in the circuit of a machine whose flux has steel to return through on both sides.
 *
 * @param discs  Arrangement and backing. [-]
 * @param axial  Height of one magnet. [m]
 * @returns      Height; undefined without steel on both sides, where the flux has no circuit that a textbook could reckon with. [m]
 *
 * Valid     every arrangement.
 * Omits     nothing.
 * Source    plain geometry.
 * Checked   tests/core/field/textbook.test.ts
 */
export function circuitHeight({ arrangement, backing }: Pick<DiscsSection, 'arrangement' | 'backing'>, axial: number): number | undefined {
  if (backing.kind !== 'steel' || arrangement === 'single') return undefined;
  return arrangement === 'facing-pair' ? 2 * axial : axial;
}
