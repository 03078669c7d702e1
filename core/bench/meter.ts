import type { PhaseEmf } from '../emf/stage';
import { rms, valueAt } from '../emf/waveform';
import { sampledValues, samplingOf } from './sampling';

/** A voltage over the shaft's angle: Σ cos[h] cos(n_h α) + sin[h] sin(n_h α), orders n_h counted by the turn of the shaft. [V·s/rad, or V at a speed] */
export interface Wave extends PhaseEmf {
  orders: readonly number[];
}

/** What stands between the terminals: an average-responding meter marked in RMS of a sine, a true-RMS meter, or a scope read from zero to peak. */
export type MeterKind = 'average' | 'rms' | 'peak';

/** RMS over mean rectified of a sine, π/2√2: what an average-responding meter multiplies by. */
export const SINE_FORM = Math.PI / (2 * Math.SQRT2);

/** Samples to a period of the highest harmonic: fine enough to find every zero and every peak. */
const FINE = 8;

/** Integral of a wave from 0 to an angle. */
const primitive = ({ orders, cos, sin }: Wave, angle: number) =>
  orders.reduce((sum, n, h) => sum + (cos[h] * Math.sin(n * angle) + sin[h] * (1 - Math.cos(n * angle))) / n, 0);

/**
 * Mean of |v| over a period.
 *
 * @param wave  Voltage. [V]
 * @returns     Mean. [V]
 *
 *   Σ |V(zero) − V(next zero)| / span, V the integral of v: exact but for the zeros, in whose error it is of second order
 *
 * Source    definition; zeros between samples by one secant step.
 * Checked   tests/core/bench/meter.test.ts
 */
export function meanRectified(wave: Wave): number {
  const sampling = samplingOf(wave.orders, FINE);
  const values = sampledValues(wave, sampling);
  const { angles, span } = sampling;
  const edges: number[] = [];
  for (let i = 1; i < values.length; i++)
    if (values[i - 1] * values[i] < 0)
      edges.push(angles[i - 1] + ((angles[i] - angles[i - 1]) * values[i - 1]) / (values[i - 1] - values[i]));
  edges.push(span);
  let sum = 0;
  let before = 0;
  for (const edge of edges) {
    const here = primitive(wave, edge);
    sum += Math.abs(here - before);
    before = here;
  }
  return sum / span;
}

/**
 * Greatest |v| over a period.
 *
 * @param wave  Voltage. [V]
 * @returns     Peak. [V]
 *
 * Source    parabola through the highest of many samples and its neighbours.
 * Checked   tests/core/bench/meter.test.ts
 */
export function peakOf(wave: Wave): number {
  const sampling = samplingOf(wave.orders, FINE);
  const sizes = sampledValues(wave, sampling).map(Math.abs);
  const at = sizes.reduce((best, size, i) => (size > sizes[best] ? i : best), 0);
  const step = sampling.angles[1];
  const [left, right] = [-1, 1].map((side) => Math.abs(valueAt(wave, wave.orders, sampling.angles[at] + side * step)));
  const bend = left - 2 * sizes[at] + right;
  return bend < 0 ? sizes[at] - (right - left) ** 2 / (8 * bend) : sizes[at];
}

/**
 * What a meter shows on a wave.
 *
 * @param wave  Voltage. [V]
 * @param kind  Meter. [-]
 * @returns     Average-responding: π/2√2 = 1.1107 of the mean rectified value; true RMS; or peak. [V]
 *
 * Omits     the meter's own fall-off with frequency: good to some 400 Hz (common practice, no source); above that see its data sheet.
 * Source    form factor of a sine, IEC 60050-103-06-14 for the term (from memory).
 * Checked   tests/core/bench/meter.test.ts
 */
export function meterReading(wave: Wave, kind: MeterKind): number {
  switch (kind) {
    case 'average':
      return SINE_FORM * meanRectified(wave);
    case 'rms':
      return rms(wave);
    case 'peak':
      return peakOf(wave);
  }
}
