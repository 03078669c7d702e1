import type { PhaseEmf } from './stage';
import { combined } from './waveform';

/**
 * What all phases have in common: of a balanced machine its third harmonics, their multiples, and nothing else.
 *
 *   e₀ = Σ e_j / m
 *
 * @param phaseEmf  EMF of each phase. [V·s/rad]
 * @returns         Zero-sequence EMF. [V·s/rad]
 *
 * Source    symmetrical components, Fortescue 1918, *Trans. AIEE* 37, 1027 (from memory).
 * Checked   tests/core/emf/zero-sequence.test.ts
 */
export function zeroSequence(phaseEmf: readonly PhaseEmf[]): PhaseEmf {
  return combined(
    phaseEmf,
    phaseEmf.map(() => 1 / phaseEmf.length),
  );
}

/** A closed delta at one speed. */
export interface DeltaLoop {
  /** Electrical angular frequency, ω. [rad/s] */
  omega: number;
  /** Of one phase. [Ω] */
  resistance: number;
  /** Of the phases. [H] */
  inductance: readonly (readonly number[])[];
}

/**
 * Current that circulates in a closed delta with nothing connected.
 *
 *   I = √Σ ½ |e₀,n|² / (R² + (n ω L₀)²),   L₀ = Σ Σ L_ij / m
 *
 * @param common     Peak of each harmonic of the zero-sequence EMF, e₀. [V]
 * @param orders     n. [-]
 * @param loop       Frequency, resistance and inductance. [rad/s, Ω, H]
 * @returns          RMS. [A]
 *
 * Source    Kirchhoff's voltage law round the loop.
 * Checked   tests/core/emf/zero-sequence.test.ts
 */
export function circulatingCurrent(
  common: readonly number[],
  orders: readonly number[],
  { omega, resistance, inductance }: DeltaLoop,
): number {
  const together = inductance.reduce((sum, row) => sum + row.reduce((a, b) => a + b, 0), 0) / inductance.length;
  return Math.sqrt(common.reduce((sum, e, h) => sum + e ** 2 / 2 / (resistance ** 2 + (orders[h] * omega * together) ** 2), 0));
}
