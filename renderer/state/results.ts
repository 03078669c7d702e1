import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { readDesign, type Design, type Problem, type Results } from '../../core';
import { designStore } from './design';
import type { Answer, Request } from './solver.worker';

export interface ResultsState {
  /** Of the last design that could be worked out; stays while the one on screen cannot be. */
  results: Results | null;
  solvedFor: Design | null;
  /** Of the design as last saved, to tell by how much a result moved. */
  baseline: Results | null;
  /** Why the design on screen cannot be worked out. */
  problems: Problem[];
  busy: boolean;
}

export const resultsStore = createStore<ResultsState>(() => ({
  results: null,
  solvedFor: null,
  baseline: null,
  problems: [],
  busy: false,
}));

export function useResults<T>(select: (state: ResultsState) => T): T {
  return useStore(resultsStore, select);
}

/** Asks a worker one thing at a time. */
function createSolverThread() {
  const worker = new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'solver' });
  let waiting: { resolve: (answer: Answer) => void } | null = null;
  worker.onmessage = (event: MessageEvent<Answer>) => {
    const asked = waiting;
    waiting = null;
    asked?.resolve(event.data);
  };
  worker.onerror = (event) => {
    const asked = waiting;
    waiting = null;
    asked?.resolve({ ok: false, problems: [{ where: '', message: `the calculation stopped: ${event.message}` }] });
  };
  return (request: Request) =>
    new Promise<Answer>((resolve) => {
      waiting = { resolve };
      worker.postMessage(request);
    });
}

/** Works out every design that comes on screen. Latest wins: while one is worked out, only the newest of those that follow is kept. */
export function startSolving(): void {
  const solve = createSolverThread();
  let next: Design | null = null;
  const run = async () => {
    while (next) {
      const design = next;
      next = null;
      const answer = await solve({ design });
      if (answer.ok) {
        const { baseline } = resultsStore.getState();
        const isSaved = designStore.getState().saved === design;
        resultsStore.setState({ results: answer.results, solvedFor: design, problems: [], baseline: isSaved ? answer.results : baseline });
      } else resultsStore.setState({ problems: answer.problems });
    }
    resultsStore.setState({ busy: false });
  };
  const offer = (design: Design) => {
    const read = readDesign(design);
    if (!read.ok) {
      next = null;
      resultsStore.setState({ problems: read.problems });
      return;
    }
    next = design;
    if (resultsStore.getState().busy) return;
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

export type SearchThread = (design: Design) => Promise<Answer>;

/** A second thread for many designs in a row, so that the screen keeps answering meanwhile. */
export function createSearchThread(): SearchThread {
  const solve = createSolverThread();
  return (design) => solve({ design });
}
