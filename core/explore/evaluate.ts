import { solve } from '../chain/solve';
import { createStageCache, type StageCache } from '../chain/stage-cache';
import { designOf } from './geometry';
import { breaches, type Limits } from './limits';
import { objectivesOf, priceOf, type Objectives } from './objectives';
import type { Candidate, SearchSpace } from './space';

/** A machine of the search, fully solved. */
export interface Found {
  candidate: Candidate;
  objectives: Objectives;
}

/** Solves candidates by the one pipeline; machines that share a field find it in the cache when they come one after the other. */
export function createEvaluator({ base }: SearchSpace, cache: StageCache = createStageCache()): (candidate: Candidate) => Found {
  const shelf = base.shelf ?? [];
  return (candidate) => {
    const results = solve(designOf(base, candidate), cache);
    return { candidate, objectives: objectivesOf(results, priceOf(candidate.reel, shelf)) };
  };
}

/** Whether a machine keeps to the limits. */
export const isAdmissible = ({ objectives }: Found, limits: Limits): boolean => breaches(objectives, limits).length === 0;
