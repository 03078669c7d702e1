import type { SameFile } from './other-tabs';

const STORE = 'files';
const MOST = 50;

interface Remembered<H> {
  id: string;
  handle: H;
}

/** Handles of the last files in the browser's own database: text cannot carry them. Nothing is remembered where the browser keeps none. */
export function rememberedHandles<H extends SameFile>() {
  let opened: Promise<IDBDatabase> | undefined;
  const store = async (mode: IDBTransactionMode) => {
    const database = await (opened ??= settled(opening()));
    return database.transaction(STORE, mode).objectStore(STORE);
  };
  const all = async () => settled((await store('readonly')).getAll() as IDBRequest<Remembered<H>[]>);
  return {
    /** The file's id, the same in every run for as long as it is among the last ones. */
    async idOf(handle: H): Promise<string | undefined> {
      try {
        for (const each of await all()) if (await each.handle.isSameEntry(handle)) return each.id;
        const id = crypto.randomUUID();
        const records = await store('readwrite');
        const place = (await settled(records.add({ id, handle } satisfies Remembered<H>))) as number;
        records.delete(IDBKeyRange.upperBound(place - MOST));
        return id;
      } catch {
        return undefined;
      }
    },
    handleOf: (id: string): Promise<H | undefined> =>
      all().then(
        (records) => records.find((each) => each.id === id)?.handle,
        () => undefined,
      ),
  };
}

function opening(): IDBOpenDBRequest {
  const request = indexedDB.open('gapwright', 1);
  request.onupgradeneeded = () => request.result.createObjectStore(STORE, { autoIncrement: true });
  return request;
}

function settled<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('the browser keeps no files'));
  });
}
