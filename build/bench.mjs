#!/usr/bin/env node
// npm run bench [-- START]: times every tests/bench/START*.bench.ts, whose default export is a list of { name, run, calls?, budgetMs?, against?, note? }.
// Each file has a process to itself: what one leaves behind is not the next one's. The tasks of a file are run by turns, so that whatever else the machine does weighs on all of them alike. `against` names a task of the
// same file, and the ratio of the two medians is printed; `calls` in a row are one run of something short; `note` says in words what came out. A budget that is missed is told, not punished.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { cpus } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';
import { makeFresh, root } from './fresh.mjs';

// The search on threads runs on the built command line's.
if (!makeFresh(['cli'], { quiet: true })) process.exit(1);

process.env.NODE_ENV = 'production';
const warmUpMs = 400;
const secondsPerTask = 1.5;
const folder = path.join(root, 'tests/bench');
mkdirSync(path.join(root, 'node_modules/.cache'), { recursive: true });
const temporary = mkdtempSync(path.join(root, 'node_modules/.cache/bench-'));

const start = process.argv[2] ?? '';
const files = readdirSync(folder).filter((name) => name.endsWith('.bench.ts') && name.startsWith(start));
try {
  if (!files.includes(start)) console.log(`Node ${process.versions.node}, ${cpus().length} × ${cpus()[0].model}`);
  if (files.length === 1) await print(files[0]);
  else for (const file of files) spawnSync(process.execPath, [fileURLToPath(import.meta.url), file], { stdio: 'inherit' });
} finally {
  rmSync(temporary, { recursive: true, force: true });
}
process.exit(); // a simulator's worker may still be waiting for work

async function print(file) {
  const tasks = await tasksOf(file);
  const rows = await measure(tasks);
  const width = Math.max(...tasks.map(({ name }) => name.length));
  console.log(`\n${file.replace('.bench.ts', '').padEnd(width)}    least ms  median ms    95 % ms   runs`);
  for (const { name, least, median, slow, runs, budgetMs, against, note } of rows) {
    const times = [least, median, slow].map((time) => time.toFixed(3).padStart(11));
    console.log(`${name.padEnd(width)}${times.join('')}${String(runs).padStart(7)}`);
    if (against)
      console.log(`  ${(median / rows.find((row) => row.name === against).median).toPrecision(3)} times as long as “${against}”`);
    if (note) console.log(`  ${await note()}`);
    if (median > budgetMs) console.log(`  over its budget of ${budgetMs} ms`);
  }
}

async function tasksOf(file) {
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

async function measure(tasks) {
  const timed = tasks.map((task) => ({ ...task, times: [] }));
  for (const { run } of timed) for (const end = performance.now() + warmUpMs; performance.now() < end; ) await run();
  const end = performance.now() + tasks.length * secondsPerTask * 1000;
  while (performance.now() < end || timed[0].times.length < 5)
    for (const { run, times, calls = 1 } of timed) {
      const began = performance.now();
      for (let call = 0; call < calls; call++) await run();
      times.push((performance.now() - began) / calls);
    }
  return timed.map(({ times, ...task }) => {
    times.sort((a, b) => a - b);
    return { ...task, runs: times.length, least: times[0], median: times[times.length >> 1], slow: times[Math.floor(times.length * 0.95)] };
  });
}
