#!/usr/bin/env node
// The version that sheets and windows carry: the package's, and after the + the start of a hash of all that the program is made of.
// No clock and no git in it: the same sources always have the same stamp. `node build/version.mjs` prints that of this tree.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { root } from './fresh.mjs';

const made = ['core', 'renderer', 'electron', 'assets', 'package.json', 'package-lock.json'];

export function versionStamp(folder = root) {
  const hash = createHash('sha256');
  for (const file of made.flatMap((place) => filesAt(folder, place)))
    hash.update(`${file}\0`).update(
      createHash('sha256')
        .update(readFileSync(path.join(folder, file)))
        .digest(),
    );
  const { version } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
  return `${version}+${hash.digest('hex').slice(0, 8)}`;
}

/** Paths with forward slashes, in one order on every system. */
function filesAt(folder, place) {
  if (/\.json$/.test(place)) return [place];
  return readdirSync(path.join(folder, place), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
    .sort((a, b) => (a < b ? -1 : 1));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.log(versionStamp());
