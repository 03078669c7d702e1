import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { _electron } from 'playwright-core';
import { expect, test } from 'vitest';
import { filesByDialog, journey } from '../browser/journey';

/** Only looked for, never fetched: a test does not change what is installed. */
function electronHere(): string | undefined {
  const folder = path.dirname(createRequire(import.meta.url).resolve('electron/package.json'));
  const named = path.join(folder, 'path.txt');
  const file = existsSync(named) ? path.join(folder, 'dist', readFileSync(named, 'utf8')) : '';
  return file && existsSync(file) ? file : undefined;
}

test('a builder’s way through the program in the real Electron', { timeout: 120_000 }, async ({ skip }) => {
  const executablePath = electronHere();
  if (!executablePath) return skip('the Electron runtime is not on this machine');
  if (process.platform === 'linux' && !process.env['DISPLAY'] && !process.env['WAYLAND_DISPLAY'])
    return skip('this machine has no display');
  const home = mkdtempSync(path.join(tmpdir(), 'gapwright-electron-'));
  const asRoot = process.platform === 'linux' && process.getuid?.() === 0;
  const electron = await _electron.launch({
    executablePath,
    args: [...(asRoot ? ['--no-sandbox'] : []), '.'],
    env: { ...(process.env as Record<string, string>), HOME: home, XDG_CONFIG_HOME: home, APPDATA: home },
  });
  try {
    const page = await electron.firstWindow();
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(String(error)));
    page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
    // Not the first run, which would ask what is in hand.
    const data = await electron.evaluate(({ app }) => app.getPath('userData'));
    mkdirSync(data, { recursive: true });
    writeFileSync(path.join(data, 'settings.json'), '{}');
    await page.reload();
    const answer = (file: string) =>
      electron.evaluate(({ dialog }, chosen) => {
        dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath: chosen });
        dialog.showOpenDialog = () => Promise.resolve({ canceled: false, filePaths: [chosen] });
      }, file);
    await journey({ page }, filesByDialog(home, answer));
    expect(complaints).toEqual([]);
  } finally {
    await electron.close();
    rmSync(home, { recursive: true, force: true });
  }
});
