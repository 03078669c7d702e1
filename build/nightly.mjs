#!/usr/bin/env node
// npm run nightly [-- PART]: the tests that grow with the time given to them, at full size: hostile files and requests, saves and hosts killed.
// `npm test` runs the same ones at a size of seconds. PART, as in `hostile`, picks those whose file name holds it.
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { makeFresh, root } from './fresh.mjs';

// Some of them drive what is built.
if (!makeFresh(['renderer', 'window', 'served', 'cli'])) process.exit(1);

const tests = readdirSync(path.join(root, 'tests'), { recursive: true })
  .map((name) => path.posix.join('tests', name.split(path.sep).join('/')))
  .filter((file) => file.endsWith('.test.ts') && readFileSync(path.join(root, file), 'utf8').includes("/size'"))
  .filter((file) => file.includes(process.argv[2] ?? ''));

const { status } = spawnSync(
  process.execPath,
  ['node_modules/vitest/vitest.mjs', 'run', '--config', 'build/vitest.config.ts', '--fileParallelism=false', ...tests],
  { cwd: root, stdio: 'inherit', env: { ...process.env, GAPWRIGHT_NIGHTLY: '1' } },
);
process.exitCode = status ?? 1;
