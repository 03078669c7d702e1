import type { CustomScheme, Protocol } from 'electron';
import { plain, staticResponse, type StaticResponse } from '../static-response';

/** Pages come from their own scheme: under file:// module scripts and workers are refused. */
export const bundleScheme: CustomScheme = {
  scheme: 'app',
  privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true },
};
export const bundleAddress = 'app://bundle/';

export function serveBundle(protocol: Pick<Protocol, 'handle'>, folder: string): void {
  protocol.handle(bundleScheme.scheme, async (request) => {
    const { host, pathname } = new URL(request.url);
    const allowed = host === 'bundle' && request.method === 'GET';
    return toResponse(allowed ? await staticResponse(folder, pathname) : plain(403, 'Only the program itself is to be had here.'));
  });
}

function toResponse({ status, headers, body }: StaticResponse): Response {
  return new Response(body as BodyInit, { status, headers });
}
