import type { Caution } from '../problem';

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
