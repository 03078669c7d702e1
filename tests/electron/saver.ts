import { writeSync } from 'node:fs';
import readline from 'node:readline';
import type { BrowserWindow } from 'electron';
import { writeWhole } from '../../electron/whole-file';
import { designFiles } from '../../electron/window/files';
import { rememberedFiles } from '../../electron/window/remembered-files';

/**
 * A process that saves, to be killed or to meet a disk that refuses. Bundled by the test that starts it.
 *
 *   saver loop FILE FROM    saves design after design for ever, telling the number of each that is on the disk
 *   saver serve FILE        opens FILE as the window host does; then for each line on standard input, a number of bytes, saves that many
 *                           and tells what came of it
 */
const [mode, file = '', from = '0'] = process.argv.slice(2);
if (mode === 'loop') void loop(Number(from));
else void serve();

/** Of a length that varies, and whole only if its end fits its beginning. */
function numbered(n: number): string {
  return JSON.stringify({ n, filling: 'x'.repeat(1000 + ((n * 7919) % 200_000)), end: n });
}

async function loop(first: number): Promise<void> {
  for (let n = first; ; n++) {
    await writeWhole(file, numbered(n), { keepOld: true });
    writeSync(1, `${n}\n`);
  }
}

async function serve(): Promise<void> {
  const nobody = () => Promise.reject(new Error('nobody is there to be asked'));
  const files = designFiles(
    {} as BrowserWindow,
    { showOpenDialog: nobody, showSaveDialog: nobody, showMessageBox: nobody },
    rememberedFiles(`${file}.data`),
  );
  const { token } = await files.openPath(file);
  writeSync(1, 'open\n');
  for await (const line of readline.createInterface({ input: process.stdin })) {
    const saved = await files.saveDesign(token, 'x'.repeat(Number(line))).then(
      () => 'saved',
      (error: Error) => error.message,
    );
    writeSync(1, `${saved}\n`);
  }
}
