#!/usr/bin/env node
// Screenshots of every worksheet of the built app, light and dark, at two window sizes. Usage: node build/screenshots.mjs [FOLDER]
//   --readme   only the four small ones that README.md shows, into assets/
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';
import { runnerImport } from 'vite';
import { makeFresh, root } from './fresh.mjs';

const { values: option, positionals } = parseArgs({ options: { readme: { type: 'boolean' } }, allowPositionals: true });
const demo = /hill cabin/i;
const sizes = [
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
];
const forReadme = [
  { worksheet: 'Magnets and gap', mode: 'light' },
  { worksheet: 'Coils', mode: 'dark' },
  { worksheet: 'Wind match', mode: 'light' },
  { worksheet: 'Winding sheet', mode: 'light' },
];

if (!makeFresh(['renderer', 'served'])) process.exit(1);
const { module: own } = await runnerImport(path.join(root, 'tests/browser/chromium.ts'));
const { serve } = createRequire(import.meta.url)(path.join(root, 'dist/served/server.cjs'));
const data = mkdtempSync(path.join(tmpdir(), 'gapwright-data-'));
const host = await serve({ pages: path.join(root, 'dist/renderer'), data });
const browser = await chromium.launch({ executablePath: await own.chromiumPath(), args: own.chromiumArgs });
try {
  if (option.readme) await takeForReadme();
  else await takeAll(positionals[0] ?? path.join(root, 'dist/screenshots'));
} finally {
  await browser.close();
  await host.close();
  rmSync(data, { recursive: true, force: true });
}

async function takeAll(folder) {
  mkdirSync(folder, { recursive: true });
  for (const viewport of sizes)
    for (const mode of ['light', 'dark']) {
      const page = await pageWithDemo({ viewport, colorScheme: mode });
      for (const title of await titlesOf(page))
        await take(page, title, path.join(folder, `${fileOf(title)}-${mode}-${viewport.width}.png`));
      await page.close();
    }
}

async function takeForReadme() {
  for (const { worksheet, mode } of forReadme) {
    const page = await pageWithDemo({ viewport: sizes[0], colorScheme: mode, deviceScaleFactor: 0.75 });
    await take(page, worksheet, path.join(root, `assets/screenshot-${fileOf(worksheet)}.png`));
    await page.close();
  }
}

async function pageWithDemo(look) {
  const page = await browser.newPage({ ...look, reducedMotion: 'reduce', locale: 'en-US' });
  page.on('dialog', (dialog) => dialog.accept());
  await page.goto(host.address);
  await settled(page);
  await page.keyboard.press('Escape'); // what the first run asks
  await page.keyboard.press('Alt+D');
  await page.getByRole('dialog').getByRole('button', { name: demo }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  return page;
}

function titlesOf(page) {
  return page.getByRole('navigation', { name: 'Worksheets' }).getByRole('button').allInnerTexts();
}

async function take(page, title, file) {
  await page
    .getByRole('navigation', { name: 'Worksheets' })
    .getByRole('button', { name: new RegExp(`^${title}`) })
    .click();
  await settled(page);
  await page.waitForLoadState('networkidle');
  // Printed pages come when they are written and read back.
  for (const unready of [page.getByText('printing…'), page.locator('figure p:empty')]) await unready.waitFor({ state: 'detached' });
  await page.waitForTimeout(400); // a chart is drawn the frame after its code has come
  await page.screenshot({ path: file });
  console.log(path.relative(root, file));
}

function fileOf(title) {
  return title.toLowerCase().replaceAll(' ', '-');
}

function settled(page) {
  return page.locator('[data-testid="headline"][aria-busy="false"]').waitFor();
}
