import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import type * as server from '../../electron/served/server';

/** The host and the pages as built, which is what a user gets. */
export function servedApp(data: string): Promise<server.ServedHost> {
  const pages = path.resolve('dist/renderer');
  if (!existsSync(path.join(pages, 'index.html'))) throw new Error('dist/ holds no app: run `npm run build` first');
  const { serve } = createRequire(import.meta.url)(path.resolve('dist/served/server.cjs')) as typeof server;
  return serve({ pages, data });
}
