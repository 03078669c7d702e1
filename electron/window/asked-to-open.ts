import path from 'node:path';
import type { OpenedFile } from '../contract';

/** The design among a command line's words, if any; the last one wins. */
export function designAmong(words: string[], folder = process.cwd()): string | undefined {
  const named = words.filter((word) => !word.startsWith('-') && word.toLowerCase().endsWith('.gapwright')).at(-1);
  return named && path.resolve(folder, named);
}

/** The one file that the system asked for and the renderer has not fetched yet. */
export function waitingDesign(first: string | undefined) {
  let file = first;
  let notify: () => void = () => undefined;
  return {
    put(asked: string): void {
      file = asked;
      notify();
    },
    onPut(listener: () => void): void {
      notify = listener;
    },
    async take(open: (file: string) => Promise<OpenedFile>): Promise<OpenedFile | null> {
      const asked = file;
      file = undefined;
      return asked === undefined ? null : open(asked);
    },
  };
}
