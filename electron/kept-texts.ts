import { mkdir, readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import type { Host } from './contract';
import { reason, writeWhole } from './whole-file';

export type KeptTexts = Pick<Host, 'readRecovery' | 'writeRecovery' | 'readSettings' | 'writeSettings'>;

/** The texts a host keeps for the renderer between runs, in the user's own application data. */
export function keptTexts(folder: string): KeptTexts {
  const recovery = path.join(folder, 'recovery.gapwright');
  const settings = path.join(folder, 'settings.json');
  const write = async (file: string, text: string) => {
    await mkdir(folder, { recursive: true, mode: 0o700 });
    await writeWhole(file, text);
  };
  let last: Promise<void> = Promise.resolve();
  return {
    readRecovery: () => read(recovery),
    readSettings: () => read(settings),
    writeSettings: (text) => write(settings, text),
    writeRecovery: (text) => {
      last = last.catch(() => undefined).then(() => (text === null ? rm(recovery, { force: true }) : write(recovery, text)));
      return last;
    },
  };
}

async function read(file: string): Promise<string | null> {
  try {
    return await readFile(file, 'utf8');
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw new Error(`Could not read ${path.basename(file)}: ${reason(error)}.`, { cause: error });
  }
}
