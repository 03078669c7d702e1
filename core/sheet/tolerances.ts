import type { Results } from '../chain/results';
import { METALS } from '../constants';
import type { Design } from '../design/schema';

/**
 * How far a careful hand-built machine may be from its plan, each as a half-width that 19 of 20 keep within.
 * Common practice, no source, but for the wire: IEC 60317-0-1 allows the conductor 1 % of its diameter (from memory).
 */
export const BUILD_TOLERANCES = {
  /** Share of the remanence: magnets of one grade differ from delivery to delivery. */
  remanence: 0.025,
  /** Distance that is held between magnets, or from magnets to plate or winding. [m] */
  gap: 0.5e-3,
  /** Magnets against the temperature that was assumed. [K] */
  magnetTemperature: 10,
  /** Turns: the leads leave beside each other or opposite each other. [-] */
  turns: 0.5,
  /** Share of a turn's length, and of the flux through it, by how the wire happens to lie. */
  turnLength: 0.02,
  linkage: 0.01,
  /** Share of the conductor's diameter. */
  conductorDiameter: 0.01,
  /** Winding against the room's thermometer. [K] */
  roomTemperature: 2,
  /** Share of what the meter shows. */
  meter: 0.01,
} as const;

/** Half-widths within which a reading passes, as shares of what it must be. */
export interface Bands {
  ohms: number;
  volts: number;
}

const rootSumSquare = (...shares: number[]) => Math.hypot(...shares);

/**
 * How strongly the fundamental in the middle of the winding falls with the distance that is held.
 *
 * @param arrangement  Facing pair, single disc, or disc with a plain return plate. [-]
 * @param backed       Whether steel stands behind the magnets. [-]
 * @param wavenumber   Pole pairs over pitch radius, k. [1/m]
 * @param magnet       Magnet thickness, h. [m]
 * @param length       Distance that is held: face to face, face to plate, or face to the winding's middle, g. [m]
 * @returns            −d ln b₁ / dg. [1/m]
 *
 *   facing, steel    b₁ ∝ 1 / sinh k(h + g/2)                      k/2 · coth k(h + g/2)
 *   facing, no steel b₁ ∝ exp(−kg/2)                               k/2
 *   return plate     b₁ ∝ cosh(kg/2) / sinh k(h + g)               k · coth k(h + g) − k/2 · tanh(kg/2)
 *   … without steel behind the magnets b₁ ∝ exp(−kg/2) (1 + exp(−kg))   k/2 · (1 + 2 / (1 + exp(kg)))
 *   single           b₁ ∝ exp(−kg)                                 k
 *
 * Valid     flat machine: pole pitch small against the pitch radius.
 * Omits     recoil permeability, saturation, and the field's fall towards the magnets' radial ends, which makes it up to a fifth too low.
 * Source    two-dimensional potential with images in the steel: Bumby and Martin (2005), IEE Proc. Electr. Power Appl. 152, 1065 (from memory).
 * Checked   tests/core/sheet/tolerances.test.ts, against the three-dimensional field of this program.
 */
export function gapSensitivity(
  arrangement: Design['discs']['arrangement'],
  backed: boolean,
  wavenumber: number,
  magnet: number,
  length: number,
): number {
  const k = wavenumber;
  switch (arrangement) {
    case 'facing-pair':
      return backed ? k / 2 / Math.tanh(k * (magnet + length / 2)) : k / 2;
    case 'single-with-return':
      return backed
        ? k / Math.tanh(k * (magnet + length)) - (k / 2) * Math.tanh((k * length) / 2)
        : (k / 2) * (1 + 2 / (1 + Math.exp(k * length)));
    case 'single':
      return k;
  }
}

/** Pass bands from the tolerances of a careful build, each effect taken as linear and all as independent: root of the sum of squares. */
export function passBands({ discs, magnets, winding }: Design, { gap }: Results): Bands {
  const t = BUILD_TOLERANCES;
  const held = discs.arrangement === 'single' ? gap.length / 2 : gap.length;
  const wavenumber = discs.poles / 2 / discs.pitchRadius;
  const turns = t.turns / winding.turns;
  return {
    ohms: rootSumSquare(
      2 * t.conductorDiameter,
      t.turnLength,
      turns,
      t.roomTemperature * METALS[winding.wire.metal].temperatureCoefficient,
      t.meter,
    ),
    volts: rootSumSquare(
      t.remanence,
      t.gap * gapSensitivity(discs.arrangement, discs.backing.kind === 'steel', wavenumber, magnets.shape.axial, held),
      t.magnetTemperature * magnets.remanenceTempCoefficient,
      turns,
      t.linkage,
      t.meter,
    ),
  };
}
