import type { FileKind, Host, OpenedFile } from '../electron/contract';

/** The parts of the File System Access API used here; not every browser has it. */
interface FileHandle {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{ write(data: string | Uint8Array): Promise<void>; close(): Promise<void> }>;
}
interface FilePickers {
  showOpenFilePicker?(options: object): Promise<FileHandle[]>;
  showSaveFilePicker?(options: object): Promise<FileHandle>;
}

const types: Record<FileKind, string> = {
  gapwright: 'application/json',
  pdf: 'application/pdf',
  csv: 'text/csv',
  svg: 'image/svg+xml',
  png: 'image/png',
  dxf: 'application/dxf',
};
const words: Record<FileKind, string> = {
  gapwright: 'Gapwright design',
  pdf: 'PDF document',
  csv: 'Table',
  svg: 'SVG drawing',
  png: 'PNG picture',
  dxf: 'DXF drawing',
};

/** The host's contract with the browser's own means; what must outlive the page goes to the server it came from, or to local storage. */
export function createBrowserHost(): Host {
  const handles = new Map<string, FileHandle>();
  const pickers = (): FilePickers => window as FilePickers;
  const keep = (handle: FileHandle) => {
    const token = crypto.randomUUID();
    handles.set(token, handle);
    return token;
  };

  const saveAs = async (suggestedName: string, kind: FileKind, data: string | Uint8Array) => {
    const own = pickers();
    if (!own.showSaveFilePicker) {
      download(suggestedName, kind, data);
      return { name: suggestedName, handle: undefined };
    }
    const handle = await unlessAborted(() => own.showSaveFilePicker?.({ suggestedName, types: [accepts(kind)] }));
    if (!handle) return null;
    await write(handle, data);
    return { name: handle.name, handle };
  };

  return {
    async openDesign(): Promise<OpenedFile | null> {
      const own = pickers();
      if (!own.showOpenFilePicker) return chosenFile();
      const chosen = await unlessAborted(() => own.showOpenFilePicker?.({ types: [accepts('gapwright')] }));
      const handle = chosen?.[0];
      return handle ? { token: keep(handle), name: handle.name, text: await (await handle.getFile()).text() } : null;
    },
    takeWaitingDesign: () => Promise.resolve(null),
    async saveDesign(token, text) {
      const handle = handles.get(token);
      if (handle) await write(handle, text);
      else download(nameOf(token), 'gapwright', text);
    },
    async saveDesignAs(suggestedName, text) {
      const saved = await saveAs(suggestedName, 'gapwright', text);
      return saved && { name: saved.name, token: saved.handle ? keep(saved.handle) : downloadToken(saved.name) };
    },
    async exportFile(suggestedName, kind, bytes) {
      const saved = await saveAs(suggestedName, kind, bytes);
      return saved && { name: saved.name };
    },
    readRecovery: () => kept<string | null>('readRecovery', [], () => localStorage.getItem('recovery')),
    writeRecovery: (text) => kept<void>('writeRecovery', [text], () => putLocal('recovery', text)),
    readSettings: () => kept<string | null>('readSettings', [], () => localStorage.getItem('settings')),
    writeSettings: (text) => kept<void>('writeSettings', [text], () => putLocal('settings', text)),
    setUnsaved: () => Promise.resolve(),
    setMenu: () => Promise.resolve(),
  };
}

/** A token for a file that was downloaded: saving again downloads again under the same name. */
const downloadToken = (name: string) => `download:${name}`;
const nameOf = (token: string) => token.replace(/^download:/, '');

const accepts = (kind: FileKind) => ({ description: words[kind], accept: { [types[kind]]: [`.${kind}`] } });

async function write(handle: FileHandle, data: string | Uint8Array): Promise<void> {
  const stream = await handle.createWritable();
  await stream.write(data);
  await stream.close();
}

async function unlessAborted<T>(ask: () => Promise<T> | undefined): Promise<T | undefined> {
  try {
    return await ask();
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return undefined;
    throw error;
  }
}

function download(name: string, kind: FileKind, data: string | Uint8Array): void {
  const url = URL.createObjectURL(new Blob([data as BlobPart], { type: types[kind] }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

function chosenFile(): Promise<OpenedFile | null> {
  return new Promise((resolve, reject) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = '.gapwright,application/json';
    input.oncancel = () => resolve(null);
    input.onchange = () => {
      const file = input.files?.[0];
      if (!file) resolve(null);
      else file.text().then((text) => resolve({ token: downloadToken(file.name), name: file.name, text }), reject);
    };
    input.click();
  });
}

/** Whether the page comes from the served host; settled by the first answer. */
let served: boolean | undefined;

async function kept<T>(call: keyof Host, args: unknown[], local: () => unknown): Promise<T> {
  if (served !== false) {
    const response = await fetch(`/host/${call}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ args }),
    });
    served ??= response.headers.get('content-type')?.includes('json') ?? false;
    if (served) {
      const answer = (await response.json()) as { value?: T; error?: string };
      if (answer.error !== undefined) throw new Error(answer.error);
      return answer.value as T;
    }
  }
  return local() as T;
}

function putLocal(key: string, text: string | null): void {
  if (text === null) localStorage.removeItem(key);
  else localStorage.setItem(key, text);
}
