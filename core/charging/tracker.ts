/** What the DC input of a maximum-power controller would get at some volts. */
export interface Draw {
  dcAmps: number;
  dcWatts: number;
  shaftWatts: number;
}

export interface TrackerWindow {
  minVolts: number;
  maxVolts: number;
  maxAmps: number;
  maxWatts: number;
}

const CLOSE = 2e-3;
const MOST_TRIES = 25;

/**
 * Volts at which a maximum-power controller holds the machine at one speed: those at which it takes the shaft power that the wheel gives at its
 * best, or as much as its window allows.
 *
 * @param draw    What would be drawn at some volts. [V → A, W]
 * @param open    Open-circuit DC volts. [V]
 * @param wanted  Shaft power of the wheel at its best. [W]
 * @param window  Data-sheet limits. [V, A, W]
 * @param guess   Volts to try first. [V]
 * @returns       Volts, the draw there, and whether a limit of the window held it back. Undefined below the window.
 *
 * Valid     above half the open-circuit volts, where power falls as volts rise: beyond that the winding eats more than the load.
 * Omits     the controller's own search and losses.
 * Source    monotone root by secant within a bracket.
 * Checked   tests/core/charging/tracker.test.ts
 */
export function trackerPoint<D extends Draw>(
  draw: (volts: number) => D,
  open: number,
  wanted: number,
  window: TrackerWindow,
  guess: number,
): { volts: number; drawn: D; limited: boolean } | undefined {
  let low = Math.max(window.minVolts, open / 2);
  let high = Math.min(open, window.maxVolts);
  if (!(low < high) || wanted <= 0) return undefined;
  const load = (d: D) => Math.max(d.shaftWatts / wanted, d.dcWatts / window.maxWatts, d.dcAmps / window.maxAmps) - 1;
  const limited = (d: D) => d.shaftWatts < wanted * (1 - 2 * CLOSE);
  let atLow: number | undefined;
  let atHigh: number | undefined;
  let volts = Math.min(Math.max(guess, low + 0.02 * (high - low)), high - 0.02 * (high - low));
  let best = draw(volts);
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const over = load(best);
    if (Math.abs(over) < CLOSE) break;
    if (over > 0) [low, atLow] = [volts, over];
    else [high, atHigh] = [volts, over];
    if (high - low < 1e-4 * open) break;
    volts = next(low, atLow, high, atHigh);
    best = draw(volts);
  }
  return { volts, drawn: best, limited: limited(best) };
}

function next(low: number, atLow: number | undefined, high: number, atHigh: number | undefined): number {
  if (atLow === undefined) return (low + high) / 2;
  if (atHigh === undefined) return low + (high - low) * Math.min(0.5, Math.max(0.05, atLow / (1 + atLow)));
  const share = Math.min(0.9, Math.max(0.1, atLow / (atLow - atHigh)));
  return low + share * (high - low);
}
