import type { Caution } from '../problem';

/** One phase's EMF per unit of shaft speed: e(t) = ω_shaft Σ_h [cos[h] cos(n_h θe) + sin[h] sin(n_h θe)], θe = p·θ_shaft. [V·s/rad] */
export interface PhaseEmf {
  cos: number[];
  sin: number[];
}

export interface EmfResult {
  polePairs: number;
  orders: number[];
  /** Of each coil alone, direction as wound (not counting how it is joined). */
  coilEmf: PhaseEmf[];
  /** Of each phase, terminal to terminal, parallel paths counted. */
  phaseEmf: PhaseEmf[];
  /** Fundamental of the first phase. [V·s/rad] */
  peakPerRadPerSecond: number;
  coilRmsPer1000rpm: number;
  phaseRmsPer1000rpm: number;
  /** Between neighbouring terminals: √3 × phase for a balanced star (without triplen harmonics), phase for delta and separate. */
  lineRmsPer1000rpm: number;
  /** Harmonics' RMS over the fundamental's, phase voltage. [-] */
  distortion: number;
  hertzPer1000rpm: number;
  /** One period of the first phase and of the line at 1000 rpm. Electrical angle in rad, V. */
  waveform: { angle: number[]; phase: number[]; line: number[] };
  /** Self and mutual inductance of the phases, and of a coil alone. [H] */
  inductance: number[][];
  coilInductance: number;
  phaseInductance: number;
  cautions: Caution[];
}
