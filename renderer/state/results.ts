import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { readDesign, type Design, type Problem, type Results } from '../../core';
import { createAhead } from './ahead';
import { designStore } from './design';
import type { Answer, Request, Sent } from './solver.worker';

/** A design kept beside the one on screen, worked out. */
export interface Variant {
  id: number;
  /** A, B, … as charts tell them apart. */
  letter: string;
  name: string;
  design: Design;
  results: Results;
}

export interface ResultsState {
  /** Of the last design that could be worked out; stays while the one on screen cannot be. */
  results: Results | null;
  solvedFor: Design | null;
  /** Of the design as last saved, to tell by how much a result moved. */
  baseline: Results | null;
  /** Designs kept beside this one, in the order in which they were pinned. */
  variants: Variant[];
  /** Why the design on screen cannot be worked out. */
  problems: Problem[];
  busy: boolean;
}

/** One and the same, so that nothing that shows problems is drawn anew while there are none. */
const noProblems: Problem[] = [];

export const resultsStore = createStore<ResultsState>(() => ({
  results: null,
  solvedFor: null,
  baseline: null,
  variants: [],
  problems: noProblems,
  busy: false,
}));

export function useResults<T>(select: (state: ResultsState) => T): T {
  return useStore(resultsStore, select);
}

type Solve = (design: Design) => Promise<Answer>;

/** A thread of its own that works out one design after another; each is sent at once, before the page is drawn anew. */
function createSolverThread(): Solve {
  const worker = new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'solver' });
  const waiting: ((answer: Answer) => void)[] = [];
  const answered = (answer: Answer) => waiting.shift()?.(answer);
  let spectrum: Sent['spectrum'];
  worker.onmessage = ({ data }: MessageEvent<Sent>) => {
    spectrum = data.spectrum ?? spectrum;
    if (data.answer.ok && spectrum) data.answer.results.stages.field.spectrum = spectrum;
    answered(data.answer);
  };
  worker.onerror = (event) => answered({ ok: false, problems: [{ where: '', message: `the calculation stopped: ${event.message}` }] });
  return (design) =>
    new Promise((resolve) => {
      waiting.push(resolve);
      worker.postMessage({ design } satisfies Request);
    });
}

/** Once the page has been drawn anew: the solver, woken while that goes on, may be given the very processor it runs on. */
const drawn = () => new Promise((resolve) => setTimeout(resolve));

/**
 * Works out every design that comes on screen. Latest wins: while one is worked out, only the newest of those that follow is kept. When a number is moved
 * step by step, its next steps are worked out between the keys, and stand on screen together with them.
 */
export function startSolving(): void {
  const solve = createSolverThread();
  const ahead = createAhead((design) => drawn().then(() => solve(design)));
  let next: Design | null = null;
  /** Why the newest design cannot be worked out: an answer that comes later, to an older one, takes nothing away from it. */
  let refusal = noProblems;
  const show = (design: Design, answer: Answer) => {
    const problems = answer.ok || refusal.length > 0 ? refusal : answer.problems;
    if (!answer.ok) return resultsStore.setState({ problems });
    const { baseline } = resultsStore.getState();
    const isSaved = designStore.getState().saved === design;
    resultsStore.setState({
      results: answer.results,
      solvedFor: design,
      problems,
      baseline: isSaved ? answer.results : baseline,
    });
  };
  const run = async () => {
    while (next) {
      const design = next;
      next = null;
      show(design, await solve(design));
      ahead.follow(design);
    }
    resultsStore.setState({ busy: false });
  };
  const offer = (design: Design) => {
    const read = readDesign(design);
    refusal = read.ok ? noProblems : read.problems;
    if (!read.ok) {
      next = null;
      resultsStore.setState({ problems: refusal });
      return;
    }
    const { busy } = resultsStore.getState();
    const known = busy ? undefined : ahead.answerTo(design);
    if (known) {
      show(design, known);
      ahead.follow(design);
      return;
    }
    next = design;
    if (busy) return;
    resultsStore.setState({ busy: true });
    void run();
  };
  offer(designStore.getState().design);
  designStore.subscribe((state, before) => {
    if (state.saved !== before.saved) followSaved(state.saved);
    if (state.design !== before.design) offer(state.design);
  });
}

function followSaved(saved: Design | null): void {
  const { results, solvedFor } = resultsStore.getState();
  resultsStore.setState({ baseline: saved !== null && solvedFor === saved ? results : null });
}

let second: Solve | undefined;

/** Works out a design other than the one on screen, on a second thread so that the screen keeps answering. */
export function solveAside(design: Design): Promise<Answer> {
  second ??= createSolverThread();
  return second(design);
}
