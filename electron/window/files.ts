import { createHash, randomUUID } from 'node:crypto';
import { access, readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import type { BrowserWindow, Dialog } from 'electron';
import { largestDesign } from '../calls';
import type { FileKind, Host, KeptFile, OpenedFile } from '../contract';
import { designText, tooLarge } from '../design-text';
import { backupOf, reason, writeWhole } from '../whole-file';
import type { RememberedFiles } from './remembered-files';

const kindNames: Record<FileKind, string> = {
  gapwright: 'Gapwright design',
  pdf: 'PDF document',
  csv: 'Table (CSV)',
  svg: 'Drawing (SVG)',
  png: 'Picture (PNG)',
  dxf: 'Cutting file (DXF)',
};

type DesignFiles = Pick<Host, 'openDesign' | 'reopenDesign' | 'isChanged' | 'saveDesign' | 'saveDesignAs' | 'exportFile'> & {
  /** For a path that the system named, not the page. */
  openPath: (file: string) => Promise<OpenedFile>;
};

interface Known {
  file: string;
  /** Digest of what was last read or written here. */
  seen: string;
}

/** Open and save. The page holds a token for each file and never learns where the file lies. */
export function designFiles(
  window: BrowserWindow,
  dialog: Pick<Dialog, 'showOpenDialog' | 'showSaveDialog' | 'showMessageBox'>,
  remembered: RememberedFiles,
): DesignFiles {
  const files = new Map<string, Known>();
  const keep = async (file: string, content: string | Uint8Array): Promise<KeptFile> => {
    const token = randomUUID();
    files.set(token, { file, seen: digest(content) });
    return { token, id: await remembered.idOf(file), name: path.basename(file) };
  };

  const agreesToReplace = async (message: string, detail = ''): Promise<boolean> => {
    const { response } = await dialog.showMessageBox(window, {
      type: 'warning',
      message,
      detail,
      buttons: ['Cancel', 'Replace'],
      defaultId: 0,
      cancelId: 0,
    });
    return response === 1;
  };

  const askWhere = async (suggestedName: string, kind: FileKind): Promise<string | null> => {
    const filters = [{ name: kindNames[kind], extensions: [kind] }];
    const { canceled, filePath } = await dialog.showSaveDialog(window, { defaultPath: suggestedName, filters });
    if (canceled || !filePath) return null;
    if (path.extname(filePath).toLowerCase() === `.${kind}`) return filePath;
    // The system asked about overwriting the name as typed, not the one with its ending.
    const file = `${filePath}.${kind}`;
    const agreed = (await isFree(file)) || (await agreesToReplace(`${path.basename(file)} is there already. Replace it?`));
    return agreed ? file : null;
  };

  const openPath = async (file: string): Promise<OpenedFile> => {
    const name = path.basename(file);
    try {
      // Before it is read, since a device has no end.
      const about = await stat(file);
      if (!about.isFile()) throw new Error('it is not a file');
      if (about.size > largestDesign) throw new Error(tooLarge);
      const bytes = await readFile(file);
      return { text: designText(bytes), ...(await keep(file, bytes)) };
    } catch (cause) {
      throw new Error(`Could not open ${name}: ${reason(cause)}.`, { cause });
    }
  };

  const save = async (known: Known, text: string): Promise<void> => {
    const name = path.basename(known.file);
    const question = `${name} was changed by another program since it was opened or saved here. Replace it?`;
    if (
      (await changed(known)) &&
      !(await agreesToReplace(question, `What is there now is kept as ${path.basename(backupOf(known.file))}.`))
    )
      throw new Error(`${name} was changed by another program and is left as it is. “Save as” keeps this design in another file.`);
    await writeWhole(known.file, text, { keepOld: true });
    known.seen = digest(text);
  };

  /** One after another: each looks at what the one before it left. */
  let last: Promise<void> = Promise.resolve();
  return {
    openPath,
    async openDesign() {
      const filters = [{ name: kindNames.gapwright, extensions: ['gapwright'] }];
      const { canceled, filePaths } = await dialog.showOpenDialog(window, { properties: ['openFile'], filters });
      const [file] = filePaths;
      return canceled || file === undefined ? null : openPath(file);
    },
    async reopenDesign(id) {
      const file = await remembered.fileOf(id);
      if (file === undefined) throw new Error('It is not known any more where this design lies.');
      return openPath(file);
    },
    async isChanged(token) {
      const known = files.get(token);
      await last.catch(() => undefined);
      return known !== undefined && changed(known);
    },
    async saveDesign(token, text) {
      const known = files.get(token);
      if (!known) throw new Error('It is not known any more where this design was kept: choose a place to save it.');
      last = last.catch(() => undefined).then(() => save(known, text));
      await last;
    },
    async saveDesignAs(suggestedName, text) {
      const file = await askWhere(suggestedName, 'gapwright');
      if (file === null) return null;
      await writeWhole(file, text, { keepOld: true });
      return keep(file, text);
    },
    async exportFile(suggestedName, kind, bytes) {
      const file = await askWhere(suggestedName, kind);
      if (file === null) return null;
      await writeWhole(file, bytes);
      return { name: path.basename(file) };
    },
  };
}

const digest = (content: string | Uint8Array) => createHash('sha256').update(content).digest('hex');

/** A file that is gone or cannot be read holds nothing that a save would destroy. */
async function changed({ file, seen }: Known): Promise<boolean> {
  const now = await readFile(file).catch(() => undefined);
  return now !== undefined && digest(now) !== seen;
}

function isFree(file: string): Promise<boolean> {
  return access(file).then(
    () => false,
    () => true,
  );
}
