/**
 * The same app in a browser, for machines without the Electron runtime.
 *
 *   GET  /…            the built pages. `/?key=KEY`, the address printed at the start, also gives the browser its cookie.
 *   POST /host/<call>  body {"args": [...]}, reply {"value": …} or {"error": "words"}; for the calls of KeepingHost. Files are opened and saved
 *                      by the browser itself.
 *
 * Listens on 127.0.0.1 only. A request must name this server in its Host header, which a rebound name does not; a call must besides come from
 * a page of this server (Origin), as JSON, and with the cookie, which holds a key drawn anew at each start.
 */
import { randomBytes, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { answer, keepingParsers, largestDesign, type Reply } from '../calls';
import type { KeepingHost } from '../contract';
import { keptTexts } from '../kept-texts';
import { guardHeaders, plain, staticResponse, type StaticResponse } from '../static-response';
import { dataFolder } from './data-folder';
import { listenAtSamePort } from './same-port';

const servedCalls = Object.keys(keepingParsers) as (keyof KeepingHost)[];

export interface ServedHost {
  /** With its key: whoever has it can read and write the kept texts. */
  address: string;
  /** Whether a page last said that it holds work that is in no file. */
  hasUnsaved(): boolean;
  close(): Promise<void>;
}

interface Serving {
  /** Folder of the built renderer. */
  pages: string;
  /** Folder for recovery and settings; the user's application data when not given. */
  data?: string;
}

export async function serve({ pages, data = dataFolder() }: Serving): Promise<ServedHost> {
  const key = randomBytes(24).toString('base64url');
  const unsaved = new Set<string>();
  const host: KeepingHost = {
    ...keptTexts(data),
    setUnsaved: (page, value) => {
      if (value) unsaved.add(page);
      else unsaved.delete(page);
      return Promise.resolve();
    },
  };

  const server = createServer((request, response) => {
    const { port } = server.address() as AddressInfo;
    void respond(request, { pages, host, key, port })
      .catch(() => plain(500, 'The program could not answer.'))
      .then((reply) => send(request, response, reply));
  });
  await listenAtSamePort(server, data);
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/?key=${key}`,
    hasUnsaved: () => unsaved.size > 0,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

interface Standing {
  pages: string;
  host: KeepingHost;
  key: string;
  port: number;
}

async function respond(request: IncomingMessage, standing: Standing): Promise<StaticResponse> {
  const { port, key, pages } = standing;
  const named = request.headers.host ?? '';
  if (named !== `127.0.0.1:${port}`) return plain(403, `This program answers only at 127.0.0.1:${port}.`);
  if (!URL.canParse(request.url ?? '/', `http://${named}`)) return plain(400, 'This address cannot be read.');
  const { pathname, searchParams } = new URL(request.url ?? '/', `http://${named}`);
  if (request.method === 'POST') return respondToCall(request, pathname, standing);
  if (request.method !== 'GET' && request.method !== 'HEAD') return plain(405, 'Only pages are to be had here.');
  const reply = await staticResponse(pages, pathname);
  if (isSame(searchParams.get('key'), key)) {
    reply.headers['set-cookie'] = `${cookieName(port)}=${key}; HttpOnly; SameSite=Strict; Path=/`;
  }
  return reply;
}

async function respondToCall(request: IncomingMessage, pathname: string, { host, key, port }: Standing): Promise<StaticResponse> {
  const call = servedCalls.find((name) => pathname === `/host/${name}`);
  if (!call) return json(404, { error: 'There is no such call.' });
  if (request.headers.origin !== `http://${request.headers.host}`) return json(403, { error: 'This page may not ask that.' });
  if (!isSame(cookie(request, cookieName(port)), key)) {
    return json(403, { error: 'This page was not opened with the address that the program printed, so nothing is kept for it.' });
  }
  if (!request.headers['content-type']?.startsWith('application/json')) return json(415, { error: 'A call is JSON.' });
  const body = await bodyText(request, 4 * largestDesign);
  if (body === null) return json(413, { error: 'That is more than is kept.' });
  const args = callArguments(body);
  if (!args) return json(400, { error: 'A call is {"args": [...]}.' });
  return json(200, await answer(keepingParsers, host, call, args));
}

/** Cookies do not tell ports apart, so two hosts side by side need two names. */
const cookieName = (port: number) => `gapwright-${port}`;

function cookie(request: IncomingMessage, name: string): string | null {
  const pairs = (request.headers.cookie ?? '').split(/;\s*/).map((pair) => pair.split('=', 2));
  return pairs.find(([given]) => given === name)?.[1] ?? null;
}

function isSame(given: string | null, key: string): boolean {
  const [a, b] = [Buffer.from(given ?? ''), Buffer.from(key)];
  return a.length === b.length && timingSafeEqual(a, b);
}

async function bodyText(request: IncomingMessage, mostBytes: number): Promise<string | null> {
  const chunks: Buffer[] = [];
  let size = 0;
  // Left open on an early end, so that the refusal still gets out.
  const incoming = request.iterator({ destroyOnReturn: false }) as AsyncIterable<Buffer>;
  for await (const chunk of incoming) {
    size += chunk.length;
    if (size > mostBytes) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString('utf8');
}

function callArguments(body: string): unknown[] | null {
  try {
    const parsed: unknown = JSON.parse(body);
    const args = typeof parsed === 'object' && parsed !== null && 'args' in parsed ? parsed.args : null;
    return Array.isArray(args) ? (args as unknown[]) : null;
  } catch {
    return null;
  }
}

function json(status: number, reply: Reply): StaticResponse {
  const headers = { ...guardHeaders, 'content-type': 'application/json' };
  return { status, headers, body: new TextEncoder().encode(JSON.stringify(reply)) };
}

function send(request: IncomingMessage, response: ServerResponse, { status, headers, body }: StaticResponse): void {
  response.writeHead(status, { ...headers, 'content-length': body.byteLength, ...(request.complete ? {} : { connection: 'close' }) });
  response.end(request.method === 'HEAD' ? undefined : body);
}
