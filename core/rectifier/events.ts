/** Guards at an angle. [electrical rad; A or V] */
export interface Look {
  angle: number;
  guards: number[];
}

/**
 * Between which angles a guard may have failed: it has at the last look, or a parabola through the last three says that it dips below zero between
 * them and comes up again.
 *
 * @param seen  Two or three looks, rising; no guard negative before the last. [electrical rad]
 * @returns     A look before the failure and an angle at which to look again, undefined where nothing hints at one. [electrical rad]
 *
 * Valid     guards that bend once between three looks: the flow looks often enough.
 * Source    parabola through three points.
 * Checked   tests/core/rectifier/events.test.ts
 */
export function suspicion(seen: readonly Look[]): { low: Look; high: number } | undefined {
  const [b, c] = seen.slice(-2);
  if (c.guards.some((guard) => guard < 0)) return { low: b, high: c.angle };
  if (seen.length < 3) return undefined;
  const a = seen[seen.length - 3];
  const [before, after] = [b.angle - a.angle, c.angle - b.angle];
  let lowest = 0;
  let high: number | undefined;
  for (let g = 0; g < c.guards.length; g++) {
    const rise = (b.guards[g] - a.guards[g]) / before;
    const bend = ((c.guards[g] - b.guards[g]) / after - rise) / (before + after);
    if (bend <= 0) continue;
    const slope = rise + bend * before;
    const bottom = b.angle - slope / (2 * bend);
    const value = b.guards[g] - slope ** 2 / (4 * bend);
    if (bottom > a.angle && bottom < c.angle && value < lowest) [lowest, high] = [value, bottom];
  }
  return high === undefined ? undefined : { low: high > b.angle ? b : a, high };
}

const MOST_TRIES = 60;
const CLOSE = 1e-11;

/**
 * Angle at which a margin fails.
 *
 * @param margin  Least guard over the angle. [electrical rad → A or V]
 * @param low     Where it is not negative. [electrical rad]
 * @param atLow   Its value there. [A or V]
 * @param high    Where it is negative. [electrical rad]
 * @param atHigh  Its value there. [A or V]
 * @returns       An angle within 1e-11 after a failure, where the margin is negative. [electrical rad]
 *
 * Source    false position, Illinois rule: Dowell & Jarratt 1971, BIT 11, 168 (from memory).
 * Checked   tests/core/rectifier/events.test.ts
 */
export function failure(margin: (angle: number) => number, low: number, atLow: number, high: number, atHigh: number): number {
  let side = 0;
  for (let tries = 0; tries < MOST_TRIES && high - low > CLOSE; tries++) {
    const share = atLow / (atLow - atHigh);
    const middle = low + Math.min(0.98, Math.max(0.02, share)) * (high - low);
    const value = margin(middle);
    if (value < 0) {
      [high, atHigh] = [middle, value];
      if (side === -1) atLow /= 2;
      side = -1;
    } else {
      [low, atLow] = [middle, value];
      if (side === 1) atHigh /= 2;
      side = 1;
    }
  }
  return high;
}
