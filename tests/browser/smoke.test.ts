import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { accessibilityFaults, freshApp } from './app-page';

const app = freshApp();

const isShown = () => app.page.locator('#root > *').first().waitFor();

test('the page loads without a complaint and asks nothing of any other place', async () => {
  await isShown();
  await app.page.waitForLoadState('networkidle');
  expect(app.complaints).toEqual([]);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`a reader who needs aids can use the first page, ${colorScheme}`, async () => {
    await app.page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await isShown();
    await app.page.waitForLoadState('networkidle');
    expect(await accessibilityFaults(app.page)).toEqual([]);
  });
}

test('the key of the printed address lets the page keep its settings, and a page without it keeps nothing', async () => {
  await isShown();
  const ask = () =>
    app.page.evaluate(async () => {
      const reply = await fetch('/host/readSettings', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ args: [] }),
      });
      return { status: reply.status, body: (await reply.json()) as object };
    });
  expect(await ask()).toMatchObject({ status: 200 });
  await app.page.context().clearCookies();
  expect(await ask()).toMatchObject({ status: 403 });
});

test('a script that is not the program’s own does not run, and nothing can be fetched from elsewhere', async () => {
  await isShown();
  const ran = await app.page.evaluate(async () => {
    const script = document.createElement('script');
    script.textContent = 'window.ran = true';
    document.head.append(script);
    const fetched = await fetch('http://127.0.0.1:9/').then(
      () => true,
      () => false,
    );
    return { script: 'ran' in window, fetched };
  });
  expect(ran).toEqual({ script: false, fetched: false });
  expect(app.complaints.filter((words) => words.includes('Content Security Policy')).length).toBeGreaterThanOrEqual(2);
});

test('the icon that is packaged is its drawing', async () => {
  const made = path.join(mkdtempSync(path.join(tmpdir(), 'gapwright-icon-')), 'icon.png');
  expect(spawnSync(process.execPath, ['build/icon.mjs', made]).status).toBe(0);
  const [drawn, packaged] = [made, 'assets/icon.png'].map((file) => `data:image/png;base64,${readFileSync(file, 'base64')}`);
  rmSync(path.dirname(made), { recursive: true });
  const page = await app.page.context().newPage();
  const farthest = await page.evaluate(
    async (addresses) => {
      const levels = async (src = '') => {
        const image = Object.assign(new Image(), { src });
        await image.decode();
        const canvas = Object.assign(document.createElement('canvas'), { width: image.width, height: image.height }).getContext('2d')!;
        canvas.drawImage(image, 0, 0);
        return [...canvas.getImageData(0, 0, image.width, image.height).data];
      };
      const [one, other] = [await levels(addresses[0]), await levels(addresses[1])];
      return one.reduce((most, level, place) => Math.max(most, Math.abs(level - (other[place] ?? NaN))), one.length - other.length);
    },
    [drawn, packaged],
  );
  expect(farthest).toBeLessThanOrEqual(2); // of 255: another processor may round otherwise
});
