import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { build, type Configuration, Platform } from 'electron-builder';
import { afterAll, expect, test } from 'vitest';

const require = createRequire(import.meta.url);
const { extractFile, listPackage } = require('@electron/asar') as {
  extractFile: (archive: string, file: string) => Buffer;
  listPackage: (archive: string, options: object) => string[];
};

const folder = mkdtempSync(path.join(tmpdir(), 'gapwright-packed-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Stands before an executable's fuses: then come their version, their count, and a digit for each (@electron/fuses, FuseV1Options for the order). */
const sentinel = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
const asElectronComes = '10110001';

/** As much of the runtime as the packager looks at. */
function standIn(): string {
  const runtime = path.join(folder, 'runtime');
  for (const inner of ['resources', 'locales']) mkdirSync(path.join(runtime, inner), { recursive: true });
  for (const name of ['LICENSE', 'LICENSES.chromium.html', 'chrome-sandbox', 'version', 'locales/en-US.pak'])
    writeFileSync(path.join(runtime, name), 'x');
  writeFileSync(path.join(runtime, 'electron'), `program ${sentinel}\u0001\u0008${asElectronComes} end`, { mode: 0o755 });
  return runtime;
}

test.runIf(process.platform === 'linux')(
  'packed round a stand-in for the runtime, the program is whole, holds nothing else, and its fuses are set',
  { timeout: 120_000 },
  async () => {
    const config = require(path.resolve('build/electron-builder.cjs')) as Configuration;
    await build({
      targets: Platform.LINUX.createTarget('dir'),
      config: { ...config, electronDist: standIn(), directories: { ...config.directories, output: path.join(folder, 'release') } },
      publish: 'never',
    });
    const made = path.join(folder, 'release/linux-unpacked');
    const archive = path.join(made, 'resources/app.asar');
    const packed = listPackage(archive, {}).filter((name) => path.extname(name) !== '');
    const pages = readdirSync('dist/renderer/assets').map((name) => `/dist/renderer/assets/${name}`);
    const others = [
      '/assets/fonts/DejaVuSans-LICENSE.txt',
      '/dist/renderer/index.html',
      '/dist/window/main.cjs',
      '/dist/window/preload.cjs',
    ];
    expect(packed.sort()).toEqual([...pages, ...others, '/package.json'].sort());
    for (const name of [...pages, ...others]) expect(extractFile(archive, name.slice(1)).equals(readFileSync(`.${name}`)), name).toBe(true);
    expect(readFileSync(path.join(made, 'LICENSES.packages.txt'), 'utf8')).toBe(readFileSync('dist/renderer/licences.txt', 'utf8'));
    expect(readdirSync(made)).toContain('LICENSE.gapwright.txt');
    // Off: run as Node, NODE_OPTIONS, --inspect, more rights for file:. On: the archive checked, and loaded alone. The other two as they come.
    expect(readFileSync(path.join(made, 'gapwright'), 'latin1').split(sentinel)[1]).toBe('\u0001\u000800001100 end');
  },
);
