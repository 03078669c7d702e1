import { randomUUID } from 'node:crypto';
import { open, realpath, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';

/** Writes still under way, so that two saves of one file land in the order they were asked for. */
const underWay = new Map<string, Promise<void>>();

/**
 * Replaces a file whole or not at all: written beside it, flushed to the disk, then renamed over it. After an error the old file stands as it was.
 */
export async function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  const asked = path.resolve(file);
  // Taken before anything is waited for, or the order asked in would already be lost.
  const turn = (underWay.get(asked) ?? Promise.resolve()).catch(() => undefined).then(() => replace(asked, content));
  underWay.set(asked, turn);
  try {
    await turn;
  } catch (cause) {
    throw new Error(`Could not write ${path.basename(file)}: ${reason(cause)}. What was there before is unchanged.`, { cause });
  } finally {
    if (underWay.get(asked) === turn) underWay.delete(asked);
  }
}

async function replace(asked: string, content: string | Uint8Array): Promise<void> {
  // A link stays one: the file it points to is replaced.
  const target = await realpath(asked).catch(() => asked);
  const mode = await stat(target).then(
    (s) => s.mode & 0o777,
    () => 0o644,
  );
  const beside = path.join(path.dirname(target), `.${path.basename(target)}.${randomUUID()}`);
  try {
    const handle = await open(beside, 'wx', mode);
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(beside, target);
  } catch (error) {
    await rm(beside, { force: true }).catch(() => undefined);
    throw error;
  }
  await flushFolder(path.dirname(target));
}

/** Makes the rename itself survive a power cut, where the system lets a folder be opened at all. */
async function flushFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch(() => undefined);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

const reasons: Record<string, string> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the space allowed to you is used up',
  EACCES: 'this folder or file may not be written to',
  EPERM: 'this folder or file may not be written to',
  EROFS: 'the disk is read-only',
  ENOENT: 'there is no such file or folder',
  EISDIR: 'a folder has this name',
  EBUSY: 'another program holds the file',
};

/** A file error in words, its system code kept for whoever looks it up. */
export function reason(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  const words = reasons[code];
  return words ? `${words} (${code})` : error.message;
}
