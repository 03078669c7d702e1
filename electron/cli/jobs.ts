import { availableParallelism } from 'node:os';
import path from 'node:path';
import { Worker } from 'node:worker_threads';
import { doJob, threadsFor, type Job, type JobKind, type ReportOf, type Thread, type ThreadAnswer } from '../../core/index';

function createThread(): Thread {
  const worker = new Worker(path.join(__dirname, 'thread.cjs'));
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
}

/** Does a job on all cores but one and gives the reports as they came in; tells on a terminal how far it is. */
export async function reportsOf<K extends JobKind>(job: Job<K>): Promise<ReportOf<K>[]> {
  const reports: ReportOf<K>[] = [];
  const threads = Array.from({ length: threadsFor(availableParallelism()) }, createThread);
  const tell = (words: string) => process.stderr.isTTY && process.stderr.write(`\r\u001b[K${words}`);
  await doJob(job, threads, { onReport: (report) => tell(`pieces done: ${reports.push(report)} `) }).done;
  tell('');
  return reports;
}
