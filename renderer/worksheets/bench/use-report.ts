import { useEffect, useState } from 'react';
import type { BenchReport, Design } from '../../../core';
import type { BenchAnswer, BenchRequest } from './bench.worker';

export interface ReportState {
  /** Of the last design that was worked out; stays while a newer one is. */
  report?: BenchReport;
  /** Why the newest could not be. */
  message?: string;
  busy: boolean;
}

type Listener = (state: ReportState) => void;

let worker: Worker | undefined;
let last: { design: Design; state: ReportState } | undefined;
let asked: Design | undefined;
let next: Design | undefined;
const listeners = new Set<Listener>();

const tell = (state: ReportState) => listeners.forEach((listener) => listener(state));

/** Latest wins: while one design is worked out, only the newest of those that follow is kept. */
function ask(design: Design): void {
  if (last?.design === design) return tell(last.state);
  tell({ ...last?.state, busy: true });
  if (asked === design) return;
  if (asked) {
    next = design;
    return;
  }
  asked = design;
  worker ??= started();
  worker.postMessage({ design } satisfies BenchRequest);
}

function started(): Worker {
  const made = new Worker(new URL('./bench.worker.ts', import.meta.url), { type: 'module', name: 'bench' });
  made.onmessage = (event: MessageEvent<BenchAnswer>) => settle(event.data);
  made.onerror = (event) => settle({ ok: false, message: `the calculation stopped: ${event.message}` });
  return made;
}

function settle(answer: BenchAnswer): void {
  if (!asked) return;
  const report = answer.ok ? answer.report : last?.state.report;
  last = { design: asked, state: { ...(report && { report }), ...(!answer.ok && { message: answer.message }), busy: next !== undefined } };
  asked = undefined;
  tell(last.state);
  if (next) {
    const design = next;
    next = undefined;
    ask(design);
  }
}

/** What the bench makes of a design's readings, worked out on a thread of its own so that the screen keeps answering. */
export function useBenchReport(design: Design): ReportState {
  const [state, setState] = useState<ReportState>(last?.design === design ? last.state : { ...last?.state, busy: true });
  useEffect(() => {
    listeners.add(setState);
    return () => {
      listeners.delete(setState);
    };
  }, []);
  useEffect(() => ask(design), [design]);
  return state;
}
