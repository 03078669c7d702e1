import type { PhaseEmf } from './stage';

/**
 * EMF of a coil from its linkage, over the shaft's speed.
 *
 * @param linkage    λ_n of one turn as if the coil lay on +x. [Wb]
 * @param orders     n. [-]
 * @param polePairs  p. [-]
 * @param angle      Mechanical angle of the coil, β. [rad]
 * @param turns      N. [-]
 * @param skew       μ_n, the part in quadrature that misaligned discs give a coil off their mid-plane. [Wb]
 * @returns          Cosine and sine parts over the electrical angle of the shaft. [V·s/rad]
 *
 *   Λ = N Σ λ_n cos[n p (α − β)] − μ_n sin[n p (α − β)],  e = −dΛ/dt = ω N Σ n p (λ_n sin[n p (α − β)] + μ_n cos[n p (α − β)])
 *
 * Source    Faraday's law.
 * Checked   tests/laws/emf.test.ts
 */
export function coilEmf(
  linkage: readonly number[],
  orders: readonly number[],
  polePairs: number,
  angle: number,
  turns: number,
  skew?: readonly number[],
): PhaseEmf {
  const cos: number[] = [];
  const sin: number[] = [];
  orders.forEach((n, h) => {
    const [c, s] = [Math.cos(n * polePairs * angle), Math.sin(n * polePairs * angle)];
    const along = turns * n * polePairs * linkage[h];
    const across = skew ? turns * n * polePairs * skew[h] : 0;
    cos.push(across * c - along * s);
    sin.push(along * c + across * s);
  });
  return { cos, sin };
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
  const sum = (key: keyof PhaseEmf) => {
    const total = new Array<number>(parts[0][key].length).fill(0);
    parts.forEach((part, i) => {
      const values = part[key];
      for (let h = 0; h < total.length; h++) total[h] += weights[i] * values[h];
    });
    return total;
  };
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
  let sum = 0;
  for (let h = 0; h < orders.length; h++) sum += emf.cos[h] * Math.cos(orders[h] * angle) + emf.sin[h] * Math.sin(orders[h] * angle);
  return sum;
}

/**
 * Share of harmonics in a waveform.
 *
 * @param emf  EMF. [V·s/rad]
 * @returns    RMS of all harmonics over that of the fundamental; 0 where there is no fundamental. [-]
 *
 * Source    total harmonic distortion, IEC 61000-2-2 (from memory).
 * Checked   tests/laws/emf.test.ts
 */
export function distortion(emf: PhaseEmf): number {
  const fundamental = harmonicPeak(emf, 0);
  const rest = rms({ cos: emf.cos.slice(1), sin: emf.sin.slice(1) }) * Math.SQRT2;
  return fundamental > 0 ? rest / fundamental : 0;
}
