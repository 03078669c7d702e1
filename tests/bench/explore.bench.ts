import { candidatesOf, unitsOf } from '../../core/explore/candidates';
import { createEvaluator } from '../../core/explore/evaluate';
import { searchSpace, type Candidate } from '../../core/explore/space';
import { createSpread } from '../../core/explore/spread';
import { tolerancesOf } from '../../core/explore/tolerances';
import type { Design } from '../../core/index';
import { bridge, load, ratedSpeed, source } from './battery-machine';
import { demo } from '../demo';
import { searchOn } from './search-threads';
import { simulated } from './simulator';

const design = demo('hill-cabin');
const searching = (search: Design['search']): Design => ({ ...design, search });

const winding = {
  turns: { from: 15, to: 60, step: 1 },
  inHand: { from: 1, to: 4, step: 1 },
  connections: ['star', 'delta'],
} satisfies Design['search'];
const clearance = { runningClearance: { from: 1e-3, to: 4e-3, step: 1e-5 } };
/** Big enough that starting the threads hardly counts. */
const whole = { ...winding, runningClearance: { from: 1e-3, to: 4e-3, step: 1e-3 } };

/** One machine of a search after another, over and over. */
function machines(search: Design['search']): () => unknown {
  const space = searchSpace(searching(search));
  const all: Candidate[] = unitsOf(space).flatMap((unit) => [...candidatesOf(space, unit, { frame: 0, fit: 0, reel: 0 })]);
  const evaluate = createEvaluator(space);
  let next = 0;
  return () => evaluate(all[next++ % all.length]);
}

const SPEEDS = 60;
/** What a curve of 60 speeds takes when each is put to the simulator, coils at one temperature. */
async function simulatedCurve(): Promise<void> {
  for (let k = 1; k <= SPEEDS; k++) await simulated(source, bridge, load, (1.5 * ratedSpeed * k) / SPEEDS);
}

const spread = createSpread(design, tolerancesOf(design), 1);
let batch = 0;
const fieldAtHand = 'a machine of a search, field at hand';
const onOne = 'a search of 1,500 machines on one thread';

export default [
  { name: fieldAtHand, run: machines(winding), calls: 50 },
  { name: 'a machine of a search, field anew', run: machines(clearance), calls: 50 },
  { name: `${SPEEDS} speeds of one machine in a circuit simulator`, run: simulatedCurve, against: fieldAtHand },
  { name: 'a machine of a spread', run: () => spread.run(batch++, 1), calls: 50 },
  { name: onOne, run: () => searchOn(1, searching(whole)) },
  { name: 'the same on two threads', run: () => searchOn(2, searching(whole)), against: onOne },
];
