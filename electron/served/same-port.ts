import { mkdir, readFile } from 'node:fs/promises';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { writeWhole } from '../whole-file';

/**
 * Listens on 127.0.0.1 at the port of last time when it is free. To a browser another port is another program, and what the user let the one open the
 * other may not.
 */
export async function listenAtSamePort(server: Server, folder: string): Promise<void> {
  const kept = path.join(folder, 'port');
  const before = portFrom(await readFile(kept, 'utf8').catch(() => ''));
  await listening(server, before).catch(() => listening(server, 0));
  const { port } = server.address() as AddressInfo;
  if (port === before) return;
  // Losing this loses a convenience, and must not stop the program.
  await mkdir(folder, { recursive: true, mode: 0o700 })
    .then(() => writeWhole(kept, String(port)))
    .catch(() => undefined);
}

/** 0, any free one, where the text is no port that a program may take. */
function portFrom(text: string): number {
  const port = Number(text);
  return Number.isInteger(port) && port >= 1024 && port <= 65535 ? port : 0;
}

function listening(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      resolve();
    });
  });
}
