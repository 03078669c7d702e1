import { solve } from '../chain/solve';
import type { StageCache } from '../chain/stage-cache';
import { METALS } from '../constants';
import type { Design } from '../design/schema';
import type { Reel } from '../design/shelf';
import type { Problem } from '../problem';
import { windingStage } from '../winding/stage';
import { frameFaults } from './bounds';
import type { Found } from './evaluate';
import { beats } from './front';
import { breaches, type Breach, type Limits } from './limits';
import { objectivesOf, priceOf, reelOf, vectorOf, type Objectives } from './objectives';

/** Why a machine somebody wishes for is not among those the search found. */
export interface WhyNot {
  objectives: Objectives;
  /** What cannot be built, or not from what is on the shelf. */
  faults: Problem[];
  breaches: Breach[];
  /** Machines found that are nowhere worse and somewhere better; where there are none and nothing else stands against it, it is one of the best. */
  beatenBy: Found[];
}

/** Asks of a wished-for design which limit it breaks, and what beats it. */
export function whyNot(design: Design, limits: Limits, found: readonly Found[], cache?: StageCache): WhyNot {
  const { winding, discs, shelf = [], search } = design;
  const results = solve(design, cache);
  const placed = windingStage(winding, discs.poles);
  const reel = reelOf(design, shelf);
  const { turnsTooMany } = results.stages.wire;
  const faults = frameFaults(design, placed, search?.magnetsInHand ?? Infinity);
  if (turnsTooMany > 0)
    faults.push({ where: 'winding.turns', message: `${turnsTooMany} of its ${winding.turns} turns do not go into the leg.` });
  if (shelf.length && !reel) faults.push({ where: 'winding.wire.conductorDiameter', message: 'No reel on the shelf holds this wire.' });
  const short = reel ? results.coils.wireMass - reel.mass : 0;
  if (reel && short > 0)
    faults.push({
      where: 'winding.turns',
      message: `“${reel.label}” is ${short.toPrecision(2)} kg too light: ${metresOf(short, reel).toFixed(0)} m are missing.`,
    });
  const objectives = objectivesOf(results, priceOf(reel, shelf));
  const vector = vectorOf(objectives);
  return {
    objectives,
    faults,
    breaches: breaches(objectives, limits),
    beatenBy: found.filter((each) => beats(vectorOf(each.objectives), vector)),
  };
}

/** Length of so much of a reel's wire. [kg → m] */
const metresOf = (mass: number, { metal, conductorDiameter }: Reel) =>
  mass / (METALS[metal].density * (Math.PI / 4) * conductorDiameter ** 2);
