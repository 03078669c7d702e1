import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Host } from '../../electron/contract';
import { tabsDouble } from './tabs-double';

const json = (body: unknown, status = 200) =>
  new Response(JSON.stringify(body), { status, headers: { 'content-type': 'application/json' } });

let tabs: ReturnType<typeof tabsDouble>;

/** A new tab with the program in it. */
async function tabWith(fetcher: (url: string, init: RequestInit) => Promise<Response>): Promise<{ host: Host; close: () => void }> {
  const tab = tabs.newTab();
  vi.resetModules();
  vi.stubGlobal('fetch', fetcher);
  vi.stubGlobal('navigator', { locks: tab.locks });
  const { createBrowserHost } = await import('../../renderer/browser-host');
  return { host: createBrowserHost(), close: () => tab.close() };
}

beforeEach(() => {
  tabs = tabsDouble();
  vi.stubGlobal('localStorage', tabs.storage);
});
afterEach(() => vi.unstubAllGlobals());

describe('a page from the served host', () => {
  test('keeps its texts there and not in the browser', async () => {
    const asked: { url: string; args: unknown[] }[] = [];
    const { host } = await tabWith((url, init) => {
      asked.push({ url, ...(JSON.parse(init.body as string) as { args: unknown[] }) });
      return Promise.resolve(json({ value: url.endsWith('readSettings') ? '{"theme":"dark"}' : null }));
    });
    expect(await host.readSettings()).toBe('{"theme":"dark"}');
    await host.writeRecovery('text');
    await host.writeRecovery(null);
    const page: unknown = expect.stringMatching(/^[\w-]{36}$/);
    expect(asked).toEqual([
      { url: '/host/readSettings', args: [] },
      { url: '/host/writeRecovery', args: [page, 'text'] },
      { url: '/host/writeRecovery', args: [page, null] },
    ]);
    expect(asked[1]?.args[0]).toBe(asked[2]?.args[0]);
    expect(Object.keys(tabs.storage)).toEqual([]);
  });

  test('passes on why a text could not be kept', async () => {
    const { host } = await tabWith(() => Promise.resolve(json({ error: 'the disc is full' })));
    await expect(host.writeSettings('{}')).rejects.toThrow('the disc is full');
  });

  test('does not turn to the browser when the host has once answered and then does not', async () => {
    let answers = true;
    const { host } = await tabWith(() =>
      answers ? Promise.resolve(json({ value: null })) : Promise.reject(new Error('connection refused')),
    );
    await host.readRecovery();
    answers = false;
    await expect(host.writeRecovery('text')).rejects.toThrow('connection refused');
    expect(Object.keys(tabs.storage)).toEqual([]);
  });
});

describe('a page from the served host, and another beside it', () => {
  test('tells which pages are there, so that only the text of one that is gone is handed on', async () => {
    const present: unknown[] = [];
    const fetcher = (_url: string, init: RequestInit) => {
      present.push((JSON.parse(init.body as string) as { args: unknown[] }).args[1]);
      return Promise.resolve(json({ value: null }));
    };
    const first = await tabWith(fetcher);
    await first.host.readRecovery();
    await (await tabWith(fetcher)).host.readRecovery();
    first.close();
    await (await tabWith(fetcher)).host.readRecovery();
    const page: unknown = expect.any(String);
    expect(present).toEqual([[page], [page, page], [page, page]]);
  });
});

describe('a page from anywhere else', () => {
  test('keeps its texts in the browser and asks the server but once', async () => {
    const fetcher = vi.fn(() => Promise.resolve(new Response('Not found', { status: 404, headers: { 'content-type': 'text/html' } })));
    const { host } = await tabWith(fetcher);
    await host.writeRecovery('text');
    expect(await host.readRecovery()).toBe('text');
    await host.writeRecovery(null);
    expect(await host.readRecovery()).toBeNull();
    await host.writeSettings('{}');
    expect(await host.readSettings()).toBe('{}');
    expect(fetcher).toHaveBeenCalledTimes(1);
  });

  test('is offered the text of a tab that is gone, and not that of one that is there', async () => {
    const noHost = () => Promise.resolve(new Response('Not found', { status: 404, headers: { 'content-type': 'text/html' } }));
    const first = await tabWith(noHost);
    expect(await first.host.readRecovery()).toBeNull();
    await first.host.writeRecovery('work of the first');
    const second = await tabWith(noHost);
    expect(await second.host.readRecovery()).toBeNull();
    first.close();
    const third = await tabWith(noHost);
    expect(await third.host.readRecovery()).toBe('work of the first');
    const fourth = await tabWith(noHost);
    expect(await fourth.host.readRecovery()).toBeNull();
    await third.host.writeRecovery(null);
    third.close();
    expect(await (await tabWith(noHost)).host.readRecovery()).toBeNull();
  });
});
