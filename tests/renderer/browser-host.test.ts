import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { Host } from '../../electron/contract';

const json = (body: unknown, status = 200) =>
  new Response(JSON.stringify(body), { status, headers: { 'content-type': 'application/json' } });

let store: Map<string, string>;
let host: Host;

async function hostWith(fetcher: (url: string, init: RequestInit) => Promise<Response>): Promise<void> {
  vi.resetModules();
  vi.stubGlobal('fetch', fetcher);
  const { createBrowserHost } = await import('../../renderer/browser-host');
  host = createBrowserHost();
}

beforeEach(() => {
  store = new Map();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, value: string) => void store.set(key, value),
    removeItem: (key: string) => void store.delete(key),
  });
});

describe('a page from the served host', () => {
  test('keeps its texts there and not in the browser', async () => {
    const asked: string[] = [];
    await hostWith((url, init) => {
      asked.push(`${url} ${init.body as string}`);
      return Promise.resolve(json({ value: url.endsWith('readSettings') ? '{"theme":"dark"}' : null }));
    });
    expect(await host.readSettings()).toBe('{"theme":"dark"}');
    await host.writeRecovery('text');
    await host.writeRecovery(null);
    expect(asked).toEqual([
      '/host/readSettings {"args":[]}',
      '/host/writeRecovery {"args":["text"]}',
      '/host/writeRecovery {"args":[null]}',
    ]);
    expect(store.size).toBe(0);
  });

  test('passes on why a text could not be kept', async () => {
    await hostWith(() => Promise.resolve(json({ error: 'the disc is full' })));
    await expect(host.writeSettings('{}')).rejects.toThrow('the disc is full');
  });

  test('does not turn to the browser when the host has once answered and then does not', async () => {
    let answers = true;
    await hostWith(() => (answers ? Promise.resolve(json({ value: null })) : Promise.reject(new Error('connection refused'))));
    await host.readRecovery();
    answers = false;
    await expect(host.writeRecovery('text')).rejects.toThrow('connection refused');
    expect(store.size).toBe(0);
  });
});

describe('a page from anywhere else', () => {
  test('keeps its texts in the browser and asks the server but once', async () => {
    const fetcher = vi.fn(() => Promise.resolve(new Response('Not found', { status: 404, headers: { 'content-type': 'text/html' } })));
    await hostWith(fetcher);
    await host.writeRecovery('text');
    expect(await host.readRecovery()).toBe('text');
    await host.writeRecovery(null);
    expect(await host.readRecovery()).toBeNull();
    await host.writeSettings('{}');
    expect(await host.readSettings()).toBe('{}');
    expect(fetcher).toHaveBeenCalledTimes(1);
  });
});
