import type { Layout } from '../winding/section';

/** Instants looked at over half a period, the longest a crest can take. */
const STEPS = 60;

/**
 * Greatest current of a phase shorted all at once while it turns, at the worst instant.
 *
 *   Î = Ê / √(R² + X²) · max over x of √(1 + d² − 2 d cos x),  d = e^(−x R / X)
 *
 * @param peak        Peak EMF of the phase, Ê. [V]
 * @param resistance  Of the phase, R. [Ω]
 * @param reactance   Of the phase at that speed, its neighbours' share counted, X. [Ω]
 * @returns           First crest: with no resistance twice the steady one, with no reactance the steady one. [A]
 *
 * Omits     harmonics, the short's own resistance, the field's weakening by the current.
 * Source    switched R–L circuit: e^(jωt) less its own beginning dying away, the worst instant of switching for each x = ωt.
 * Checked   tests/core/emf/short-circuit.test.ts
 */
export function shortedPeak(peak: number, resistance: number, reactance: number): number {
  let most = 1;
  for (let step = 1; step <= STEPS; step++) {
    const x = (Math.PI * step) / STEPS;
    const left = reactance > 0 ? Math.exp((-x * resistance) / reactance) : 0;
    most = Math.max(most, Math.sqrt(1 + left ** 2 - 2 * left * Math.cos(x)));
  }
  return (peak / Math.hypot(resistance, reactance)) * most;
}

/**
 * Ampere-turns with which the currents of all phases can act on one pole, a bound.
 *
 *   coils side by side: N Î; rings, whose legs alternate:  m N Î / π, the wave of m phases, and never taken as less than N Î
 *
 * @param layout  Layout; only its kind counts. [-]
 * @param phases  m. [-]
 * @param turns   Per coil, or per ring, N. [-]
 * @param amps    Peak in each turn, Î. [A]
 * @returns       Ampere-turns. [A]
 *
 * Omits     leakage, and the part of a coil's field that comes back beside it: both spare the magnets.
 * Source    rotating field of a polyphase winding, as in any textbook of machines (from memory); Ampère's law.
 * Checked   tests/core/emf/short-circuit.test.ts
 */
export function poleAmpereTurns(layout: Pick<Layout, 'kind'>, phases: number, turns: number, amps: number): number {
  const together = layout.kind === 'serpentine' ? Math.max(1, phases / Math.PI) : 1;
  return together * turns * amps;
}
