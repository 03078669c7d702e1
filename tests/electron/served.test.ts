import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { dataFolder } from '../../electron/served/data-folder';
import { serve, type ServedHost } from '../../electron/served/server';

let folder: string;
let host: ServedHost;

beforeEach(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'gapwright-served-'));
  mkdirSync(path.join(folder, 'pages', 'assets'), { recursive: true });
  writeFileSync(path.join(folder, 'pages', 'index.html'), '<p>the page</p>');
  writeFileSync(path.join(folder, 'pages', 'assets', 'app.js'), 'export {};');
  writeFileSync(path.join(folder, 'secret.txt'), 'secret');
  host = await serve({ pages: path.join(folder, 'pages'), data: path.join(folder, 'data') });
});
afterEach(async () => {
  await host.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Answer {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: string;
}

/** Plain HTTP, so that paths and headers go out exactly as written. */
function ask(
  target: string,
  { method = 'GET', headers = {}, body }: { method?: string; headers?: Record<string, string>; body?: string } = {},
) {
  const { hostname, port } = new URL(host.address);
  return new Promise<Answer>((resolve, reject) => {
    const outgoing = request({ hostname, port, path: target, method, headers }, (incoming) => {
      let text = '';
      incoming.setEncoding('utf8');
      incoming.on('data', (chunk: string) => (text += chunk));
      incoming.on('end', () => resolve({ status: incoming.statusCode!, headers: incoming.headers, body: text }));
    });
    outgoing.on('error', reject);
    outgoing.end(body);
  });
}

const origin = () => new URL(host.address).origin;
const cookie = async () => {
  const { pathname, search } = new URL(host.address);
  return String((await ask(pathname + search)).headers['set-cookie']).split(';')[0];
};
const callWith = async (call: string, args: unknown[], headers: Record<string, string> = {}) =>
  ask(`/host/${call}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: origin(), cookie: await cookie(), ...headers },
    body: JSON.stringify({ args }),
  });
const call = async (name: string, ...args: unknown[]) => JSON.parse((await callWith(name, args)).body) as unknown;

test('it listens on this machine only, at a port of the system’s choosing', () => {
  expect(host.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\?key=[\w-]{32}$/);
});

test('two hosts have different keys and do not take each other’s cookie', async () => {
  const other = await serve({ pages: path.join(folder, 'pages'), data: path.join(folder, 'data') });
  try {
    expect(new URL(other.address).searchParams.get('key')).not.toBe(new URL(host.address).searchParams.get('key'));
    expect((await cookie()).split('=')[0]).toBe(`gapwright-${new URL(host.address).port}`);
  } finally {
    await other.close();
  }
});

test('the pages come with their type, the content policy and the other guards', async () => {
  const page = await ask('/');
  expect(page).toMatchObject({ status: 200, body: '<p>the page</p>' });
  expect(page.headers).toMatchObject({
    'content-type': 'text/html; charset=utf-8',
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
  });
  const policy = String(page.headers['content-security-policy']);
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("script-src 'self';");
  expect(policy).not.toContain('unsafe-eval');
  expect((await ask('/assets/app.js')).headers['content-type']).toBe('text/javascript; charset=utf-8');
  expect((await ask('/nothing.js')).status).toBe(404);
  expect(await ask('/', { method: 'HEAD' })).toMatchObject({ status: 200, body: '' });
  expect((await ask('/', { method: 'PUT' })).status).toBe(405);
});

test('the printed address gives the browser a cookie that scripts and other sites cannot use; another key gives none', async () => {
  const { pathname, search } = new URL(host.address);
  expect(String((await ask(pathname + search)).headers['set-cookie'])).toMatch(/; HttpOnly; SameSite=Strict; Path=\/$/);
  expect((await ask('/')).headers['set-cookie']).toBeUndefined();
  expect((await ask('/?key=wrong')).headers['set-cookie']).toBeUndefined();
});

test('a request that names another host is refused, so that a rebound name gets nothing', async () => {
  const { port } = new URL(host.address);
  for (const name of ['example.org', `example.org:${port}`, '127.0.0.1', '127.0.0.1:1', `127.0.0.1.example.org:${port}`]) {
    expect((await ask('/', { headers: { host: name } })).status, name).toBe(403);
  }
  // Another origin to the browser, where a page would not see the pages of this one.
  expect((await ask('/', { headers: { host: `localhost:${port}` } })).status).toBe(403);
});

test('no path leads out of the pages', async () => {
  const outward = [
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e%2fsecret.txt',
    '/assets/..%2f..%2fsecret.txt',
    '/%00',
    '/%',
    '//',
  ];
  for (const target of outward) {
    const { status, body } = await ask(target);
    expect([400, 403, 404], target).toContain(status);
    expect(body, target).not.toContain('secret');
  }
  const piece = fc.constantFrom('..', '.', '%2e', '%2E%2e', '%2f', '/', '\\', '%5c', 'assets', 'secret.txt', '%00', '%c0%ae');
  await fc.assert(
    fc.asyncProperty(fc.array(piece, { maxLength: 8 }), async (pieces) => {
      expect((await ask(`/${pieces.join('')}`)).body).not.toContain('secret');
    }),
    { numRuns: 150, seed: 7 },
  );
});

test('what the page keeps is there again after the host was killed', async () => {
  expect(await call('readRecovery', 'page', [])).toEqual({ value: null });
  expect(await call('writeRecovery', 'page', 'half a design, 3 µΩ')).toEqual({ value: null });
  expect(await call('writeSettings', '{"units":"inch"}')).toEqual({ value: null });
  await host.close();
  host = await serve({ pages: path.join(folder, 'pages'), data: path.join(folder, 'data') });
  expect(await call('readRecovery', 'page', [])).toEqual({ value: 'half a design, 3 µΩ' });
  expect(await call('readSettings')).toEqual({ value: '{"units":"inch"}' });
  await call('writeRecovery', 'page', null);
  expect(await call('readRecovery', 'page', [])).toEqual({ value: null });
  expect(readdirSync(path.join(folder, 'data'))).toEqual(['port', 'settings.json']);
});

test('a later start listens where the one before did, so that a browser takes it for the same program', async () => {
  const before = host.address;
  const start = () => serve({ pages: path.join(folder, 'pages'), data: path.join(folder, 'data') });
  const beside = await start();
  expect(new URL(beside.address).port).not.toBe(new URL(before).port);
  await beside.close();
  await host.close();
  host = await start();
  expect(new URL(host.address).port).toBe(new URL(beside.address).port);
  expect(new URL(host.address).search).not.toBe(new URL(beside.address).search);
  for (const kept of ['', '-1', '80', '1e9', 'nonsense', '65536']) {
    await host.close();
    writeFileSync(path.join(folder, 'data', 'port'), kept);
    host = await start();
    expect(Number(new URL(host.address).port)).toBeGreaterThanOrEqual(1024);
  }
});

test('the host knows whether the page holds unsaved work', async () => {
  expect(host.hasUnsaved()).toBe(false);
  await call('setUnsaved', 'page', true);
  expect(host.hasUnsaved()).toBe(true);
});

test('a call without the cookie, from another page, or not as JSON does nothing', async () => {
  const write = (headers: Record<string, string>) => callWith('writeRecovery', ['page', 'stolen'], headers);
  expect((await write({ cookie: '' })).status).toBe(403);
  expect((await write({ cookie: (await cookie()).replace(/.$/, '') })).status).toBe(403);
  expect((await write({ origin: 'https://example.org' })).status).toBe(403);
  expect((await write({ origin: 'null' })).status).toBe(403);
  expect((await write({ 'content-type': 'text/plain' })).status).toBe(415);
  expect(await call('readRecovery', 'page', [])).toEqual({ value: null });
});

test('a call that is not served here, or not well put, is an error in words', async () => {
  expect((await callWith('openDesign', [])).status).toBe(404);
  expect((await callWith('constructor', [])).status).toBe(404);
  expect(await call('writeRecovery', 'page', 5)).toEqual({ error: 'text must be text; received number' });
  expect(await call('setUnsaved', 'page', true, 1)).toEqual({ error: 'expected 2 arguments; received 3' });
  const raw = async (body: string) =>
    ask('/host/writeRecovery', {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: origin(), cookie: await cookie() },
      body,
    });
  for (const body of ['', '{', '[]', 'null', '{"args":{}}']) expect((await raw(body)).status, body).toBe(400);
});

test('more than is kept is refused, and what was kept before stays', async () => {
  await call('writeRecovery', 'page', 'kept');
  expect(await call('writeRecovery', 'page', 'x'.repeat(10_000_001))).toMatchObject({
    error: expect.stringContaining('at most') as string,
  });
  expect((await callWith('writeRecovery', ['page', 'x'.repeat(41_000_000)])).status).toBe(413);
  expect(await call('readRecovery', 'page', [])).toEqual({ value: 'kept' });
});

test('a data folder that cannot be made is an error the page gets', async () => {
  writeFileSync(path.join(folder, 'file'), '');
  const stuck = await serve({ pages: path.join(folder, 'pages'), data: path.join(folder, 'file', 'data') });
  const before = host;
  host = stuck;
  try {
    expect(await call('writeRecovery', 'page', 'x')).toEqual({ error: expect.any(String) as string });
  } finally {
    host = before;
    await stuck.close();
  }
});

test('work is kept where each system keeps a user’s application data', () => {
  expect(dataFolder('linux', {}, '/home/a')).toBe('/home/a/.config/Gapwright');
  expect(dataFolder('linux', { XDG_CONFIG_HOME: '/elsewhere' }, '/home/a')).toBe('/elsewhere/Gapwright');
  expect(dataFolder('darwin', {}, '/Users/a')).toBe('/Users/a/Library/Application Support/Gapwright');
  expect(dataFolder('win32', { APPDATA: '/roaming' }, '/home/a')).toBe('/roaming/Gapwright');
});
