import type { PhaseEmf } from './stage';

/**
 * EMF of a coil from its linkage, over the shaft's speed.
 *
 * @param linkage    λ_h, all turns counted. [Wb]
 * @param orders     n_h. [-]
 * @param polePairs  p. [-]
 * @param angle      Mechanical angle of the coil. [rad]
 * @returns          Cosine and sine parts over the electrical angle of the shaft. [V·s/rad]
 *
 *   e = −dΛ/dt = ω Σ n p λ_n sin[n p (α − β)]
 *
 * Source    Faraday's law.
 * Checked   tests/laws/emf.test.ts
 */
export function coilEmf(linkage: readonly number[], orders: readonly number[], polePairs: number, angle: number): PhaseEmf {
  const turned = orders.map((n) => n * polePairs * angle);
  return {
    cos: linkage.map((l, h) => -orders[h] * polePairs * l * Math.sin(turned[h])),
    sin: linkage.map((l, h) => orders[h] * polePairs * l * Math.cos(turned[h])),
  };
}

/**
 * Weighted sum of EMFs.
 *
 * @param parts    EMFs of equal orders. [V·s/rad]
 * @param weights  One for each. [-]
 * @returns        Sum. [V·s/rad]
 *
 * Source    superposition.
 * Checked   tests/laws/emf.test.ts
 */
export function combined(parts: readonly PhaseEmf[], weights: readonly number[]): PhaseEmf {
  const sum = (key: keyof PhaseEmf) => parts[0][key].map((_, h) => parts.reduce((total, part, i) => total + weights[i] * part[key][h], 0));
  return { cos: sum('cos'), sin: sum('sin') };
}

/**
 * RMS over a period, over the shaft's speed.
 *
 * @param emf  EMF. [V·s/rad]
 * @returns    RMS. [V·s/rad]
 *
 * Source    Parseval.
 * Checked   tests/laws/emf.test.ts
 */
export function rms(emf: PhaseEmf): number {
  return Math.sqrt(emf.cos.reduce((sum, c, h) => sum + (c * c + emf.sin[h] ** 2) / 2, 0));
}

/**
 * Peak of one harmonic, over the shaft's speed.
 *
 * @param emf    EMF. [V·s/rad]
 * @param index  Place of the harmonic in the list of orders. [-]
 * @returns      Peak. [V·s/rad]
 *
 * Source    amplitude of a phasor.
 * Checked   tests/laws/emf.test.ts
 */
export function harmonicPeak(emf: PhaseEmf, index: number): number {
  return Math.hypot(emf.cos[index], emf.sin[index]);
}

/**
 * Value at one electrical angle, over the shaft's speed.
 *
 * @param emf     EMF. [V·s/rad]
 * @param orders  n_h. [-]
 * @param angle   Electrical angle of the shaft. [rad]
 * @returns       Value. [V·s/rad]
 *
 * Source    Fourier sum.
 * Checked   tests/laws/emf.test.ts
 */
export function valueAt(emf: PhaseEmf, orders: readonly number[], angle: number): number {
  return orders.reduce((sum, n, h) => sum + emf.cos[h] * Math.cos(n * angle) + emf.sin[h] * Math.sin(n * angle), 0);
}
