import type { Design } from '../design/schema';
import { candidatesOf, sizeOf, spaceSize, unitsOf, type Pruned, type Unit } from './candidates';
import { createEvaluator, isAdmissible, type Found } from './evaluate';
import { createFront, type Front } from './front';
import type { Limits } from './limits';
import { vectorOf } from './objectives';
import { defaultSearch, searchSpace } from './space';

/** What came of one piece of a search. */
export interface UnitReport {
  unit: number;
  /** Machines of the piece, those ruled out counted. */
  considered: number;
  solved: number;
  pruned: Pruned;
  /** Machines within the limits that no other of the piece beats. */
  found: Found[];
}

/** One design's search, ready to be worked piece by piece, in any order and on any number of threads: each makes its own of the same design. */
export interface Search {
  units: Unit[];
  size: number;
  run: (unit: number) => UnitReport;
}

/** The limits a design's search keeps to. */
export const limitsOf = (design: Design): Limits => (design.search ?? defaultSearch(design)).limits ?? {};

export function createSearch(design: Design): Search {
  const space = searchSpace(design);
  const limits = limitsOf(design);
  const units = unitsOf(space);
  const evaluate = createEvaluator(space);
  return {
    units,
    size: spaceSize(space),
    run(index) {
      const unit = units[index];
      const pruned: Pruned = { frame: 0, fit: 0, reel: 0 };
      const front = createFront<Found>();
      let solved = 0;
      for (const candidate of candidatesOf(space, unit, pruned)) {
        const found = evaluate(candidate);
        solved++;
        if (isAdmissible(found, limits)) front.add(found, vectorOf(found.objectives));
      }
      return { unit: index, considered: sizeOf(space, unit), solved, pruned, found: [...front.items] };
    },
  };
}

/** Where a search stands while its pieces come in, in whatever order. */
export interface Standing {
  considered: number;
  solved: number;
  pruned: Pruned;
  front: Front<Found>;
}

export const noStanding = (): Standing => ({ considered: 0, solved: 0, pruned: { frame: 0, fit: 0, reel: 0 }, front: createFront() });

/** Takes a piece's report in. */
export function takeIn(standing: Standing, { considered, solved, pruned, found }: UnitReport): void {
  standing.considered += considered;
  standing.solved += solved;
  for (const reason of ['frame', 'fit', 'reel'] as const) standing.pruned[reason] += pruned[reason];
  for (const each of found) standing.front.add(each, vectorOf(each.objectives));
}

/** The whole search on one thread. */
export function searchAll(design: Design): Standing {
  const search = createSearch(design);
  const standing = noStanding();
  search.units.forEach((_, unit) => takeIn(standing, search.run(unit)));
  return standing;
}
