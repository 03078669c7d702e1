import type { Design } from '../design/schema';
import { thinnestWire, turnsForCutIn, widestClearance } from './inverse';
import type { Limits } from './limits';
import type { Found } from './evaluate';
import { createSearch } from './search';
import { varianceShares } from './sensitivity';
import { batchesOf, createSpread } from './spread';
import type { Tolerances } from './tolerances';
import { whyNot } from './why-not';

/** Work in pieces that any thread may do, in any order. What goes in and comes out is plain data. */
export interface Work<Report> {
  pieces: number;
  /** What all pieces come to: machines. */
  size: number;
  run: (piece: number) => Report;
}

const whole = <T>(run: () => T): Work<T> => ({ pieces: 1, size: 1, run });

interface Rough {
  design: Design;
  limits: Tolerances;
  seed: number;
}

interface Wish {
  design: Design;
  wished: number;
}

/** The registry of what a thread can be set to. */
const kinds = {
  search: ({ design }: { design: Design }) => {
    const { units, size, run } = createSearch(design);
    return { pieces: units.length, size, run };
  },
  spread: ({ design, limits, seed, samples }: Rough & { samples: number }) => {
    const { nominal, run } = createSpread(design, limits, seed);
    const batches = batchesOf(samples);
    return { pieces: batches.length, size: samples, run: (batch: number) => ({ ...run(batch, batches[batch]), nominal }) };
  },
  shares: ({ design, limits, seed }: Rough) => whole(() => varianceShares(design, limits, seed)),
  whyNot: ({ design, limits, found }: { design: Design; limits: Limits; found: readonly Found[] }) =>
    whole(() => whyNot(design, limits, found)),
  turnsForCutIn: ({ design, wished }: Wish) => whole(() => turnsForCutIn(design, wished)),
  thinnestWire: ({ design, wished }: Wish) => whole(() => thinnestWire(design, wished)),
  widestClearance: ({ design, wished }: Wish) => whole(() => widestClearance(design, wished)),
};

export type JobKind = keyof typeof kinds;
export type Job<K extends JobKind = JobKind> = { kind: K; of: Parameters<(typeof kinds)[K]>[0] };
export type ReportOf<K extends JobKind> = ReturnType<ReturnType<(typeof kinds)[K]>['run']>;

/** A job made ready to be done piece by piece. */
export function workOf<K extends JobKind>({ kind, of }: Job<K>): Work<ReportOf<K>> {
  const start = kinds[kind] as unknown as (asked: Job<K>['of']) => Work<ReportOf<K>>;
  return start(of);
}
