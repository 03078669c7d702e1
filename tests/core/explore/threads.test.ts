import { expect, test } from 'vitest';
import type { Job } from '../../../core/explore/job';
import { noStanding, searchAll, takeIn } from '../../../core/explore/search';
import { createAnswerer, doJob, threadsFor, type Thread } from '../../../core/explore/threads';
import { demo } from '../../demo';

/** A thread that is none, but copies what goes in and out as a real one does. */
function pretended(log: { asked: number; ended: number }): Thread {
  const answer = createAnswerer();
  return {
    ask: async (question) => {
      log.asked++;
      await Promise.resolve();
      return structuredClone(answer(structuredClone(question)));
    },
    end: () => void log.ended++,
  };
}

const design = demo('shed-light', { inHand: { from: 1, to: 2, step: 1 }, turns: { from: 20, to: 44, step: 12 } });
const job: Job<'search'> = { kind: 'search', of: { design } };

test('two threads do what one does, each is ended, and the size is told once', async () => {
  const log = { asked: 0, ended: 0 };
  const standing = noStanding();
  const sizes: number[] = [];
  const { done } = doJob(job, [pretended(log), pretended(log)], {
    onReport: (report) => takeIn(standing, report),
    onSize: (size) => sizes.push(size),
  });
  expect(await done).toBe(true);
  expect(sizes).toEqual([standing.considered]);
  expect(log.ended).toBe(2);
  const names = (items: readonly { candidate: object }[]) => items.map(({ candidate }) => JSON.stringify(candidate)).sort();
  expect(names(standing.front.items)).toEqual(names(searchAll(design).front.items));
});

test('cancelled, it ends its threads at once and reports no more', async () => {
  const log = { asked: 0, ended: 0 };
  let reports = 0;
  const running = doJob(job, [pretended(log)], {
    onReport: () => {
      reports++;
      running.cancel();
    },
  });
  expect(await running.done).toBe(false);
  expect(reports).toBe(1);
  expect(log.ended).toBeGreaterThan(0);
});

test('a thread that fails is told, not swallowed', async () => {
  const broken: Thread = { ask: () => Promise.resolve({ fault: 'the field does not converge' }), end: () => undefined };
  await expect(doJob(job, [broken], { onReport: () => undefined }).done).rejects.toThrow('the field does not converge');
});

test('all cores but one, at least one', () => {
  expect([1, 2, 8].map(threadsFor)).toEqual([1, 1, 7]);
});
