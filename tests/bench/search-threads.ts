import { Worker } from 'node:worker_threads';
import { doJob, type Design, type Thread, type ThreadAnswer } from '../../core/index';

/** Does a design's search on so many threads of the built command line. */
export async function searchOn(count: number, design: Design): Promise<void> {
  const threads = Array.from({ length: count }, (): Thread => {
    const worker = new Worker('./dist/cli/thread.cjs');
    return {
      ask: (question) =>
        new Promise<ThreadAnswer>((resolve, reject) => {
          worker.removeAllListeners();
          worker.once('message', resolve);
          worker.once('error', reject);
          worker.postMessage(question);
        }),
      end: () => void worker.terminate(),
    };
  });
  await doJob({ kind: 'search', of: { design } }, threads, { onReport: () => undefined }).done;
}
