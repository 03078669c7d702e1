import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));
/** Only what starts processes and keeps files has a world of its own for each file: loading the rest anew for each would take as long as its tests. */
const node = (name: string, ...folders: string[]) => ({
  extends: true as const,
  test: { name, root, environment: 'node', isolate: name === 'electron', include: folders.map((f) => `tests/${f}/**/*.test.{ts,tsx}`) },
});

export default defineConfig({
  root,
  define: { GAPWRIGHT_VERSION: JSON.stringify('0.0.0+test') },
  test: {
    // A test waits for nothing but the processor, which may be busy with other things.
    testTimeout: 30_000,
    maxWorkers: 2,
    expect: { poll: { timeout: 15_000 } },
    projects: [
      node('core', 'core', 'laws', 'reference', 'golden', 'rules'),
      node('renderer', 'renderer'),
      node('electron', 'electron'),
      {
        extends: true,
        test: {
          name: 'browser',
          root,
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/global-setup.ts'],
          fileParallelism: false,
          // A real browser on a busy machine of two cores may lose a key press; a second failure is a fault.
          retry: 1,
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
