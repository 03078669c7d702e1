#!/usr/bin/env node
// The program's icon as a picture, from assets/icon.svg; the packager makes each system's own formats of it. Usage: node build/icon.mjs [FILE]
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { runnerImport } from 'vite';
import { root } from './fresh.mjs';

const side = 1024; // px, the largest that any system asks for
const { module: own } = await runnerImport(path.join(root, 'tests/browser/chromium.ts'));
const browser = await chromium.launch({ executablePath: await own.chromiumPath(), args: own.chromiumArgs });
try {
  const page = await browser.newPage({ viewport: { width: side, height: side } });
  await page.setContent(`<style>body { margin: 0 }</style>${readFileSync(path.join(root, 'assets/icon.svg'), 'utf8')}`);
  await page.screenshot({ path: process.argv[2] ?? path.join(root, 'assets/icon.png'), omitBackground: true });
} finally {
  await browser.close();
}
