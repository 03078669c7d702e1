import type { MagnetShape } from '../magnets/section';
import { type FieldFunction, shapeModel } from '../magnets/shapes';
import { gapAdmittance, layerPotentials, magnetHarmonic } from './layers';
import { steelPlate } from './plate';
import { recoilFactor, type UnrolledMachine } from './recoil';
import type { DiscsSection } from './section';
import { directField, type FieldSource, fieldSource } from './source';
import { pitchHarmonics } from './spectrum';

/** The machine's field source with what recoil permeability and the steel's saturation take from it already taken. */
export interface CorrectedMachine {
  source: FieldSource;
  recoil: number;
  saturation: number;
  /** Mean flux density across the plate between two poles [T], its permeability there [-], the thickness that would carry it at 1.6 T [m]; steel only. */
  plate?: { fluxDensity: number; permeability: number; thicknessNeeded: number };
  /** b_1, b_3 … at pitch radius and mid-plane, corrected, as they are with the discs in line. [T] */
  harmonics: number[];
}

/**
 * Field source of a machine, corrected as a whole by two factors from the unrolled machine.
 *
 * @param shape               Magnet. [m]
 * @param remanence           Remanence at temperature. [T]
 * @param recoilPermeability  μ_r of the magnets. [-]
 * @param discs               Arrangement, poles, pitch radius, backing. [-]
 * @param gapLength           Gap. [m]
 * @returns                   Source and factors. [-]
 *
 * Omits     that the two corrections differ a little from place to place and order to order, and with the discs' misalignment; saturation of a return plate.
 * Source    images.ts, recoil.ts, plate.ts. The plate's flux is that of the unrolled machine scaled to the real fundamental.
 * Checked   tests/reference/field-iron.test.ts
 */
export function correctedMachine(
  shape: MagnetShape,
  remanence: number,
  recoilPermeability: number,
  discs: DiscsSection,
  gapLength: number,
): CorrectedMachine {
  const machine = unrolled(shape, recoilPermeability, discs, gapLength);
  const ideal = fieldSource(shape, 1, discs, gapLength);
  const harmonics = pitchHarmonics(ideal, 0);
  const recoil = recoilFactor(machine);
  const plate =
    discs.backing.kind === 'steel' ? steelPlate(machine, remanence * reach(ideal, machine, recoil), discs.backing.thickness) : undefined;
  const saturation = plate?.saturation ?? 1;
  const effective = remanence * recoil * saturation;
  return {
    source: { ...ideal, remanence: effective },
    recoil,
    saturation,
    ...(plate && {
      plate: { fluxDensity: plate.fluxDensity, permeability: plate.permeability, thicknessNeeded: plate.thicknessNeeded },
    }),
    harmonics: harmonics.map((b) => b * effective),
  };
}

/**
 * The machine cut open and unrolled along its pitch circle.
 *
 * @param shape               Magnet. [m]
 * @param recoilPermeability  μ_r of the magnets. [-]
 * @param discs               Arrangement, poles, pitch radius, backing. [-]
 * @param gapLength           Gap. [m]
 * @returns                   Unrolled machine. [m]
 *
 * Source    plain geometry; a magnet as wide as its face's area over its length along the radius.
 * Checked   tests/reference/field-iron.test.ts
 */
export function unrolled(shape: MagnetShape, recoilPermeability: number, discs: DiscsSection, gapLength: number): UnrolledMachine {
  const model = shapeModel(shape);
  return {
    arrangement: discs.arrangement,
    steel: discs.backing.kind === 'steel',
    polePitch: (2 * Math.PI * discs.pitchRadius) / discs.poles,
    magnetWidth: model.faceArea(shape) / model.radialLength(shape),
    magnetHeight: shape.axial,
    gapLength,
    recoilPermeability,
  };
}

/** How far before the magnets the real and the unrolled machine are compared, as a share of the pole pitch: clear of edges, still in the field's full strength. */
const COMPARED_AT = 1 / 6;

/** The real fundamental at pitch radius over that of the unrolled machine. [-] */
function reach(ideal: FieldSource, machine: UnrolledMachine, recoil: number): number {
  const distance = Math.min(machine.gapLength / 2, COMPARED_AT * machine.polePitch);
  const [fundamental] = pitchHarmonics(ideal, distance - machine.gapLength / 2);
  return Math.abs((fundamental * recoil) / unrolledFundamental(machine, distance));
}

/**
 * Fundamental of B_z in the gap, machine unrolled and endless along the radius, steel ideal.
 *
 * @param machine   Unrolled machine. [m]
 * @param distance  From the magnets' faces. [m]
 * @returns         Per unit of remanence. [-]
 *
 * Source    layers.ts.
 * Checked   tests/reference/field-iron.test.ts
 */
export function unrolledFundamental(machine: UnrolledMachine, distance: number): number {
  const wave = Math.PI / machine.polePitch;
  const { front } = layerPotentials({
    wave,
    height: machine.magnetHeight,
    recoilPermeability: machine.recoilPermeability,
    back: machine.steel ? Infinity : 1,
    front: gapAdmittance(machine.arrangement, wave, machine.gapLength),
  });
  return (
    magnetHarmonic(1, machine.magnetWidth / machine.polePitch) *
    front *
    gapAdmittance(machine.arrangement, wave, machine.gapLength, distance)
  );
}

/**
 * Flux density of the whole machine at any point in front of the steel.
 *
 * @param shape               Magnet. [m]
 * @param remanence           Remanence at temperature. [T]
 * @param recoilPermeability  μ_r of the magnets. [-]
 * @param discs               Arrangement, poles, pitch radius, backing. [-]
 * @param gapLength           Gap. [m]
 * @returns                   Function of x, y, z: axle z, winding's middle z = 0, magnet 0 on +x. [m] → [T]
 *
 * Omits     leakage behind steel: zero is returned there.
 * Source    direct sum of the closed-form fields, with `correctedMachine`'s factors.
 * Checked   tests/reference/field-rotors.test.ts
 */
export function fieldAt(
  shape: MagnetShape,
  remanence: number,
  recoilPermeability: number,
  discs: DiscsSection,
  gapLength: number,
): FieldFunction {
  return directField(correctedMachine(shape, remanence, recoilPermeability, discs, gapLength).source);
}
