import { doJob, threadsFor, type Job, type JobKind, type ReportOf, type Running, type Thread, type ThreadAnswer } from '../../../core';

function createThread(): Thread {
  const worker = new Worker(new URL('./explore.worker.ts', import.meta.url), { type: 'module', name: 'explore' });
  return {
    ask: (question) =>
      new Promise<ThreadAnswer>((resolve) => {
        worker.onmessage = (event: MessageEvent<ThreadAnswer>) => resolve(event.data);
        worker.onerror = (event) => resolve({ fault: `the calculation stopped: ${event.message}` });
        worker.postMessage(question);
      }),
    end: () => worker.terminate(),
  };
}

/** Does a job on all cores but one. */
export function startJob<K extends JobKind>(job: Job<K>, listener: Parameters<typeof doJob<K>>[2]): Running {
  const threads = Array.from({ length: threadsFor(navigator.hardwareConcurrency) }, createThread);
  return doJob(job, threads, listener);
}

/** The answer to a job of one piece. */
export async function answerTo<K extends JobKind>(job: Job<K>): Promise<ReportOf<K>> {
  let answer: ReportOf<K> | undefined;
  await doJob(job, [createThread()], { onReport: (report) => (answer = report) }).done;
  return answer as ReportOf<K>;
}
