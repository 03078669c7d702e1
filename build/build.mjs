#!/usr/bin/env node
// Builds the app into dist/. Usage: node build/build.mjs [renderer] [window] [served] [cli]   (all of them when none is named)
import { existsSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { versionStamp } from './version.mjs';

// Under a test runner this may be 'test', and React would come in its development build.
process.env.NODE_ENV = 'production';

const root = fileURLToPath(new URL('..', import.meta.url));
const at = (...parts) => path.join(root, ...parts);
const logLevel = 'warn';

/** Built aside and moved into place, so that whoever runs dist/ meanwhile meets the old one or the new one, never half of one. */
async function aside(target, work) {
  const temporary = at('dist', `.${target}-${process.pid}`);
  try {
    await work(temporary);
    replaceFolder(temporary, at('dist', target));
  } finally {
    rmSync(temporary, { recursive: true, force: true });
  }
}

function replaceFolder(made, target) {
  rmSync(target, { recursive: true, force: true });
  try {
    renameSync(made, target);
  } catch (error) {
    if (!existsSync(target)) throw error; // otherwise another build of the same sources was quicker
  }
}

/** What the page may have to load before the first worksheet shows; charts and the PDF writer come later. */
const firstLoadLimit = 450; // kB, gzipped

function renderer() {
  return aside('renderer', async (outDir) => {
    const { output } = await build({ configFile: at('build/vite.config.ts'), logLevel, build: { outDir } });
    const size = firstLoad(output);
    const words = `first load of scripts: ${size.toFixed(1)} kB gz, ${firstLoadLimit} kB allowed`;
    if (size > firstLoadLimit) throw new Error(words);
    console.log(words);
  });
}

/** The entry, all it imports at once, and the solver's worker. [kB gz] */
function firstLoad(output) {
  const wanted = new Set(output.filter((part) => part.isEntry || /solver\.worker/.test(part.fileName)));
  for (const { imports = [] } of wanted) for (const name of imports) wanted.add(output.find((part) => part.fileName === name));
  return [...wanted].reduce((sum, part) => sum + kilobytes(part.code ?? part.source), 0);
}

const kilobytes = (bytes) => gzipSync(bytes).length / 1000;

const bundles = (target, ...names) =>
  aside(target, async (outDir) => {
    for (const name of names) await bundle(at('electron', target, `${name}.ts`), outDir, name);
  });

/** One self-contained CommonJS file for Node or Electron. */
function bundle(entry, outDir, name) {
  return build({
    configFile: false,
    root,
    logLevel,
    define: { GAPWRIGHT_VERSION: JSON.stringify(versionStamp()) },
    build: {
      ssr: entry,
      outDir,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      rolldownOptions: { external: ['electron', /^node:/], output: { format: 'cjs', entryFileNames: `${name}.cjs`, codeSplitting: false } },
    },
    ssr: { noExternal: true },
  });
}

const targets = {
  renderer,
  window: () => bundles('window', 'main', 'preload'),
  served: () => bundles('served', 'server'),
  cli: () => bundles('cli', 'main', 'thread'),
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in targets));
if (unknown.length) {
  console.error(`build: there is no ${unknown.join(', ')}; there are ${Object.keys(targets).join(', ')}`);
  process.exit(1);
}
const names = asked.length ? asked : Object.keys(targets);
try {
  for (const name of names) await targets[name]();
} catch (error) {
  console.error(error.message); // the bundler's message shows the place; its stack is only its own
  process.exit(1);
}
for (const name of names) printSizes(name);

function printSizes(target) {
  const rows = readdirSync(at('dist', target), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(js|cjs|css|html)$/.test(entry.name))
    .map((entry) => path.join(entry.parentPath, entry.name))
    .map((file) => ({ file: path.relative(root, file), size: kilobytes(readFileSync(file)) }))
    .sort((a, b) => b.size - a.size);
  for (const { file, size } of rows) console.log(`${size.toFixed(1).padStart(8)} kB gz  ${file}`);
}
