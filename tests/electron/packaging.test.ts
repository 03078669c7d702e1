import { appendFileSync, cpSync, existsSync, mkdtempSync, readFileSync, rmSync, utimesSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { licences } from '../../build/licences';
import { versionStamp } from '../../build/version.mjs';

const require = createRequire(import.meta.url);

interface Packaging {
  files: string[];
  extraFiles: { from: string }[];
  electronVersion: string;
  fileAssociations: { ext: string }[];
  electronFuses: Record<string, boolean>;
  linux: { target: string[] };
  win: { target: string[] };
  mac: { target: string[] };
}
const packaging = require(path.resolve('build/electron-builder.cjs')) as Packaging;

test('the packager accepts its configuration and would refuse a wrong one', async () => {
  const { validateConfiguration } = require('app-builder-lib/out/util/config/config') as {
    validateConfiguration: (config: object, log: object) => Promise<void>;
  };
  const { DebugLogger } = require('builder-util') as { DebugLogger: new (enabled: boolean) => object };
  await validateConfiguration(packaging, new DebugLogger(false));
  await expect(validateConfiguration({ ...packaging, publisher: 'nobody' }, new DebugLogger(false))).rejects.toThrow();
});

test('there is an installer for each system, and designs open with it', () => {
  expect([packaging.linux.target, packaging.win.target, packaging.mac.target]).toEqual([['AppImage', 'deb'], ['nsis'], ['dmg']]);
  expect(packaging.fileAssociations.map(({ ext }) => ext)).toEqual(['gapwright']);
});

test('the packaged program cannot be turned into a plain Node or made to load other code', () => {
  expect(packaging.electronFuses).toMatchObject({
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    onlyLoadAppFromAsar: true,
    enableEmbeddedAsarIntegrityValidation: true,
    grantFileProtocolExtraPrivileges: false,
  });
});

test('what is packaged holds the start file, and the runtime is the one the types are of', () => {
  const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as { main: string; devDependencies: Record<string, string> };
  expect(packaging.files).toContain(`${path.posix.dirname(manifest.main)}/**`);
  expect(existsSync(manifest.main)).toBe(true);
  expect(packaging.electronVersion).toBe(manifest.devDependencies['electron']);
});

test('the program has an icon large enough for every system', () => {
  const png = readFileSync('assets/icon.png');
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1024, 1024]);
});

test('the licences of all that ships go with the program and beside it', () => {
  expect(packaging.extraFiles.map(({ from }) => from)).toEqual(['LICENSE', 'dist/renderer/licences.txt']);
  for (const { from } of packaging.extraFiles) expect(readFileSync(from, 'utf8')).toMatch(/copyright/i);
  expect(readFileSync('dist/renderer/licences.txt', 'utf8')).toBe(licences());
});

test('the same sources have the same version stamp, whatever the clock says, and one changed byte another', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'gapwright-version-'));
  try {
    for (const part of ['core', 'renderer', 'electron', 'assets', 'package.json', 'package-lock.json'])
      cpSync(part, path.join(folder, part), { recursive: true });
    utimesSync(path.join(folder, 'package.json'), 0, 0);
    const stamp = versionStamp();
    expect(stamp).toMatch(/^\d+\.\d+\.\d+\+[0-9a-f]{8}$/);
    expect(versionStamp(folder)).toBe(stamp);
    appendFileSync(path.join(folder, 'core/index.ts'), '\n');
    expect(versionStamp(folder)).not.toBe(stamp);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('what is built carries the stamp', () => {
  // Not toContain: that would print all of it.
  expect(readFileSync('dist/cli/main.cjs', 'utf8').includes(`"${versionStamp()}"`)).toBe(true);
});
