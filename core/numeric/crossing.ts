const CLOSE = 1e-7;
const MOST_ROUNDS = 60;

/**
 * Where a function that is below zero at one end and not at the other crosses zero.
 *
 * @param f     Function. [unit of x → any]
 * @param low   Where it is below zero. [unit of x]
 * @param high  Where it is not. [unit of x]
 * @returns     A crossing: f there is below 1e-7 of f's range between the ends. `low` when f is not below zero there. [unit of x]
 *
 * Source    regula falsi, Illinois rule: Dowell & Jarratt 1971, BIT 11, 168 (from memory).
 * Checked   tests/core/numeric/crossing.test.ts
 */
export function crossing(f: (x: number) => number, low: number, high: number): number {
  let [below, above] = [f(low), f(high)];
  if (below >= 0) return low;
  const close = CLOSE * (above - below);
  let moved = 0;
  let middle = high;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    middle = (low * above - high * below) / (above - below);
    const here = f(middle);
    if (Math.abs(here) <= close) break;
    if (here < 0) {
      [low, below] = [middle, here];
      if (moved < 0) above /= 2;
      moved = -1;
    } else {
      [high, above] = [middle, here];
      if (moved > 0) below /= 2;
      moved = 1;
    }
  }
  return middle;
}
