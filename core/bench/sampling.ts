import type { PhaseEmf } from '../emf/stage';

/** Cosines and sines of all orders at even steps over the shortest stretch that tells a whole wave. */
export interface Sampling {
  /** Half a period where all orders are odd multiples of the lowest (the other half is its mirror image), else a whole one. [rad] */
  span: number;
  isHalf: boolean;
  angles: number[];
  cos: Float64Array[];
  sin: Float64Array[];
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
const known = new WeakMap<readonly number[], Map<string, Sampling>>();

/**
 * Places at which waves of some orders are looked at; made once for a list of orders.
 *
 * @param orders   Orders, counted by the turn of the shaft. [-]
 * @param perTurn  Samples to a period of the highest order. [-]
 * @param whole    Whether a whole period is wanted where half of one would do. [-]
 * @returns        Angles, both ends included, and the functions there. [rad]
 *
 * Source    Fourier series.
 * Checked   tests/core/bench/meter.test.ts
 */
export function samplingOf(orders: readonly number[], perTurn: number, whole = false): Sampling {
  const kept = known.get(orders) ?? new Map<string, Sampling>();
  known.set(orders, kept);
  const key = `${perTurn} ${whole}`;
  const found = kept.get(key);
  if (found) return found;
  const base = orders.reduce(gcd);
  const isHalf = !whole && orders.every((n) => (n / base) % 2 === 1);
  const span = (isHalf ? Math.PI : 2 * Math.PI) / base;
  const count = Math.max(16, Math.ceil((perTurn * Math.max(...orders) * span) / (2 * Math.PI)));
  const angles = Array.from({ length: count + 1 }, (_, i) => (i * span) / count);
  const table = (f: (x: number) => number) => orders.map((n) => Float64Array.from(angles, (angle) => f(n * angle)));
  const made = { span, isHalf, angles, cos: table(Math.cos), sin: table(Math.sin) };
  kept.set(key, made);
  return made;
}

/** A wave at every angle of a sampling. */
export function sampledValues({ cos, sin }: PhaseEmf, sampling: Sampling): Float64Array {
  const values = new Float64Array(sampling.angles.length);
  for (let h = 0; h < cos.length; h++) {
    const [c, s, cosines, sines] = [cos[h], sin[h], sampling.cos[h], sampling.sin[h]];
    if (c === 0 && s === 0) continue;
    for (let i = 0; i < values.length; i++) values[i] += c * cosines[i] + s * sines[i];
  }
  return values;
}
