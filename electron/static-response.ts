import { readFile } from 'node:fs/promises';
import path from 'node:path';

/** `style-src 'unsafe-inline'` is there for Emotion, which puts its styles into the page; scripts get no such leave. */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "connect-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** What every reply of either host carries. */
export const guardHeaders = {
  'content-security-policy': contentSecurityPolicy,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-cache',
};

const contentTypes: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ttf': 'font/ttf',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

export interface StaticResponse {
  status: number;
  headers: Record<string, string>;
  body: Uint8Array;
}

/** Answers a GET for a file below `folder`; a path that leads out of it is refused. The window's own scheme and the served host share it. */
export async function staticResponse(folder: string, pathname: string): Promise<StaticResponse> {
  const root = path.resolve(folder);
  let wanted: string;
  try {
    wanted = decodeURIComponent(pathname);
  } catch {
    return plain(400, 'This address cannot be read.');
  }
  const file = path.join(root, wanted.endsWith('/') ? `${wanted}index.html` : wanted);
  if (!file.startsWith(root + path.sep)) return plain(403, 'This address leads out of the program.');
  try {
    const body = await readFile(file);
    const type = contentTypes[path.extname(file)] ?? 'application/octet-stream';
    return { status: 200, headers: { ...guardHeaders, 'content-type': type }, body };
  } catch {
    return plain(404, 'There is no such page.');
  }
}

export function plain(status: number, words: string): StaticResponse {
  return { status, headers: { ...guardHeaders, 'content-type': 'text/plain; charset=utf-8' }, body: new TextEncoder().encode(words) };
}
