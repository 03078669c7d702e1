import { randomUUID } from 'node:crypto';
import { access, readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import type { BrowserWindow, Dialog } from 'electron';
import { longestText } from '../calls';
import type { FileKind, Host, OpenedFile } from '../contract';
import { reason, writeWhole } from '../whole-file';

const kindNames: Record<FileKind, string> = {
  gapwright: 'Gapwright design',
  pdf: 'PDF document',
  csv: 'Table (CSV)',
  svg: 'Drawing (SVG)',
  png: 'Picture (PNG)',
  dxf: 'Cutting file (DXF)',
};

type DesignFiles = Pick<Host, 'openDesign' | 'saveDesign' | 'saveDesignAs' | 'exportFile'> & {
  /** For a path that the system named, not the page. */
  openPath: (file: string) => Promise<OpenedFile>;
};

/** Open and save. The page holds a token for each file and never learns where the file lies. */
export function designFiles(
  window: BrowserWindow,
  dialog: Pick<Dialog, 'showOpenDialog' | 'showSaveDialog' | 'showMessageBox'>,
): DesignFiles {
  const paths = new Map<string, string>();
  const tokenFor = (file: string): string => {
    const token = randomUUID();
    paths.set(token, file);
    return token;
  };

  const askWhere = async (suggestedName: string, kind: FileKind): Promise<string | null> => {
    const filters = [{ name: kindNames[kind], extensions: [kind] }];
    const { canceled, filePath } = await dialog.showSaveDialog(window, { defaultPath: suggestedName, filters });
    if (canceled || !filePath) return null;
    if (path.extname(filePath).toLowerCase() === `.${kind}`) return filePath;
    // The system asked about overwriting the name as typed, not the one with its ending.
    const file = `${filePath}.${kind}`;
    return (await isFree(file)) || (await agreesToReplace(file)) ? file : null;
  };

  const agreesToReplace = async (file: string): Promise<boolean> => {
    const { response } = await dialog.showMessageBox(window, {
      type: 'warning',
      message: `${path.basename(file)} is there already. Replace it?`,
      buttons: ['Cancel', 'Replace'],
      defaultId: 0,
      cancelId: 0,
    });
    return response === 1;
  };

  const openPath = async (file: string): Promise<OpenedFile> => ({
    text: await designText(file),
    name: path.basename(file),
    token: tokenFor(file),
  });

  return {
    openPath,
    async openDesign() {
      const filters = [{ name: kindNames.gapwright, extensions: ['gapwright'] }];
      const { canceled, filePaths } = await dialog.showOpenDialog(window, { properties: ['openFile'], filters });
      const [file] = filePaths;
      return canceled || file === undefined ? null : openPath(file);
    },
    async saveDesign(token, text) {
      const file = paths.get(token);
      if (file === undefined) throw new Error('It is not known any more where this design was kept: choose a place to save it.');
      await writeWhole(file, text);
    },
    async saveDesignAs(suggestedName, text) {
      const file = await askWhere(suggestedName, 'gapwright');
      if (file === null) return null;
      await writeWhole(file, text);
      return { token: tokenFor(file), name: path.basename(file) };
    },
    async exportFile(suggestedName, kind, bytes) {
      const file = await askWhere(suggestedName, kind);
      if (file === null) return null;
      await writeWhole(file, bytes);
      return { name: path.basename(file) };
    },
  };
}

async function designText(file: string): Promise<string> {
  const name = path.basename(file);
  try {
    if ((await stat(file)).size > longestText) throw new Error('it is far too large for a design');
    return new TextDecoder('utf-8', { fatal: true }).decode(await readFile(file));
  } catch (cause) {
    const why = cause instanceof TypeError ? 'it is not a text file' : reason(cause);
    throw new Error(`Could not open ${name}: ${why}.`, { cause });
  }
}

function isFree(file: string): Promise<boolean> {
  return access(file).then(
    () => false,
    () => true,
  );
}
