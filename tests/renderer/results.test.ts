import { expect, test, vi } from 'vitest';
import { readDesign, type Design } from '../../core';
import { withValueAt } from '../../renderer/path';
import { demo } from '../demo';

/** The solver's thread: keeps what it is asked until told to answer, with a result that says which design it is of. */
class Thread {
  static asked: Design[] = [];
  static last: Thread | undefined;
  onmessage?: (event: { data: unknown }) => void;
  constructor() {
    Thread.last = this;
  }
  postMessage({ design }: { design: Design }) {
    Thread.asked.push(design);
  }
}
const answerOne = async (): Promise<void> => {
  const design = Thread.asked.shift();
  Thread.last?.onmessage?.({ data: { answer: { ok: true, results: { of: design?.winding.turns, stages: { field: {} } } } } });
  await new Promise((resolve) => setTimeout(resolve, 5));
};

const answerAll = async (): Promise<void> => {
  while (Thread.asked.length > 0) await answerOne();
};

vi.stubGlobal('Worker', Thread);
const { designStore } = await import('../../renderer/state/design');
const { resultsStore, startSolving } = await import('../../renderer/state/results');

const cabin = demo('hill-cabin');
const put = (turns: number) => designStore.setState({ design: withValueAt(cabin, 'winding.turns', turns) });
const shown = () => (resultsStore.getState().results as unknown as { of: number }).of;

test('an answer to an older design takes nothing away from what is wrong with the newest', async () => {
  put(60);
  startSolving();
  await answerOne();
  expect(shown()).toBe(60);
  put(61);
  const bad = withValueAt(cabin, 'discs.poles', 7);
  const read = readDesign(bad);
  expect(read.ok).toBe(false);
  designStore.setState({ design: bad });
  await answerOne();
  expect(shown()).toBe(61);
  expect(resultsStore.getState().problems).toEqual(read.ok ? [] : read.problems);
  put(62);
  await answerAll();
  expect(resultsStore.getState()).toMatchObject({ problems: [], busy: false });
});

test('a step foreseen stands on screen in the call that makes it', async () => {
  for (const turns of [70, 71, 72]) {
    put(turns);
    await answerAll();
  }
  put(73);
  expect(shown()).toBe(73);
  expect(resultsStore.getState().busy).toBe(false);
});
