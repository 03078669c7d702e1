import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { type ElectronDouble, electronDouble } from '../electron/electron-double';
import { drivenApp } from './driving';
import { filesByDialog, journey } from './journey';

describe('served to a browser', () => {
  const { app, downloaded } = drivenApp();

  test('a builder’s way through the program', async () => {
    await journey(app, {
      saved: async (_name, act) => readFileSync(await (await downloaded(act)).path()),
      opened: async (name, buffer, act) => {
        const chooser = app.page.waitForEvent('filechooser');
        await act();
        await (await chooser).setFiles({ name, mimeType: 'application/json', buffer });
      },
    });
    expect(app.complaints).toEqual([]);
  });
});

/** The window's own main program and its built preload, with Electron's double between them and a real page. */
describe('in the window', () => {
  let electron: ElectronDouble;
  let folder: string;
  beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'gapwright-journey-'));
    electron = electronDouble();
    electron.state.paths['appData'] = folder;
    vi.doMock('electron', () => electron.module);
    await import('../../electron/window/main');
    await electron.state.ready;
    await electron.invoke('writeSettings', electron.windows[0].webContents.mainFrame, ['{}']); // not the first run
  });
  afterAll(() => {
    vi.doUnmock('electron');
    rmSync(folder, { recursive: true, force: true });
  });

  const { app } = drivenApp(async (page: Page) => {
    // Of what goes from page to main, the test's own bridge loses byte arrays alone.
    await page.exposeFunction('askMain', (call: string, args: (unknown[] | { bytes: number[] })[]) => {
      const whole = args.map((arg) => (arg !== null && typeof arg === 'object' && 'bytes' in arg ? new Uint8Array(arg.bytes) : arg));
      return electron.invoke(call, electron.windows[0].webContents.mainFrame, whole);
    });
    const flat = `(arg) => (arg instanceof Uint8Array ? { bytes: [...arg] } : arg)`;
    const parts = `{ contextBridge: { exposeInMainWorld: (name, value) => { window[name] = value; } },
      ipcRenderer: { invoke: (call, ...args) => window.askMain(call, args.map(${flat})), on() {}, off() {} } }`;
    await page.addInitScript(`((require, exports, module) => { ${readFileSync('dist/window/preload.cjs', 'utf8')}
})(() => (${parts}), {}, { exports: {} })`);
  });

  test('a builder’s way through the program', async () => {
    const answer = (file: string) => {
      electron.answers.save = { canceled: false, filePath: file };
      electron.answers.open = { canceled: false, filePaths: [file] };
    };
    await journey(app, filesByDialog(folder, answer));
    expect(app.complaints).toEqual([]);
  });
});
