import type { FileKind, Host, KeptFile, OpenedFile } from '../electron/contract';
import { browserKeeping } from './browser-keeping';
import { otherTabs, type SameFile } from './other-tabs';
import { rememberedHandles } from './remembered-handles';

/** The parts of the File System Access API used here; not every browser has it. */
interface FileHandle extends SameFile {
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{ write(data: string | Uint8Array): Promise<void>; close(): Promise<void> }>;
  requestPermission(wish: { mode: 'readwrite' }): Promise<PermissionState>;
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

interface Known {
  handle: FileHandle;
  /** What was last read or written here. */
  seen: string;
}

/** The host's contract with the browser's own means. */
export function createBrowserHost(): Host {
  const files = new Map<string, Known>();
  let tabs: ReturnType<typeof otherTabs> | undefined;
  const pickers = (): FilePickers => window as FilePickers;
  const isOpenElsewhere = (handle: FileHandle) => {
    tabs ??= otherTabs(() => [...files.values()].map((known) => known.handle));
    return tabs.haveOpen(handle);
  };
  const remembered = rememberedHandles<FileHandle>();
  const keep = async (handle: FileHandle, seen: string): Promise<KeptFile> => {
    const token = crypto.randomUUID();
    files.set(token, { handle, seen });
    return { token, id: await remembered.idOf(handle), name: handle.name };
  };
  const openHandle = async (handle: FileHandle): Promise<OpenedFile | null> => {
    const question = `${handle.name} is open in another tab. What is saved in one replaces what the other saved. Open it here too?`;
    if ((await isOpenElsewhere(handle)) && !confirm(question)) return null;
    const text = await designText(await handle.getFile());
    return { text, ...(await keep(handle, text)) };
  };

  /** Undefined when the user thinks better of it; no handle where the browser can only download. */
  const saveAs = async (suggestedName: string, kind: FileKind, data: string | Uint8Array) => {
    const own = pickers();
    if (!own.showSaveFilePicker) {
      download(suggestedName, kind, data);
      return { name: suggestedName, handle: undefined };
    }
    const handle = await unlessAborted(() => own.showSaveFilePicker?.({ suggestedName, types: [accepts(kind)] }));
    if (!handle || ((await isOpenElsewhere(handle)) && !confirm(`${handle.name} is open in another tab. Replace it all the same?`)))
      return undefined;
    await write(handle, data);
    return { name: handle.name, handle };
  };

  return {
    async openDesign(): Promise<OpenedFile | null> {
      const own = pickers();
      if (!own.showOpenFilePicker) return chosenFile();
      const chosen = await unlessAborted(() => own.showOpenFilePicker?.({ types: [accepts('gapwright')] }));
      return chosen?.[0] ? openHandle(chosen[0]) : null;
    },
    async reopenDesign(id) {
      const handle = await remembered.handleOf(id);
      if (!handle) throw new Error('It is not known any more where this design lies.');
      if ((await handle.requestPermission({ mode: 'readwrite' })) !== 'granted')
        throw new Error(`The browser was not allowed to open ${handle.name}.`);
      return openHandle(handle);
    },
    takeWaitingDesign: () => Promise.resolve(null),
    async isChanged(token) {
      const known = files.get(token);
      return known !== undefined && isChanged(known);
    },
    async saveDesign(token, text) {
      const known = files.get(token);
      if (!known) return download(nameOf(token), 'gapwright', text);
      const { name } = known.handle;
      if ((await isChanged(known)) && !confirm(`${name} was changed by another program since it was opened or saved here. Replace it?`))
        throw new Error(`${name} was changed by another program and is left as it is. “Save as” keeps this design in another file.`);
      await write(known.handle, text);
      known.seen = text;
    },
    async saveDesignAs(suggestedName, text) {
      const saved = await saveAs(suggestedName, 'gapwright', text);
      if (!saved) return null;
      return saved.handle ? keep(saved.handle, text) : { name: saved.name, token: downloadToken(saved.name) };
    },
    async exportFile(suggestedName, kind, bytes) {
      const saved = await saveAs(suggestedName, kind, bytes);
      return saved ? { name: saved.name } : null;
    },
    ...browserKeeping(),
    setMenu: () => Promise.resolve(),
  };
}

/** A token for a file that was downloaded: saving again downloads again under the same name. */
const downloadToken = (name: string) => `download:${name}`;
const nameOf = (token: string) => token.replace(/^download:/, '');

const accepts = (kind: FileKind) => ({ description: words[kind], accept: { [types[kind]]: [`.${kind}`] } });

/** Far above any design that can be made here. [bytes] */
const largestDesign = 10_000_000;

async function designText(file: File): Promise<string> {
  if (file.size > largestDesign) throw new Error(`${file.name} is larger than any design, ${largestDesign / 1e6} MB`);
  const bytes = await file.arrayBuffer();
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    // What is in UTF-16 and plain English otherwise passes for UTF-8.
    if (!text.includes('\0')) return text;
  } catch {
    // Said below, for both.
  }
  throw new Error(`${file.name} is not text in UTF-8`);
}

/** A file that is gone or cannot be read holds nothing that a save would destroy. */
async function isChanged({ handle, seen }: Known): Promise<boolean> {
  const now = await handle
    .getFile()
    .then((file) => file.text())
    .catch(() => seen);
  return now !== seen;
}

/** The browser writes beside the file and puts it in place on closing. */
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
      else designText(file).then((text) => resolve({ token: downloadToken(file.name), name: file.name, text }), reject);
    };
    input.click();
  });
}
