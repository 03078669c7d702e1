import { harmonicsAt } from './harmonics';
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
  const at = instantOf(source, bridge);
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
 * @param openPeak   Of `openCircuitPeak`. [V·s/rad]
 * @param threshold  Of `pathThreshold`. [V]
 * @param dcEmf      EMF of the DC side. [V]
 * @returns          Speed, or undefined for a machine without EMF. [rad/s]
 *
 * Source    rectified peak = dcEmf + thresholds; both sides known exactly.
 * Checked   tests/laws/rectifier.test.ts
 */
export function cutInSpeed(openPeak: number, threshold: number, dcEmf: number): number | undefined {
  return openPeak > 0 ? (dcEmf + threshold) / openPeak : undefined;
}

const inSeries = ({ connection, phaseEmf }: Source, { arrangement }: Bridge) =>
  (connection === 'separate' || phaseEmf.length === 1) && arrangement === 'bridges-in-series';

/** Rectified volts of the open machine over the angle. */
function instantOf(source: Source, bridge: Bridge): (angle: number) => number {
  const { connection, phaseEmf, orders } = source;
  const cosines = new Float64Array(orders.length);
  const sines = new Float64Array(orders.length);
  const e = phaseEmf.map(() => 0);
  const apart = connection === 'separate' || phaseEmf.length === 1;
  const series = inSeries(source, bridge);
  return (angle) => {
    harmonicsAt(angle, orders, cosines, sines);
    phaseEmf.forEach(({ cos, sin }, k) => {
      e[k] = 0;
      for (let h = 0; h < orders.length; h++) e[k] += cos[h] * cosines[h] + sin[h] * sines[h];
    });
    if (apart) return series ? e.reduce((sum, v) => sum + Math.abs(v), 0) : Math.max(...e.map(Math.abs));
    if (connection === 'star') return Math.max(...e) - Math.min(...e);
    const mean = e.reduce((sum, v) => sum + v, 0) / e.length;
    let potential = 0;
    const corners = e.map((v) => (potential -= v - mean));
    return Math.max(...corners) - Math.min(...corners);
  };
}
