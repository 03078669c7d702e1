import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type Host, hostCalls } from '../../electron/contract';
import { electronDouble, type FrameDouble } from './electron-double';
import { hostArguments, hostilePath, keepingArguments, one, type Random, spoiled } from './hostile-requests';
import { seeded, size } from './size';

/** Every path that is given to the file system while the hosts are at work. */
const { touched, recording } = vi.hoisted(() => {
  const touched = new Set<string>();
  const two = ['rename', 'link', 'symlink', 'copyFile', 'cp'];
  const recorded =
    (name: string, act: (...args: unknown[]) => unknown) =>
    (...args: unknown[]) => {
      for (const given of args.slice(0, two.includes(name) ? 2 : 1)) if (typeof given === 'string') touched.add(given);
      return act(...args);
    };
  const recording = async (original: () => Promise<Record<string, unknown>>) =>
    Object.fromEntries(
      Object.entries(await original()).map(([name, value]) => [
        name,
        typeof value === 'function' && /^[a-z]/.test(name) ? recorded(name, value as () => unknown) : value,
      ]),
    );
  return { touched, recording };
});
vi.mock('node:fs', recording);
vi.mock('node:fs/promises', recording);

const requests = size(400, 10_000);
const time = 3_600_000;
/** Of processor time, since whatever else the machine does must not count; and of the clock, for an answer that never comes. [ms] */
const patience = { processor: 1000, clock: 30_000 };

let root: string;
const within = (...parts: string[]) => path.join(root, ...parts);

beforeEach(() => {
  root = mkdtempSync(path.join(tmpdir(), 'gapwright-hostile-'));
  for (const folder of ['outside', 'chosen', 'pages/assets']) mkdirSync(within(folder), { recursive: true });
  writeFileSync(within('outside/secret.txt'), 'secret');
  writeFileSync(within('chosen/plan.gapwright'), '{}');
  writeFileSync(within('pages/index.html'), 'page');
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
  vi.doUnmock('electron');
  vi.resetModules();
});

/** Whether the file system was asked about anything but these folders and files; what lies beside them must be as it was. */
function expectNothingElseTouched(allowed: string[]): void {
  const strange = [...touched].filter(
    (each) => !allowed.some((folder) => `${path.resolve(each)}${path.sep}`.startsWith(`${folder}${path.sep}`)),
  );
  expect(strange).toEqual([]);
  expect(touched.size).toBeGreaterThan(3);
  expect(readFileSync(within('outside/secret.txt'), 'utf8')).toBe('secret');
  expect(readdirSync(within('outside'))).toEqual(['secret.txt']);
  expect(readdirSync(within('pages')).sort()).toEqual(['assets', 'index.html']);
}

interface Counts {
  [outcome: string]: number;
}

/** Makes the requests one after another; tells what came of them and how long the slowest took. */
async function ask(what: string, act: (random: Random, n: number) => Promise<string>): Promise<Counts> {
  const counts: Counts = {};
  let slowest = 0;
  for (let n = 0; n < requests; n++) {
    const [start, before] = [performance.now(), process.cpuUsage()];
    const late = new Promise<never>((_, reject) => {
      const timer = setTimeout(() => reject(new Error(`${what} ${n} is not answered`)), patience.clock);
      timer.unref();
    });
    const outcome = await Promise.race([act(seeded(n), n), late]);
    const { user, system } = process.cpuUsage(before);
    expect((user + system) / 1000, `${what} ${n} held the program up`).toBeLessThan(patience.processor);
    slowest = Math.max(slowest, performance.now() - start);
    counts[outcome] = (counts[outcome] ?? 0) + 1;
  }
  console.log(`${requests} hostile ${what}, slowest ${slowest.toFixed(0)} ms:`, counts);
  return counts;
}

test(
  `${requests} hostile IPC calls: each gets a value or words, and no file but the chosen ones is touched`,
  { timeout: time },
  async () => {
    const electron = electronDouble();
    electron.state.paths['appData'] = within('app-data');
    vi.doMock('electron', () => electron.module);
    await import('../../electron/window/main');
    await electron.state.ready;
    const { mainFrame } = electron.windows[0].webContents;
    const strangers: (FrameDouble | null)[] = [null, { url: 'https://example.org/', parent: null }, { url: mainFrame.url, parent: mainFrame }, { url: 'app://bundle.example.org/', parent: null }]; // prettier-ignore
    electron.answers.open = { canceled: false, filePaths: [within('chosen/plan.gapwright')] };
    const tokens: string[] = [];
    touched.clear();

    const counts = await ask('IPC calls', async (random, n) => {
      electron.answers.save = {
        canceled: random() < 0.3,
        filePath: within('chosen', one(random, ['saved', 'saved.gapwright', 'out.pdf'])),
      };
      electron.answers.message = random() < 0.5 ? 1 : 0;
      const call = one(random, Object.keys(hostCalls) as (keyof Host)[]);
      const isStranger = random() < 0.15;
      const args = spoiled(hostArguments[call](random, tokens.slice(-5)), random);
      const reply = (await electron.invoke(call, isStranger ? one(random, strangers) : mainFrame, args)) as Record<string, unknown>;
      const told = `${n} ${call} ${JSON.stringify(reply).slice(0, 300)}`;
      expect(Object.keys(reply), told).toHaveLength(1);
      expect('value' in reply || (typeof reply['error'] === 'string' && reply['error'] !== ''), told).toBe(true);
      expect(told).not.toMatch(/secret|gapwright-hostile-/);
      if (isStranger) expect(reply).toEqual({ error: 'This page may not ask that.' });
      const { token } = (reply['value'] ?? {}) as { token?: string };
      if (token) tokens.push(token);
      return isStranger ? 'stranger refused' : 'error' in reply ? 'refused' : 'done';
    });
    expect(counts['done']).toBeGreaterThan(requests / 5);
    expect(counts['refused']).toBeGreaterThan(requests / 5);

    for (let n = 0; n < requests / 4; n++) {
      const random = seeded(n);
      const address = `${one(random, ['app://bundle', 'app://bundle', 'app://other', 'app://bundle:1'])}${hostilePath(random)}`;
      if (!URL.canParse(address)) continue;
      const { status } = await electron.fetch(address, one(random, ['GET', 'GET', 'POST', 'PUT', 'DELETE']));
      expect([200, 400, 403, 404], address).toContain(status);
    }
    expectNothingElseTouched([within('app-data/Gapwright'), within('chosen'), path.resolve('electron/renderer')]);
    expect(readdirSync(within('chosen')).filter((name) => !/^(plan|saved|out)\.?(backup)?[\w.]*$/.test(name))).toEqual([]);
  },
);

test(
  `${requests} hostile HTTP requests: each gets an answer, none a fault, and no file but the pages and kept texts is touched`,
  { timeout: time },
  async () => {
    const { serve } = await import('../../electron/served/server');
    const host = await serve({ pages: within('pages'), data: within('data') });
    const { port, pathname, search } = new URL(host.address);
    const opened = await sent(port, { path: pathname + search });
    const cookie = opened.cookie.split(';')[0] ?? '';
    touched.clear();
    try {
      const counts = await ask('HTTP requests', async (random, n) => {
        if (random() < 0.2) return rawly(port, garbled(random, port));
        const call = one(random, Object.keys(keepingArguments) as (keyof typeof keepingArguments)[]);
        const isCall = random() < 0.7;
        const args = spoiled(keepingArguments[call](random), random);
        const soundly = <T>(sound: T, ...other: T[]) => (random() < 0.9 ? sound : one(random, other));
        const answer = await sent(port, {
          path: isCall ? `/host/${soundly<string>(call, 'constructor', '__proto__', 'openDesign')}` : requestable(hostilePath(random)),
          method: isCall ? 'POST' : one(random, ['GET', 'HEAD', 'PUT', 'DELETE', 'OPTIONS', 'POST', 'TRACE']),
          headers: {
            host: soundly(`127.0.0.1:${port}`, 'example.org', '127.0.0.1', `localhost:${port}`, '[', 'a b'),
            origin: soundly(`http://127.0.0.1:${port}`, 'null', 'https://example.org', `http://127.0.0.1:${port}.example.org`),
            cookie: soundly(cookie, '', 'a=b; '.repeat(500), cookie.slice(0, -1), `${cookie}x`),
            'content-type': soundly('application/json', 'text/plain', 'application/jsonp'.repeat(50), ''),
          },
          body: isCall ? soundly(bodyOf(args), '{', '{"args":', 'null', '\u0000', '['.repeat(100_000), '{"args":{"length":2}}') : '',
        });
        expect([200, 400, 403, 404, 405, 413, 415], `request ${n}: ${answer.body.slice(0, 200)}`).toContain(answer.status);
        expect(answer.body).not.toMatch(/secret|gapwright-hostile-/);
        if (answer.policy === undefined) expect(answer.status).toBe(400); // the one that Node itself gives
        return String(answer.status);
      });
      expect(counts['200']).toBeGreaterThan(requests / 10);
      expect((await sent(port, { path: '/' })).body).toBe('page');
    } finally {
      await host.close();
    }
    expectNothingElseTouched([within('data'), within('pages')]);
    const strange = readdirSync(within('data')).filter((name) => !/^(settings\.json|recovery\.\d+\.[\w-]+\.gapwright|port)$/.test(name));
    expect(strange).toEqual([]);
  },
);

/** JSON as far as it goes; what has none is left out, as a page's own script would. */
function bodyOf(args: unknown[]): string {
  try {
    return JSON.stringify({ args });
  } catch {
    return '{"args":[{"self":"and so on"}]}';
  }
}

/** Node's own client lets nothing else out; what is worse goes out by `rawly`. */
const requestable = (target: string) => target.replace(/[^\u0021-\u007e]/g, '');

interface Sent {
  path: string;
  method?: string;
  headers?: Record<string, string>;
  body?: string;
}

function sent(port: string, { path: target, method = 'GET', headers = {}, body = '' }: Sent) {
  return new Promise<{ status: number; body: string; cookie: string; policy: unknown }>((resolve, reject) => {
    const outgoing = request({ host: '127.0.0.1', port, path: target, method, headers }, (incoming) => {
      let text = '';
      incoming.setEncoding('utf8').on('data', (chunk: string) => (text += chunk));
      incoming.on('error', reject).on('end', () =>
        resolve({
          status: incoming.statusCode ?? 0,
          body: text,
          cookie: String(incoming.headers['set-cookie'] ?? ''),
          policy: incoming.headers['content-security-policy'],
        }),
      );
    });
    outgoing.on('error', reject).end(body);
  });
}

/** Bytes that are no request, or only half of one. */
function garbled(random: Random, port: string): Buffer {
  const sound = `POST /host/writeSettings HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Length: 10\r\n\r\n{"args":[]}`;
  return one(random, [
    () => Buffer.from(sound.slice(0, random() * sound.length)),
    () =>
      Buffer.from(sound.replace('Length: 10', `Length: ${one(random, ['-1', '1e9', '99999999999999999999', '10\r\nContent-Length: 3'])}`)),
    () => Buffer.from(sound.replace('Content-Length: 10', 'Transfer-Encoding: chunked\r\nContent-Length: 4')),
    () => Buffer.from(`GET /${'a'.repeat(100_000)} HTTP/1.1\r\n\r\n`),
    () => Buffer.from(`GET / HTTP/1.1\r\n${'X: y\r\n'.repeat(3000)}\r\n`),
    () => Buffer.from(`GET ${one(random, ['http://example.org/', '*', '//[', '/%00', 'é'])} HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n\r\n`),
    () => Buffer.from(`CONNECT example.org:443 HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n\r\n`),
    () => Buffer.from(`GET / HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n\r\n`),
    () => Buffer.from(Array.from({ length: 200 }, () => random() * 256)),
  ])();
}

/** Sends bytes and nothing more; the server must end the connection by itself. */
function rawly(port: string, bytes: Buffer): Promise<string> {
  return new Promise((resolve) => {
    const socket = connect(Number(port), '127.0.0.1', () => socket.end(bytes));
    let text = '';
    socket.on('data', (chunk: Buffer) => (text += chunk.toString()));
    socket.on('error', () => undefined); // reset by the server: that is an end too
    socket.on('close', () => {
      expect(text).not.toMatch(/secret|HTTP\/1\.1 5/);
      resolve(`raw ${/^HTTP\/1\.1 (\d+)/.exec(text)?.[1] ?? 'closed'}`);
    });
  });
}
