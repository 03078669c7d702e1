import { solve } from '../chain/solve';
import { createStageCache } from '../chain/stage-cache';
import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { metricGauges, type Gauge } from '../wire/gauges';

/** An inverse question's answer: the value that gives what was wished, or why none does. */
export type Answer<T> = { ok: true; value: T; design: Design; results: Results } | { ok: false; message: string };

const MOST_TURNS = 5000;
/** Turns are tried in steps of this factor until they are enough. */
const GROWTH = 1.25;
const LEAST_CLEARANCE = 0.1e-3;
const MOST_CLEARANCE = 0.02;
/** Clearances nearer than this cannot be set by hand. [m] */
const CLEARANCE_STEP = 1e-5;

/**
 * The fewest turns that cut in at a wind or below. More turns bring more volts and so cut in earlier, until the drag of so much copper in the field
 * outweighs them: the turns are tried from few to many, and halved where they begin to be enough.
 *
 * Whether they go into the leg is in the results.
 */
export function turnsForCutIn(design: Design, wind: number): Answer<number> {
  const solved = solver((turns: number) => ({ ...design, winding: { ...design.winding, turns } }));
  const windOf = (turns: number) => solved(turns).results.cutIn.wind ?? Infinity;
  let [below, best] = [0, Infinity];
  for (let turns = 1; turns <= MOST_TURNS; turns = Math.ceil(turns * GROWTH)) {
    if (windOf(turns) <= wind)
      return answer(
        firstWhole((n) => windOf(n) <= wind, below + 1, turns),
        solved,
      );
    if (windOf(turns) > best) break;
    best = windOf(turns);
    below = turns;
  }
  const reached = Number.isFinite(best) ? ` The earliest is ${best.toFixed(1)} m/s, with about ${below} turns.` : '';
  return { ok: false, message: `No number of turns cuts in at ${wind.toFixed(1)} m/s.${reached}` };
}

/**
 * The thinnest wire of the preferred metric sizes, as many in hand as now, whose coils stay at a temperature or below at rated wind.
 *
 * Thick wire is heated by eddy currents and thin wire by its own; the thinnest of all carry so little that they are cool again, and give next to nothing.
 * So the coolest size that gives power is looked for, and from there the thinnest that stays cool enough.
 */
export function thinnestWire(design: Design, temperature: number): Answer<Gauge> {
  const sizes = metricGauges.filter(({ grade }) => grade === 2);
  const solved = solver((i: number) => withWire(design, sizes[i]));
  const hot = sizes.map((_, i) => solved(i).results.rated.coilTemperature);
  const watts = sizes.map((_, i) => solved(i).results.rated.dcWatts);
  const most = watts.indexOf(Math.max(...watts));
  let coolest = most;
  while (coolest + 1 < sizes.length && hot[coolest + 1] < hot[coolest]) coolest++;
  while (coolest > 0 && hot[coolest - 1] < hot[coolest]) coolest--;
  if (hot[coolest] > temperature)
    return { ok: false, message: `The coolest that gives power, ${sizes[coolest].label}, still settles at ${hot[coolest].toFixed(0)} °C.` };
  let thinnest = coolest;
  while (thinnest > 0 && hot[thinnest - 1] <= temperature && hot[thinnest - 1] >= hot[thinnest]) thinnest--;
  return { ok: true, value: sizes[thinnest], ...solved(thinnest) };
}

/** The widest running clearance, each side, at which the line still gives so many volts at 1000 rpm, to a hundredth of a millimetre. */
export function widestClearance(design: Design, lineRmsPer1000rpm: number): Answer<number> {
  const solved = solver((steps: number) => ({ ...design, discs: { ...design.discs, runningClearance: metres(steps) } }));
  const volts = (steps: number) => solved(steps).results.emf.lineRmsPer1000rpm;
  const [least, most] = [Math.round(LEAST_CLEARANCE / CLEARANCE_STEP), Math.round(MOST_CLEARANCE / CLEARANCE_STEP)];
  if (volts(least) < lineRmsPer1000rpm)
    return { ok: false, message: `Even at ${LEAST_CLEARANCE * 1000} mm each side it gives only ${volts(least).toFixed(1)} V.` };
  // A wider gap always gives fewer volts.
  const steps = volts(most) >= lineRmsPer1000rpm ? most : firstWhole((s) => volts(s) < lineRmsPer1000rpm, least, most) - 1;
  return { ok: true, value: metres(steps), ...solved(steps) };
}

const metres = (steps: number) => Number((steps * CLEARANCE_STEP).toPrecision(6));

/** The same design with another wire, as many in hand. */
function withWire(design: Design, { conductorDiameter, overallDiameter }: Gauge): Design {
  return { ...design, winding: { ...design.winding, wire: { ...design.winding.wire, conductorDiameter, overallDiameter } } };
}

type Solved = (value: number) => { design: Design; results: Results };

/** Solves the design with a value put in, each value once. */
function solver(withValue: (value: number) => Design): Solved {
  const cache = createStageCache();
  const known = new Map<number, { design: Design; results: Results }>();
  return (value) => {
    let found = known.get(value);
    if (!found) {
      const design = withValue(value);
      known.set(value, (found = { design, results: solve(design, cache) }));
    }
    return found;
  };
}

const answer = (value: number, solved: Solved): Answer<number> => ({ ok: true, value, ...solved(value) });

/** The least whole number from `low` to `high` of which something is true that is true of `high`, by halving. */
function firstWhole(isTrue: (value: number) => boolean, low: number, high: number): number {
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (isTrue(middle)) high = middle;
    else low = middle + 1;
  }
  return high;
}
