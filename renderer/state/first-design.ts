import { blankDesign, type FirstDesign, type InHand } from '../../core';
import type { Question, Report } from './first-design.worker';

/** Works out a first design on a thread of its own, which ends with it. */
export function workOutFirst(inHand: InHand, onShare: (share: number) => void): { answer: Promise<FirstDesign>; stop: () => void } {
  const worker = new Worker(new URL('./first-design.worker.ts', import.meta.url), { type: 'module', name: 'first design' });
  const answer = new Promise<FirstDesign>((resolve) => {
    worker.onmessage = ({ data }: MessageEvent<Report>) => ('found' in data ? resolve(data.found) : onShare(data.share));
    worker.onerror = ({ message }) => resolve({ ok: false, problem: { where: '', message: `The calculation stopped: ${message}` } });
    worker.postMessage({ inHand, blank: blankDesign() } satisfies Question);
  }).finally(() => worker.terminate());
  return { answer, stop: () => worker.terminate() };
}
