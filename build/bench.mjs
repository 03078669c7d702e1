#!/usr/bin/env node
// npm run bench: times every tests/bench/*.bench.ts. Such a file's default export is a list of
// { name, run, budgetMs?, against? }; `against` names a task of the same run, and the ratio of the two medians is printed.
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { root } from './fresh.mjs';

process.env.NODE_ENV = 'production';
const secondsEach = 1;
const folder = path.join(root, 'tests/bench');
const files = readdirSync(folder).filter((name) => name.endsWith('.bench.ts'));
mkdirSync(path.join(root, 'node_modules/.cache'), { recursive: true });
const temporary = mkdtempSync(path.join(root, 'node_modules/.cache/bench-'));

try {
  const rows = [];
  for (const file of files) for (const task of await tasks(file)) rows.push(await measure(task));
  const width = Math.max(4, ...rows.map((row) => row.name.length));
  console.log(`${'task'.padEnd(width)}  median ms   95 % ms    runs  budget ms`);
  const medians = new Map(rows.map(({ name, median }) => [name, median]));
  for (const { name, median, slow, runs, budgetMs, against } of rows) {
    const verdict = budgetMs === undefined ? '' : `${String(budgetMs).padStart(9)}${median > budgetMs ? '  OVER' : ''}`;
    console.log(
      `${name.padEnd(width)}${median.toFixed(3).padStart(11)}${slow.toFixed(3).padStart(10)}${String(runs).padStart(8)}  ${verdict}`,
    );
    if (against) console.log(`  ${(median / medians.get(against)).toFixed(0)} times as long as “${against}”`);
    if (median > budgetMs) process.exitCode = 1;
  }
} finally {
  rmSync(temporary, { recursive: true, force: true });
}

async function tasks(file) {
  const name = file.replace(/\.ts$/, '');
  await build({
    configFile: false,
    root,
    logLevel: 'warn',
    build: {
      ssr: path.join(folder, file),
      outDir: temporary,
      emptyOutDir: false,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: `${name}.mjs` } },
    },
  });
  return (await import(pathToFileURL(path.join(temporary, `${name}.mjs`)).href)).default;
}

async function measure({ name, run, budgetMs, against }) {
  await run();
  const times = [];
  const end = performance.now() + secondsEach * 1000;
  while (performance.now() < end || times.length < 3) {
    const began = performance.now();
    await run();
    times.push(performance.now() - began);
  }
  times.sort((a, b) => a - b);
  return { name, budgetMs, against, runs: times.length, median: times[times.length >> 1], slow: times[Math.floor(times.length * 0.95)] };
}
