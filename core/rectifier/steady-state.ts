import type { PhaseEmf } from '../emf/stage';

/** The generator, its AC cable counted in, as the rectifier sees it. */
export interface Source {
  connection: 'star' | 'delta' | 'separate';
  polePairs: number;
  orders: number[];
  phaseEmf: PhaseEmf[];
  /** Of each phase, hot. [Ω] */
  resistance: number;
  /** Phase by phase. [H] */
  inductance: number[][];
  /** In each AC line, an AC-side cable. [Ω] */
  lineResistance: number;
}

export interface Bridge {
  arrangement: 'bridge' | 'bridges-in-parallel' | 'bridges-in-series';
  threshold: number;
  slope: number;
}

/** What stands on the DC side: V = emf + resistance · I, I ≥ 0. Cable and load added up by the caller. */
export interface DcSide {
  emf: number;
  resistance: number;
}

export interface SteadyState {
  /** Mean DC current. [A] */
  dcAmps: number;
  /** RMS DC current, for losses in what stands on the DC side. [A] */
  dcAmpsRms: number;
  /** RMS of each phase. [A] */
  phaseAmps: number[];
  /** RMS of each AC line. [A] */
  lineAmps: number[];
  copperLoss: number;
  lineLoss: number;
  diodeLoss: number;
  /** Into the DC side's EMF and resistance. [W] */
  dcWatts: number;
  /** Out of the EMF: equals the losses and dcWatts. [W] */
  emfWatts: number;
}
