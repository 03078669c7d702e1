import type { Caution } from '../problem';

/** A piece of a turn's path in the plane of the winding. [m, rad] Arcs run from angle `start` through `sweep` (counter-clockwise positive). */
export type PathPiece =
  | { kind: 'line'; from: [number, number]; to: [number, number] }
  | { kind: 'arc'; centre: [number, number]; radius: number; start: number; sweep: number };

/** One coil, or one ring of a serpentine. */
export interface Coil {
  coil: number;
  phase: number;
  direction: 1 | -1;
  /** Mechanical angle by which the layout's first coil is turned. [rad] */
  angle: number;
  /** Middle of the coil's copper above the mid-plane. [m] */
  height: number;
  /** Series group within the phase, from 1. */
  path: number;
}

export interface WindingResult {
  coils: Coil[];
  /** Coils in series in each parallel path of a phase. */
  seriesCoils: number;
  /** Axial height of all the copper. [m] */
  copperHeight: number;
  /** Radii between which copper lies. [m] */
  innerRadius: number;
  outerRadius: number;
  /** Window of one coil's leg: width × thickness. [m²] */
  windowArea: number;
  /** Mean length of one turn over the real section, corners rounded. [m] */
  meanTurn: number;
  /** Serpentine only: pegs for the skein. Distance between the pegs' centres and the peg diameter assumed. [m] */
  pegs?: { distance: number; diameter: number; bundleDepth: number };
  /** Textbook values beside the integrated result. [-] */
  factors: { distribution: number; pitch: number; winding: number };
  /** Whether all phases have EMF of equal size and even spacing. */
  balanced: boolean;
  /** Greatest departure of a phase's EMF from the mean, as a fraction. [-] */
  unbalance: number;
  /** Combinations near this one that balance, in words, when it does not. */
  nearestBalanced: string[];
  cautions: Caution[];
}
