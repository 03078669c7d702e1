import type { ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { blankDesign, parseDesign } from '../../core';
import { seeded, size } from '../electron/size';
import { startedHost } from '../electron/started-host';
import { chromiumArgs } from './chromium';

const kills = size(2, 50);
/** How old the work may be that is offered again. [ms] */
const oldest = 5000;

let browser: Browser;
let home: string;
let host: ChildProcess;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: inject('chromiumPath'), args: chromiumArgs, headless: true });
  home = mkdtempSync(path.join(tmpdir(), 'gapwright-killed-'));
  mkdirSync(path.join(home, 'Gapwright'));
  writeFileSync(path.join(home, 'Gapwright/settings.json'), '{}');
});
afterAll(async () => {
  host.kill('SIGKILL');
  await browser.close();
  rmSync(home, { recursive: true, force: true });
});

const turnsOf = (page: Page) => page.getByRole('textbox', { name: 'Turns', exact: true });

async function openCoils(page: Page): Promise<void> {
  await page.getByRole('navigation', { name: 'Worksheets' }).getByRole('button', { name: 'Coils' }).click();
  await turnsOf(page).waitFor();
}

async function newHost(): Promise<string> {
  const { child, told } = startedHost(home, ['--no-open']);
  host = child;
  return (await told).address;
}

/** Ends what shows the pages, as the system does when memory runs out. */
async function killTab(): Promise<void> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  for (const { id, type } of processInfo) if (type === 'renderer') process.kill(id, 'SIGKILL');
  await session.detach();
}

/** Edits on and on until the time is up; the numbers of turns that were on screen, and since when. */
async function edits(page: Page, first: number, until: number): Promise<{ turns: number; at: number }[]> {
  const made: { turns: number; at: number }[] = [];
  for (let turns = first; performance.now() < until; turns++) {
    await turnsOf(page).fill(String(turns));
    made.push({ turns, at: performance.now() });
    await page.waitForTimeout(100);
  }
  return made;
}

test(
  `host and tab killed ${kills} times during edits: the work offered again is whole and at most ${oldest / 1000} s old`,
  { timeout: 3_600_000, retry: 0 },
  async () => {
    const random = seeded(50);
    const ages: number[] = [];
    let address = await newHost();
    let left = await browser.newContext({ locale: 'en-US' });
    let page = await left.newPage();
    await page.goto(address);
    for (let kill = 0; kill < kills; kill++) {
      await openCoils(page);
      const made = await edits(page, 30 + kill, performance.now() + oldest + random() * 4000);
      if (kill % 2 === 0) host.kill('SIGKILL');
      else await killTab();
      const killed = performance.now();
      if (kill % 2 === 0) address = await newHost();

      const context = await browser.newContext({ locale: 'en-US' });
      page = await context.newPage();
      await page.goto(address);
      // The page that lost its host still stands, and keeps what it has.
      if (kill % 2 === 0) expect(await turnsOf(left.pages()[0]).inputValue()).toBe(String(made.at(-1)?.turns));
      await left.close();
      left = context;

      const offer = page.getByRole('button', { name: 'Take it up again' });
      await offer.waitFor();
      const kept = readdirSync(path.join(home, 'Gapwright')).filter((name) => name.startsWith('recovery.'));
      expect(kept, `kill ${kill}`).toHaveLength(1);
      const design = parseDesign(readFileSync(path.join(home, 'Gapwright', kept[0] ?? ''), 'utf8'));
      await offer.click();
      await openCoils(page);
      const turns = Number(await turnsOf(page).inputValue());
      const next = made.findIndex((edit) => edit.turns === turns) + 1;
      expect(next, `${turns} turns were never on screen`).toBeGreaterThan(0);
      ages.push(Math.max(0, killed - (made[next]?.at ?? killed)));
      const then = blankDesign();
      expect(design).toEqual({ ok: true, design: { ...then, winding: { ...then.winding, turns } } });
    }
    ages.sort((a, b) => a - b);
    console.log(
      `${kills} kills, of host and tab by turns: the work offered was ${((ages[kills >> 1] ?? 0) / 1000).toFixed(1)} s old in the middle, ` +
        `${((ages.at(-1) ?? 0) / 1000).toFixed(1)} s at most`,
    );
    expect(ages).toHaveLength(kills);
    expect(ages.at(-1)).toBeLessThan(oldest);
  },
);
