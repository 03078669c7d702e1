import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { startedHost } from './started-host';

/** Each test starts processes of its own, on a machine that may be busy. */
vi.setConfig({ testTimeout: 60_000 });

let home: string;
let running: ChildProcess | undefined;

beforeEach(() => {
  home = mkdtempSync(path.join(tmpdir(), 'gapwright-start-'));
});
afterEach(() => {
  running?.kill('SIGKILL');
  rmSync(home, { recursive: true, force: true });
});

function started(args: string[], env: Record<string, string> = {}) {
  const { child, told } = startedHost(home, args, env);
  running = child;
  return told;
}

test('--no-open prints the address, and the page answers there', async () => {
  const { address } = await started(['--no-open']);
  expect(new URL(address).hostname).toBe('127.0.0.1');
  const page = await fetch(address);
  expect(page.status).toBe(200);
  expect(await page.text()).toContain('<title>Gapwright</title>');
  const script = /src="\.\/(assets\/[^"]+\.js)"/.exec(readFileSync('dist/renderer/index.html', 'utf8'))![1];
  expect((await fetch(new URL(`/${script}`, address))).status).toBe(200);
});

test.runIf(process.platform === 'linux')('without a display it goes straight to the browser’s host and says why in one line', async () => {
  const { said, address } = await started([], { DISPLAY: '', WAYLAND_DISPLAY: '' });
  expect(said.split('\n')[0]).toBe('Serving to a browser on this machine (this machine has no display).');
  expect((await fetch(address)).status).toBe(200);
});

test('a host that is killed has lost nothing that the page gave it', async () => {
  const keep = async (address: string, call: string, ...args: unknown[]) => {
    const cookie = (await fetch(address)).headers.get('set-cookie')!.split(';')[0];
    const { origin } = new URL(address);
    const reply = await fetch(`${origin}/host/${call}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin, cookie },
      body: JSON.stringify({ args }),
    });
    return (await reply.json()) as unknown;
  };
  const first = await started(['--no-open']);
  expect(await keep(first.address, 'writeRecovery', 'page', 'half a design')).toEqual({ value: null });
  running!.kill('SIGKILL');
  const second = await started(['--no-open']);
  expect(await keep(second.address, 'readRecovery', 'another', [])).toEqual({ value: 'half a design' });
});

test('asked to stop, it stops at once and says what happens to unsaved work', async () => {
  const { address } = await started(['--no-open']);
  await fetch(address);
  const ended = new Promise((resolve) => running!.once('exit', resolve));
  running!.kill('SIGINT');
  expect(await ended).toBe(0);
});
