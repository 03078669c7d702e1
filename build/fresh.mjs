// Whether dist/ is newer than what it is made of, and how to make it so.
import { spawnSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

const outputs = {
  renderer: ['renderer/index.html'],
  window: ['window/main.cjs', 'window/preload.cjs'],
  served: ['served/server.cjs'],
  cli: ['cli/main.cjs', 'cli/thread.cjs'],
};
const sources = {
  renderer: ['renderer', 'core', 'assets', 'electron/contract.ts'],
  window: ['electron'],
  served: ['electron'],
  cli: ['electron', 'core'],
};
const always = ['build', 'package-lock.json'];

/** Builds those of the named targets that are missing or older than their sources. False when a build failed. */
export function makeFresh(targets, { quiet = false } = {}) {
  const stale = targets.filter((target) => newest(sources[target].concat(always)) > oldest(outputs[target]));
  if (!stale.length) return true;
  const { status, stderr } = spawnSync(process.execPath, [path.join(root, 'build/build.mjs'), ...stale], {
    cwd: root,
    stdio: quiet ? ['ignore', 'ignore', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    encoding: 'utf8',
  });
  if (status !== 0 && quiet) process.stderr.write(stderr);
  return status === 0;
}

/** Time of the last change below the named places; a folder's own time tells of files that were taken away. */
function newest(places) {
  return Math.max(...places.map((place) => changed(path.join(root, place))));
}

function changed(place) {
  const info = statSync(place, { throwIfNoEntry: false });
  if (!info) return -Infinity;
  if (!info.isDirectory()) return info.mtimeMs;
  return Math.max(info.mtimeMs, ...readdirSync(place).map((name) => changed(path.join(place, name))));
}

function oldest(files) {
  return Math.min(...files.map((file) => statSync(path.join(root, 'dist', file), { throwIfNoEntry: false })?.mtimeMs ?? -Infinity));
}
