import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { TestProject } from 'vitest/node';
import { chromiumPath } from './chromium';
import { servedApp } from './served-app';

declare module 'vitest' {
  interface ProvidedContext {
    chromiumPath: string;
    /** The built app, served by the real host with a data folder of its own. For a test that keeps nothing; `freshApp` is for the others. */
    baseUrl: string;
  }
}

export default async function setup(project: TestProject) {
  project.provide('chromiumPath', await chromiumPath());
  const data = mkdtempSync(path.join(tmpdir(), 'gapwright-data-'));
  const app = await servedApp(data);
  project.provide('baseUrl', app.address);
  return async () => {
    await app.close();
    rmSync(data, { recursive: true, force: true });
  };
}
