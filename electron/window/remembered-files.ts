import { randomUUID } from 'node:crypto';
import { mkdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { writeWhole } from '../whole-file';

interface Remembered {
  id: string;
  file: string;
}

const MOST = 50;

export interface RememberedFiles {
  /** The file's id, the same in every run for as long as it is among the last ones. */
  idOf(file: string): Promise<string>;
  fileOf(id: string): Promise<string | undefined>;
}

/** Where the last designs lie, so that a page can ask for one again by an id and never learns its path. */
export function rememberedFiles(folder: string): RememberedFiles {
  const kept = path.join(folder, 'files.json');
  let list: Promise<Remembered[]> | undefined;
  const known = () =>
    (list ??= readFile(kept, 'utf8')
      .then(listFrom)
      .catch(() => []));
  return {
    async idOf(file) {
      const latest = known().then((before) => before.find((each) => each.file === file) ?? { id: randomUUID(), file });
      list = Promise.all([latest, known()]).then(([first, before]) =>
        [first, ...before.filter((each) => each.file !== file)].slice(0, MOST),
      );
      const now = await list;
      // Losing this loses a convenience, and must not stop an open or a save.
      await mkdir(folder, { recursive: true, mode: 0o700 })
        .then(() => writeWhole(kept, JSON.stringify(now)))
        .catch(() => undefined);
      return (await latest).id;
    },
    async fileOf(id) {
      return (await known()).find((each) => each.id === id)?.file;
    },
  };
}

function listFrom(text: string): Remembered[] {
  const value: unknown = JSON.parse(text);
  return Array.isArray(value) ? value.filter(isRemembered).slice(0, MOST) : [];
}

function isRemembered(value: unknown): value is Remembered {
  if (typeof value !== 'object' || value === null) return false;
  const { id, file } = value as Record<string, unknown>;
  return typeof id === 'string' && typeof file === 'string' && path.isAbsolute(file);
}
