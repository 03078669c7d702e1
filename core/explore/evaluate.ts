import { solve } from '../chain/solve';
import type { StageCache } from '../chain/stage-cache';
import { designOf } from './geometry';
import { breaches, type Limits } from './limits';
import { objectivesOf, priceOf, type Objectives } from './objectives';
import type { Candidate, SearchSpace } from './space';

/** A machine of the search, fully solved. */
export interface Found {
  candidate: Candidate;
  objectives: Objectives;
}

/** Stages that neither reel, wires in hand, turns nor connection change. */
const OF_FRAME = new Set(['magnets', 'winding', 'field', 'linkage', 'inductance']);

/**
 * Solves candidates by the one pipeline. Machines that follow one another and share frame and paths share the stages that these alone decide; told apart by
 * these few numbers rather than by the whole of what a stage reads, which would cost as much as the stage.
 */
export function createEvaluator({ base }: SearchSpace): (candidate: Candidate) => Found {
  const shelf = base.shelf ?? [];
  let frame = '';
  let known = new Map<string, unknown>();
  const worked: Record<string, number> = {};
  const stages: StageCache = Object.assign(
    <T>(stage: string, _: unknown, work: () => T): T => {
      if (known.has(stage)) return known.get(stage) as T;
      const made = work();
      worked[stage] = (worked[stage] ?? 0) + 1;
      if (OF_FRAME.has(stage)) known.set(stage, made);
      return made;
    },
    { worked },
  );
  return (candidate) => {
    const { poles, pitchRadius, thickness, runningClearance, layout, coils, phases, parallelPaths } = candidate;
    const name = [poles, pitchRadius, thickness, runningClearance, layout, coils, phases, parallelPaths].join();
    if (name !== frame) known = new Map();
    frame = name;
    return { candidate, objectives: objectivesOf(solve(designOf(base, candidate), stages), priceOf(candidate.reel, shelf)) };
  };
}

/** Whether a machine keeps to the limits. */
export const isAdmissible = ({ objectives }: Found, limits: Limits): boolean => breaches(objectives, limits).length === 0;
