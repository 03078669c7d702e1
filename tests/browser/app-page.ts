import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, inject } from 'vitest';
import type { ServedHost } from '../../electron/served/server';
import { chromiumArgs } from './chromium';
import { servedApp } from './served-app';

export interface AppPage {
  page: Page;
  /** What the page complained of: console errors and warnings, uncaught exceptions, requests to anywhere else. */
  complaints: string[];
  host: ServedHost;
}

/**
 * One browser for the file; for each test a new host, a new data folder and a new profile, so that no test finds another's work.
 *
 * @param settings  As if the program had run before and kept these; without them it is the first run, and asks what is in hand.
 * @param prepare   Done to the page before it loads anything.
 */
export function freshApp({ settings, prepare }: { settings?: object; prepare?: (page: Page) => Promise<unknown> } = {}): AppPage {
  const app = {} as AppPage;
  let browser: Browser;
  let context: BrowserContext;
  let data: string;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: inject('chromiumPath'), args: chromiumArgs, headless: true });
  });
  afterAll(() => browser.close());
  beforeEach(async () => {
    data = mkdtempSync(path.join(tmpdir(), 'gapwright-data-'));
    if (settings) writeFileSync(path.join(data, 'settings.json'), JSON.stringify(settings));
    app.host = await servedApp(data);
    context = await browser.newContext({ locale: 'en-US', viewport: { width: 1400, height: 900 }, acceptDownloads: true });
    app.page = await context.newPage();
    app.complaints = complaintsOf(app.page, new URL(app.host.address).origin);
    await prepare?.(app.page);
    await app.page.goto(app.host.address);
  });
  afterEach(async () => {
    await context.close();
    await app.host.close();
    rmSync(data, { recursive: true, force: true });
  });
  return app;
}

function complaintsOf(page: Page, origin: string): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('request', (request) => {
    if (!/^(data|blob):/.test(request.url()) && new URL(request.url()).origin !== origin) complaints.push(`asked ${request.url()}`);
  });
  return complaints;
}

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds on the page as it stands, one line per rule; empty when nothing. */
export async function accessibilityFaults(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: typeof import('axe-core') };
    const { violations } = await axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa'] });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(' | ')}`);
  });
}
