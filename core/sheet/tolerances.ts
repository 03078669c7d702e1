import type { Results } from '../chain/results';
import { METALS } from '../constants';
import type { Design } from '../design/schema';
import { tolerancesOf } from '../explore/tolerances';
import { mm } from './figures';

/**
 * What a careful builder and the bench leave open besides the design's own tolerances, each as a half-width that 19 of 20 keep within.
 * Common practice, no source.
 */
const BENCH_TOLERANCES = {
  /** Turns: the leads leave beside each other or opposite each other. Miscounted ones are left out: a reading is there to find them. [-] */
  turns: 0.5,
  /** Share of a turn's length, and of the flux through it, by how the wire happens to lie. */
  turnLength: 0.02,
  linkage: 0.01,
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

/** Pass bands from the design's tolerances, each effect taken as linear and all as independent: root of the sum of squares. */
export function passBands(design: Design, { gap }: Results): Bands {
  const { discs, magnets, winding } = design;
  const own = tolerancesOf(design);
  const bench = BENCH_TOLERANCES;
  const held = discs.arrangement === 'single' ? gap.length / 2 : gap.length;
  const wavenumber = discs.poles / 2 / discs.pitchRadius;
  const turns = bench.turns / winding.turns;
  return {
    ohms: rootSumSquare(
      2 * own.wire,
      bench.turnLength,
      turns,
      bench.roomTemperature * METALS[winding.wire.metal].temperatureCoefficient,
      bench.meter,
    ),
    volts: rootSumSquare(
      own.remanence,
      own.gap * gapSensitivity(discs.arrangement, discs.backing.kind === 'steel', wavenumber, magnets.shape.axial, held),
      own.magnetTemperature * magnets.remanenceTempCoefficient,
      turns,
      bench.linkage,
      bench.meter,
    ),
  };
}

/** What the bands hold, in words. */
export function bandWords(design: Design): string {
  const { gap, remanence, wire, magnetTemperature } = tolerancesOf(design);
  const share = (value: number) => `${Number((100 * value).toFixed(2))} %`;
  return `${mm(gap)} of gap, ${share(remanence)} of remanence, ${Number(magnetTemperature.toFixed(1))} K in the magnets, ${share(wire)} of the wire’s diameter, ${share(BENCH_TOLERANCES.turnLength)} of a turn’s length and ${share(BENCH_TOLERANCES.meter)} of the meter`;
}
