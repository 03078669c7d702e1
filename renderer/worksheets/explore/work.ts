import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import {
  bandsOf,
  noStanding,
  takeIn,
  tolerancesOf,
  type BatchReport,
  type Design,
  type Found,
  type Job,
  type JobKind,
  type ReportOf,
  type Running,
  type Share,
  type Standing,
} from '../../../core';
import { startJob } from './threads';

/** What long work is about and how far it has come. */
interface Progress {
  design: Design;
  size: number;
  done: number;
  seconds: number;
  fault?: string;
}

export interface SearchWork extends Progress {
  solved: number;
  pruned: Standing['pruned'];
  found: readonly Found[];
}

export interface SpreadWork extends Progress {
  spread: ReturnType<typeof bandsOf> | null;
  /** Of each reading's variance, by tolerance, in the order of the readings. */
  shares: Share[][] | null;
}

interface WorkState {
  search: SearchWork | null;
  spread: SpreadWork | null;
  /** What is under way; one at a time, since each takes all the cores there are to spare. */
  running: 'search' | 'spread' | null;
}

/** Outlives the worksheet, so that a look at another page stops nothing. */
export const workStore = createStore<WorkState>(() => ({ search: null, spread: null, running: null }));

export function useWork<T>(select: (state: WorkState) => T): T {
  return useStore(workStore, select);
}

/** Pages are told this often: each telling is a table and a chart to be drawn. [ms] */
const TELL_EVERY = 250;
/** The same seed gives the same machines. */
const SEED = 1;

let running: Running | undefined;

export function stop(): void {
  running?.cancel();
}

interface Told {
  size: number;
  seconds: number;
  fault?: string;
}

/** Runs a job, telling of it every now and then and when it ends. */
async function follow<K extends JobKind>(
  what: 'search' | 'spread',
  job: Job<K>,
  onReport: (report: ReportOf<K>) => void,
  tell: (told: Told) => void,
): Promise<void> {
  const began = performance.now();
  let size = 0;
  let toldAt = 0;
  const now = (fault?: string) => {
    toldAt = performance.now();
    tell({ size, seconds: (toldAt - began) / 1000, ...(fault !== undefined && { fault }) });
  };
  workStore.setState({ running: what });
  now();
  running = startJob(job, {
    onSize: (machines) => {
      size = machines;
    },
    onReport: (report) => {
      onReport(report);
      if (performance.now() - toldAt >= TELL_EVERY) now();
    },
  });
  const fault = await running.done.then(
    () => undefined,
    (error: Error) => error.message,
  );
  now(fault);
  workStore.setState({ running: null });
}

export function startSearch(design: Design): Promise<void> {
  const standing = noStanding();
  const tell = (told: Told) => {
    const { considered, solved, pruned, front } = standing;
    workStore.setState({
      search: {
        ...told,
        design,
        size: Math.max(told.size, considered),
        done: considered,
        solved,
        pruned: { ...pruned },
        found: [...front.items],
      },
    });
  };
  return follow('search', { kind: 'search', of: { design } }, (report) => takeIn(standing, report), tell);
}

export async function startSpread(design: Design, samples: number): Promise<void> {
  const limits = tolerancesOf(design);
  const reports: BatchReport[] = [];
  let nominal: number[] = [];
  let done = 0;
  let shares: Share[][] | null = null;
  const take = (report: BatchReport & { nominal: number[] }) => {
    reports.push(report);
    nominal = report.nominal;
    done += report.values.length / nominal.length;
  };
  const tell = (told: Told) =>
    workStore.setState({ spread: { ...told, design, size: samples, done, shares, spread: done > 0 ? bandsOf(nominal, reports) : null } });
  const asked = { design, limits, seed: SEED };
  // First which tolerance matters, quickly told; then the bands.
  await follow('spread', { kind: 'shares', of: asked }, (report) => (shares = report), tell);
  if (shares !== null) await follow('spread', { kind: 'spread', of: { ...asked, samples } }, take, tell);
}
