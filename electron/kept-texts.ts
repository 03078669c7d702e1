import { mkdir, readdir, readFile, rename, rm, stat } from 'node:fs/promises';
import { uptime } from 'node:os';
import path from 'node:path';
import type { KeepingHost } from './contract';
import { reason, writeWhole } from './whole-file';

export type KeptTexts = Omit<KeepingHost, 'setUnsaved'>;

/** A recovery text is named after the program that runs the page, and the page. */
const recoveryName = /^recovery\.([1-9]\d*)\.([\w-]+)\.gapwright$/;

/** The texts a host keeps for its pages between runs, in the user's own application data. Other hosts may use the folder at the same time. */
export function keptTexts(folder: string, program = process.pid): KeptTexts {
  const settings = path.join(folder, 'settings.json');
  const recoveryOf = (page: string) => path.join(folder, `recovery.${program}.${page}.gapwright`);
  const write = async (file: string, text: string) => {
    await mkdir(folder, { recursive: true, mode: 0o700 });
    await writeWhole(file, text);
  };

  /** Texts of pages that are gone, newest first. */
  const leftBehind = async (present: string[]): Promise<string[]> => {
    const names = await readdir(folder).catch(() => []);
    const found = names.map(async (name) => {
      const [, owner, page = ''] = recoveryName.exec(name) ?? [];
      const file = path.join(folder, name);
      const changed = owner === undefined ? undefined : await stat(file).catch(() => undefined);
      if (!changed) return [];
      const isHeld = Number(owner) === program ? present.includes(page) : isRunning(Number(owner), changed.mtimeMs);
      return isHeld ? [] : [{ file, changed: changed.mtimeMs }];
    });
    const all = (await Promise.all(found)).flat();
    return all.sort((a, b) => b.changed - a.changed).map(({ file }) => file);
  };

  /** The text becomes this page's by its name; false when another host was quicker. */
  const takeOver = (file: string, page: string): Promise<boolean> =>
    rename(file, recoveryOf(page)).then(
      () => true,
      (error: unknown) => {
        if (isMissing(error)) return false;
        throw error;
      },
    );

  let last: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(act: () => Promise<T>): Promise<T> => {
    const turn = last.catch(() => undefined).then(act);
    last = turn;
    return turn;
  };
  return {
    readRecovery: (page, present) =>
      inTurn(async () => {
        const own = await read(recoveryOf(page));
        if (own !== null) return own;
        for (const file of await leftBehind(present)) if (await takeOver(file, page)) return read(recoveryOf(page));
        return null;
      }),
    writeRecovery: (page, text) => inTurn(() => (text === null ? rm(recoveryOf(page), { force: true }) : write(recoveryOf(page), text))),
    readSettings: () => read(settings),
    writeSettings: (text) => write(settings, text),
  };
}

/** Whether the program that kept a text still runs. A number from before the machine was last started is nobody's. */
function isRunning(program: number, kept: number): boolean {
  if (kept < Date.now() - uptime() * 1000) return false;
  try {
    return process.kill(program, 0);
  } catch {
    return false;
  }
}

async function read(file: string): Promise<string | null> {
  try {
    return await readFile(file, 'utf8');
  } catch (error) {
    if (isMissing(error)) return null;
    throw new Error(`Could not read ${path.basename(file)}: ${reason(error)}.`, { cause: error });
  }
}

const isMissing = (error: unknown) => error instanceof Error && 'code' in error && error.code === 'ENOENT';
