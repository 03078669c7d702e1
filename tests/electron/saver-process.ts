import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll } from 'vitest';

/** The saver as one file for Node, in a folder that every user may read. */
export function bundledSaver(): { script: string } {
  const made = { script: '' };
  let folder: string;
  beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'gapwright-saver-'));
    chmodSync(folder, 0o755);
    await build({
      configFile: false,
      logLevel: 'error',
      build: {
        ssr: path.resolve('tests/electron/saver.ts'),
        outDir: folder,
        emptyOutDir: true,
        target: 'node20',
        rolldownOptions: { output: { format: 'cjs', entryFileNames: 'saver.cjs' } },
      },
    });
    made.script = path.join(folder, 'saver.cjs');
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return made;
}
