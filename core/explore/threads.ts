import { workOf, type Job, type JobKind, type ReportOf } from './job';

/** Another thread, asked one thing at a time. */
export interface Thread {
  ask(question: Question): Promise<Answer>;
  /** Ends it at once, whatever it is at. */
  end(): void;
}

export type Question = { job: Job } | { piece: number };
export type Answer = { pieces: number; size: number } | { report: unknown } | { fault: string };

/** What a thread does with what it is asked, whatever kind of thread it is. */
export function createAnswerer(): (question: Question) => Answer {
  let run: ((piece: number) => unknown) | undefined;
  return (question) => {
    try {
      if ('piece' in question) return { report: run?.(question.piece) };
      const work = workOf(question.job);
      run = work.run;
      return { pieces: work.pieces, size: work.size };
    } catch (error) {
      return { fault: error instanceof Error ? error.message : String(error) };
    }
  };
}

/** A job under way. */
export interface Running {
  /** Whether it came to its end; false where it was cancelled. Rejects where a thread fails. */
  done: Promise<boolean>;
  cancel(): void;
}

export interface Listener<Report> {
  onReport: (report: Report) => void;
  onSize?: (size: number) => void;
}

/** Does a job on some threads, which it ends when there is no more to do. Each takes the next piece as soon as it is through with one. */
export function doJob<K extends JobKind>(job: Job<K>, threads: readonly Thread[], { onReport, onSize }: Listener<ReportOf<K>>): Running {
  let next = 0;
  let cancelled = false;
  const end = () => threads.forEach((thread) => thread.end());
  const work = async (thread: Thread, isFirst: boolean) => {
    const begun = sound(await thread.ask({ job }));
    if (!('pieces' in begun)) return;
    if (isFirst && !cancelled) onSize?.(begun.size);
    while (next < begun.pieces && !cancelled) {
      const answer = sound(await thread.ask({ piece: next++ }));
      if ('report' in answer && !cancelled) onReport(answer.report as ReportOf<K>);
    }
  };
  let stop = () => undefined as void;
  const stopped = new Promise<void>((resolve) => (stop = resolve));
  const all = Promise.all(threads.map((thread, i) => work(thread, i === 0)));
  return {
    done: Promise.race([all, stopped])
      .then(() => !cancelled)
      .finally(end),
    cancel() {
      cancelled = true;
      end();
      stop();
    },
  };
}

function sound(answer: Answer): Answer {
  if ('fault' in answer) throw new Error(answer.fault);
  return answer;
}

/** All cores but one, so that the screen keeps its own; at least one. */
export const threadsFor = (cores: number): number => Math.max(1, cores - 1);
