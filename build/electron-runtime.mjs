// The Electron runtime is not part of the npm package: it is fetched once, when it can be.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

const fetchLimitSeconds = 180;

/** The path of Electron's executable, or in words why there is none. Fetches it when it is missing; always ends within the time limit. */
export function electronRuntime() {
  let folder;
  try {
    folder = path.dirname(createRequire(import.meta.url).resolve('electron/package.json'));
  } catch {
    return { missing: 'its package is not installed' };
  }
  const there = executable(folder);
  if (there) return { executable: there };
  console.log(`The Electron runtime is not here yet; fetching it (once, at most ${fetchLimitSeconds} s) …`);
  const { error, stderr } = spawnSync(process.execPath, [path.join(folder, 'install.js')], {
    timeout: fetchLimitSeconds * 1000,
    killSignal: 'SIGKILL',
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
  });
  const fetched = executable(folder);
  if (fetched) return { executable: fetched };
  if (error)
    return { missing: error.code === 'ETIMEDOUT' ? `it is not here and was not fetched within ${fetchLimitSeconds} s` : error.message };
  const told = /^\w*Error: (.*)$/m.exec(stderr)?.[1] ?? stderr.trim().split('\n')[0];
  return { missing: `it is not here and could not be fetched (${told || 'no reason given'})` };
}

/** Electron writes path.txt last, so a half-fetched runtime has none. */
function executable(folder) {
  const named = path.join(folder, 'path.txt');
  if (!existsSync(named)) return undefined;
  const file = path.join(folder, 'dist', readFileSync(named, 'utf8'));
  return existsSync(file) ? file : undefined;
}
