import { blankDesign, type FirstDesign, type InHand } from '../../core';
import type { Question } from './first-design.worker';

/** Works out a first design on a thread of its own, which ends with it. */
export function workOutFirst(inHand: InHand): { answer: Promise<FirstDesign>; stop: () => void } {
  const worker = new Worker(new URL('./first-design.worker.ts', import.meta.url), { type: 'module', name: 'first design' });
  const answer = new Promise<FirstDesign>((resolve) => {
    worker.onmessage = (event: MessageEvent<FirstDesign>) => resolve(event.data);
    worker.onerror = ({ message }) => resolve({ ok: false, problem: { where: '', message: `The calculation stopped: ${message}` } });
    worker.postMessage({ inHand, blank: blankDesign() } satisfies Question);
  }).finally(() => worker.terminate());
  return { answer, stop: () => worker.terminate() };
}
