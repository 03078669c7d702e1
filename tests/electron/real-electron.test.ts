import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';

/** Only looked for, never fetched: a test does not change what is installed. */
function electronHere(): string | undefined {
  const folder = path.dirname(createRequire(import.meta.url).resolve('electron/package.json'));
  const named = path.join(folder, 'path.txt');
  const file = existsSync(named) ? path.join(folder, 'dist', readFileSync(named, 'utf8')) : '';
  return file && existsSync(file) ? file : undefined;
}

test('the built app opens its window in the real Electron and stays up', { timeout: 30_000 }, async ({ skip }) => {
  const electron = electronHere();
  if (!electron) return skip('the Electron runtime is not on this machine');
  if (process.platform === 'linux' && !process.env['DISPLAY'] && !process.env['WAYLAND_DISPLAY'])
    return skip('this machine has no display');
  const home = mkdtempSync(path.join(tmpdir(), 'gapwright-electron-'));
  const asRoot = process.platform === 'linux' && process.getuid?.() === 0;
  const child = spawn(electron, [...(asRoot ? ['--no-sandbox'] : []), '--enable-logging', '.'], {
    env: { ...process.env, HOME: home, XDG_CONFIG_HOME: home, APPDATA: home },
  });
  let said = '';
  child.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  const state = await Promise.race([ended, new Promise((resolve) => setTimeout(() => resolve('up'), 8000))]);
  child.kill();
  await ended;
  rmSync(home, { recursive: true, force: true });
  expect(state).toBe('up');
  expect(said).not.toMatch(/Uncaught|Refused to|ERR_/);
});
