import { randomUUID } from 'node:crypto';
import { access, constants, copyFile, link, open, readdir, realpath, rename, rm, stat } from 'node:fs/promises';
import path from 'node:path';

/** Writes still under way, so that two saves of one file land in the order they were asked for. */
const underWay = new Map<string, Promise<void>>();

/**
 * Replaces a file whole or not at all: written beside it, flushed to the disk, then renamed over it. After an error the old file stands as it was.
 * With `keepOld`, what was there before is kept as NAME.backup.EXT.
 */
export async function writeWhole(file: string, content: string | Uint8Array, { keepOld = false } = {}): Promise<void> {
  const asked = path.resolve(file);
  // Taken before anything is waited for, or the order asked in would already be lost.
  const turn = (underWay.get(asked) ?? Promise.resolve()).catch(() => undefined).then(() => replace(asked, content, keepOld));
  underWay.set(asked, turn);
  try {
    await turn;
  } catch (cause) {
    throw new Error(`Could not write ${path.basename(file)}: ${reason(cause)}. What was there before is unchanged.`, { cause });
  } finally {
    if (underWay.get(asked) === turn) underWay.delete(asked);
  }
}

export function backupOf(file: string): string {
  const { dir, name, ext } = path.parse(file);
  return path.join(dir, `${name}.backup${ext}`);
}

async function replace(asked: string, content: string | Uint8Array, keepOld: boolean): Promise<void> {
  // A link stays one: the file it points to is replaced.
  const target = await realpath(asked).catch(() => asked);
  const folder = path.dirname(target);
  const old = await stat(target).catch(() => undefined);
  // A rename would replace a file that its owner has made read-only.
  if (old) await access(target, constants.W_OK);
  const beside = besideIn(folder);
  try {
    const handle = await open(beside, 'wx', old ? old.mode & 0o777 : 0o644);
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
    if (keepOld) await keepBackup(target);
    await rename(beside, target);
  } catch (error) {
    await remove(beside);
    throw error;
  }
  await flushFolder(folder);
  await sweep(folder);
}

const ours = /^\.gapwright-[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;
const besideIn = (folder: string) => path.join(folder, `.gapwright-${randomUUID()}`);
const remove = (file: string) => rm(file, { force: true }).catch(() => undefined);

/** The backup too is there whole or not at all. That there is no room or leave for a second file must not stop the save itself. */
async function keepBackup(target: string): Promise<void> {
  const second = besideIn(path.dirname(target));
  await link(target, second)
    .catch(() => copyFile(target, second)) // a disk that knows no second name for a file
    .then(() => rename(second, backupOf(target)))
    .catch(() => undefined);
  await remove(second);
}

/** Makes the rename itself survive a power cut, where the system lets a folder be opened at all. */
async function flushFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch(() => undefined);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

/** Takes away what saves that were killed half-way left in the folder; younger ones may still be under way in another program. */
async function sweep(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const file of names.filter((name) => ours.test(name)).map((name) => path.join(folder, name))) {
    const changed = await stat(file).then(
      (s) => s.mtimeMs,
      () => Infinity,
    );
    if (Date.now() - changed > 60_000) await remove(file);
  }
}

const reasons: Record<string, string> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the space allowed to you is used up',
  EFBIG: 'the system does not allow a file this large',
  EACCES: 'the system refuses access to this file or folder',
  EPERM: 'the system refuses access to this file or folder',
  EROFS: 'the disk is read-only',
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'there is no such folder',
  EISDIR: 'a folder has this name',
  EBUSY: 'another program holds the file',
  ENAMETOOLONG: 'the name is too long',
  EIO: 'the disk reported a fault',
};

/** A file error in words, its system code kept for whoever looks it up. */
export function reason(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  const words = reasons[code];
  return words ? `${words} (${code})` : error.message;
}
