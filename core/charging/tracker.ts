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

interface Point<D extends Draw> {
  volts: number;
  drawn: D;
  /** Above 0 when more is taken than the wheel or the window allows, as a share of that. */
  over: number;
}

/** Where a search ends; what is taken there may be unknown. */
type End = { volts: number; over: number | undefined };

/** The top of the DC power lies between 0.39 (one phase, all resistance) and 0.64 (three phases, all reactance) of the open-circuit volts. */
const TOP = { above: 0.25, below: 0.7 };
const CLOSE = 2e-3;
const STEP = 0.04;
const MOST_TRIES = 25;
const MOST_VERTICES = 5;

/**
 * Volts at which a maximum-power controller holds the machine at one speed: those at which it takes the shaft power that the wheel gives at its
 * best, or as much as its window allows; where the machine cannot give that, those of the most DC power.
 *
 * @param draw    What would be drawn at some volts. [V → A, W]
 * @param open    Open-circuit DC volts. [V]
 * @param wanted  Shaft power of the wheel at its best. [W]
 * @param window  Data-sheet limits. [V, A, W]
 * @param guess   Volts to try first; best those of a speed near by, in proportion. [V]
 * @returns       Volts, the draw there, and whether machine or window held it back. Undefined below the window.
 *
 * Omits     the controller's own search and losses.
 * Source    DC power has a single top over the volts and falls from there to the open circuit: uphill in doubling steps and a parabola to the top,
 *           false position beyond it.
 * Checked   tests/core/charging/tracker.test.ts, tests/laws/tracker.test.ts
 */
export function trackerPoint<D extends Draw>(
  draw: (volts: number) => D,
  open: number,
  wanted: number,
  window: TrackerWindow,
  guess: number,
): { volts: number; drawn: D; limited: boolean } | undefined {
  const low = Math.max(window.minVolts, TOP.above * open);
  const high = Math.min(open, window.maxVolts);
  if (!(low < high) || wanted <= 0) return undefined;
  const at = (volts: number): Point<D> => {
    const drawn = draw(volts);
    return { volts, drawn, over: Math.max(drawn.shaftWatts / wanted, drawn.dcWatts / window.maxWatts, drawn.dcAmps / window.maxAmps) - 1 };
  };
  const edge = 0.02 * (high - low);
  const first = at(Math.min(Math.max(guess, low + edge), high - edge));
  const end: End = { volts: high, over: high === open ? -1 : undefined };
  const uphill = (from: Point<D>) => climb(at, from, low, high);
  let [found, beyond]: [Point<D>, End] = [first, end];
  if (first.over < -CLOSE) {
    const [reached, before] = uphill(first);
    found = reached;
    if (before.volts > reached.volts) beyond = before;
  }
  if (found.over > CLOSE) found = balance(at, found, beyond);
  // Where the winding eats more than the load, a searching controller turns back.
  if (found.over > -CLOSE && found.volts < TOP.below * open) {
    const [top] = uphill(found);
    if (top.over < CLOSE) found = top;
  }
  return { volts: found.volts, drawn: found.drawn, limited: found.drawn.shaftWatts < wanted * (1 - 2 * CLOSE) };
}

/**
 * From a point that takes too little, uphill in DC power to the top, or to the first point on the way that takes too much; and the point before it.
 */
function climb<D extends Draw>(at: (volts: number) => Point<D>, from: Point<D>, low: number, high: number): [Point<D>, Point<D>] {
  const width = STEP * from.volts;
  let [behind, middle, ahead] = [at(Math.min(high, from.volts + width)), from, at(Math.max(low, from.volts - width))];
  if (behind.drawn.dcWatts > ahead.drawn.dcWatts) [behind, ahead] = [ahead, behind];
  for (let step = 2 * (ahead.volts - middle.volts); ahead.drawn.dcWatts > middle.drawn.dcWatts; step *= 2) {
    if (ahead.over > 0 && from.over < 0) return [ahead, middle];
    const on = Math.min(high, Math.max(low, ahead.volts + step));
    if (on === ahead.volts) return [ahead, middle];
    [behind, middle, ahead] = [middle, ahead, at(on)];
  }
  for (let tries = 0; tries < MOST_VERTICES; tries++) {
    const top = at(vertex(behind, middle, ahead));
    const better = top.drawn.dcWatts > middle.drawn.dcWatts;
    const [best, other] = better ? [top, middle] : [middle, top];
    if (Math.abs(top.volts - middle.volts) < STEP * top.volts) return [best, other];
    // Whichever side of the best the other point lies on, it is the nearer neighbour there.
    if (other.volts > best.volts === ahead.volts > middle.volts) ahead = other;
    else behind = other;
    middle = best;
  }
  return [middle, behind];
}

/** Volts at the top of the parabola through three points of DC power. */
function vertex(a: Point<Draw>, b: Point<Draw>, c: Point<Draw>): number {
  const left = (b.volts - a.volts) * (b.drawn.dcWatts - c.drawn.dcWatts);
  const right = (b.volts - c.volts) * (b.drawn.dcWatts - a.drawn.dcWatts);
  return left === right ? b.volts : b.volts - ((b.volts - a.volts) * left - (b.volts - c.volts) * right) / (2 * (left - right));
}

/** Between a point that takes too much and one that does not: where neither too much nor too little is taken. */
function balance<D extends Draw>(at: (volts: number) => Point<D>, from: Point<D>, end: End): Point<D> {
  let [low, high, found] = [from, end, from];
  for (let tries = 0; tries < MOST_TRIES && Math.abs(found.over) > CLOSE && high.volts - low.volts > 1e-4 * high.volts; tries++) {
    const share = high.over === undefined ? 0.5 : Math.min(0.95, Math.max(0.05, low.over / (low.over - high.over)));
    found = at(low.volts + share * (high.volts - low.volts));
    if (found.over > 0) low = found;
    else high = found;
  }
  return found;
}
