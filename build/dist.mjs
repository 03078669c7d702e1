#!/usr/bin/env node
// npm run dist: an installer for this system, into release/.
import path from 'node:path';
import { electronRuntime } from './electron-runtime.mjs';
import { makeFresh, root } from './fresh.mjs';

const { missing } = electronRuntime();
if (missing) {
  console.error(`No installer can be made: the Electron runtime is part of it, but ${missing}.`);
  console.error('With a network connection, `npm run dist` fetches it and goes on. `npm start` works without it, in a browser.');
  process.exit(1);
}
if (!makeFresh(['renderer', 'window'])) process.exit(1);
const { build } = await import('electron-builder');
const made = await build({ projectDir: root, config: path.join(root, 'build/electron-builder.cjs'), publish: 'never' });
for (const file of made) console.log(path.relative(root, file));
