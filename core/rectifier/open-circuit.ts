import type { PhaseEmf } from '../emf/stage';
import type { Bridge, Source } from './steady-state';

/** Looks over a half period for the neighbourhood of the peak, and halvings-or-so that then close in on it. */
const LOOKS = 240;
const CLOSINGS = 24;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Open-circuit DC volts of a rectifier over the shaft's speed, before the diodes' thresholds.
 *
 * @param source  Generator. [V·s/rad]
 * @param bridge  Rectifier. [-]
 * @returns       Greatest value over a period. [V·s/rad] In delta the zero-sequence part drives a current round and does not show.
 *
 * Source    greatest difference of terminal potentials; sum of phases for bridges in series. Golden section about the highest of many looks: a peak is
 *           smooth, only the valleys have kinks.
 * Checked   tests/core/rectifier/open-circuit.test.ts
 */
export function openCircuitPeak(source: Source, bridge: Bridge): number {
  const step = Math.PI / LOOKS;
  const at = (angle: number) => instant(source, bridge, angle);
  let highest = 0;
  let most = -Infinity;
  for (let k = 0; k < LOOKS; k++) {
    const here = at(k * step);
    if (here > most) [most, highest] = [here, k];
  }
  let [low, high] = [(highest - 1) * step, (highest + 1) * step];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [at(left), at(right)];
  for (let closing = 0; closing < CLOSINGS; closing++) {
    if (atLeft > atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = at(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = at(right);
    }
  }
  return Math.max(atLeft, atRight);
}

/**
 * Thresholds between EMF and DC side.
 *
 * @param source  Generator. [-]
 * @param bridge  Rectifier. [V]
 * @returns       Two diodes, or two for each bridge in series. [V]
 *
 * Source    the path of the current.
 * Checked   tests/core/rectifier/open-circuit.test.ts
 */
export function pathThreshold(source: Source, bridge: Bridge): number {
  return 2 * bridge.threshold * (inSeries(source, bridge) ? source.phaseEmf.length : 1);
}

/**
 * Shaft speed at which current begins to flow into a DC side.
 *
 * @param source  Generator. [V·s/rad]
 * @param bridge  Rectifier. [V]
 * @param dcEmf   EMF of the DC side. [V]
 * @returns       Speed, or undefined for a machine without EMF. [rad/s]
 *
 * Source    rectified peak = dcEmf + thresholds; both sides known exactly.
 * Checked   tests/laws/rectifier.test.ts
 */
export function cutInSpeed(source: Source, bridge: Bridge, dcEmf: number): number | undefined {
  const peak = openCircuitPeak(source, bridge);
  return peak > 0 ? (dcEmf + pathThreshold(source, bridge)) / peak : undefined;
}

const inSeries = ({ connection, phaseEmf }: Source, { arrangement }: Bridge) =>
  (connection === 'separate' || phaseEmf.length === 1) && arrangement === 'bridges-in-series';

function instant(source: Source, bridge: Bridge, angle: number): number {
  const { connection, phaseEmf, orders } = source;
  const e = phaseEmf.map((emf) => value(emf, orders, angle));
  if (connection === 'separate' || e.length === 1) {
    const sizes = e.map(Math.abs);
    return inSeries(source, bridge) ? sizes.reduce((a, b) => a + b, 0) : Math.max(...sizes);
  }
  if (connection === 'star') return Math.max(...e) - Math.min(...e);
  const mean = e.reduce((a, b) => a + b, 0) / e.length;
  let potential = 0;
  const corners = e.map((v) => (potential -= v - mean));
  return Math.max(...corners) - Math.min(...corners);
}

function value({ cos, sin }: PhaseEmf, orders: readonly number[], angle: number): number {
  let sum = 0;
  for (let h = 0; h < orders.length; h++) sum += cos[h] * Math.cos(orders[h] * angle) + sin[h] * Math.sin(orders[h] * angle);
  return sum;
}
