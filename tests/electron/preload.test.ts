import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import vm from 'node:vm';
import { beforeEach, expect, test, vi } from 'vitest';
import { hostCalls, type WindowHost } from '../../electron/contract';

const built = path.resolve('dist/window/preload.cjs');

const invoke = vi.fn<(call: string, ...args: unknown[]) => Promise<unknown>>();
let host: WindowHost;
let required: string[];
let menuListeners: ((event: unknown, id: string) => void)[];

/** Runs the built file as a sandboxed preload runs: with `electron` to be had and nothing else. */
beforeEach(() => {
  invoke.mockReset();
  required = [];
  menuListeners = [];
  const exposed: Record<string, unknown> = {};
  const electron = {
    contextBridge: { exposeInMainWorld: (name: string, value: unknown) => void (exposed[name] = value) },
    ipcRenderer: {
      invoke,
      on: (_channel: string, listener: (typeof menuListeners)[number]) => menuListeners.push(listener),
      off: (_channel: string, listener: (typeof menuListeners)[number]) => (menuListeners = menuListeners.filter((l) => l !== listener)),
    },
  };
  const require = (name: string) => {
    required.push(name);
    if (name !== 'electron') throw new Error(`a sandboxed preload has no ${name}`);
    return electron;
  };
  vm.runInNewContext(readFileSync(built, 'utf8'), { require, exports: {}, module: { exports: {} }, Error });
  expect(Object.keys(exposed)).toEqual(['gapwrightHost']);
  host = exposed['gapwrightHost'] as WindowHost;
});

test('it needs electron and nothing else', () => {
  expect(required).toEqual(['electron']);
  expect(createRequire(import.meta.url).resolve(built)).toBe(built);
});

test('the page gets the calls of the contract, the menu event, and nothing else', () => {
  expect(Object.keys(host).sort()).toEqual([...Object.keys(hostCalls), 'onMenu'].sort());
});

test('a call goes out under its own name and its value comes back', async () => {
  invoke.mockResolvedValue({ value: 'kept' });
  expect(await host.readRecovery()).toBe('kept');
  await host.saveDesign('token', 'text');
  expect(invoke.mock.calls).toEqual([['readRecovery'], ['saveDesign', 'token', 'text']]);
});

test('a failure comes back as an error in the host’s own words', async () => {
  invoke.mockResolvedValue({ error: 'Could not write x.gapwright: the disk is full (ENOSPC).' });
  await expect(host.saveDesign('token', 'text')).rejects.toThrow(/^Could not write x\.gapwright: the disk is full \(ENOSPC\)\.$/);
});

test('a chosen menu entry reaches the listener until it is taken off', () => {
  const chosen = vi.fn();
  const off = host.onMenu(chosen);
  menuListeners[0]({}, 'save');
  off();
  expect(chosen.mock.calls).toEqual([['save']]);
  expect(menuListeners).toEqual([]);
});
