import { METALS } from '../constants';
import type { Caution } from '../problem';
import type { WindingSection } from '../winding/section';
import type { WindingResult } from '../winding/stage';
import { wireCautions } from './cautions';
import { fillOf, mostTurns } from './fill';
import { temperatureFactor, wireResistance } from './resistance';
import type { WireSection } from './section';

export interface WireResult {
  /** One coil's wire without leads, one strand. [m] */
  coilLength: number;
  /** All the wire of the machine: every strand, coil and lead. [m] */
  wireLength: number;
  /** Metal and covering taken as metal only. [kg] */
  wireMass: number;
  /** Covered-wire circles' area over the window. [-] */
  fill: number;
  fits: boolean;
  /** Turns to take out so that it fits; 0 when it does. */
  turnsTooMany: number;
  /** Metal section of one turn, all strands. [m²] */
  metalSection: number;
  /** At 20 °C. [Ω] */
  coilResistance20: number;
  phaseResistance20: number;
  cautions: Caution[];
}

/** Length, mass, fit and ohms of the wire. */
export function wireStage(
  winding: WindingSection,
  wire: WireSection,
  { coils, meanTurn, seriesCoils, windowArea }: WindingResult,
): WireResult {
  const { turns, phases, leadLength, parallelPaths, layout, thickness } = winding;
  const metalSection = (wire.inHand * Math.PI * wire.conductorDiameter ** 2) / 4;
  const coilLength = turns * meanTurn;
  const turnLength = coils.length * coilLength + phases * leadLength;
  const coilResistance20 = wireResistance(wire.metal, coilLength, metalSection, 20);
  const turnsTooMany = Math.max(0, turns - mostTurns(wire.inHand, wire.overallDiameter, layout.legWidth, thickness));
  return {
    coilLength,
    wireLength: turnLength * wire.inHand,
    wireMass: turnLength * metalSection * METALS[wire.metal].density,
    fill: fillOf(turns, wire.inHand, wire.overallDiameter, windowArea),
    fits: turnsTooMany === 0,
    turnsTooMany,
    metalSection,
    coilResistance20,
    phaseResistance20: (coilResistance20 * seriesCoils) / parallelPaths + wireResistance(wire.metal, leadLength, metalSection, 20),
    cautions: wireCautions(winding, wire, turnsTooMany),
  };
}

/** Ohms of one phase, coils and leads, with its wire at a temperature. [Ω, °C] */
export function phaseResistance({ phaseResistance20 }: WireResult, { metal }: WireSection, temperature: number): number {
  return phaseResistance20 * temperatureFactor(metal, temperature);
}
