import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { freshApp } from './app-page';
import { textOf } from './pdf-text';

const app = freshApp({
  prepare: (page) => page.addInitScript(() => Object.defineProperty(window, 'showSaveFilePicker', { value: undefined })),
});

/** What has the focus: its accessible name as far as labels and words give it, and whether it shows. */
function focused(): Promise<{ name: string; isVisible: boolean }> {
  return app.page.evaluate(() => {
    const element = document.activeElement as HTMLElement & { labels?: NodeListOf<HTMLElement> };
    const label = element.getAttribute('aria-label') ?? element.labels?.[0]?.innerText ?? element.innerText;
    const box = element.getBoundingClientRect();
    const looks = [element, element.parentElement, element.closest('.MuiInputBase-root')].map((e) => e && getComputedStyle(e).outlineStyle);
    return { name: label.trim(), isVisible: box.width > 0 && box.height > 0 && looks.some((look) => look && look !== 'none') };
  });
}

/** Presses Tab until something of that name has the focus; every stop on the way must show that it has. */
async function tabTo(name: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  const passed: string[] = [];
  for (let stops = 0; stops < 150; stops++) {
    await app.page.keyboard.press(key);
    const at = await focused();
    expect([at.name, at.isVisible]).toEqual([at.name, true]);
    if (name.test(at.name)) return;
    passed.push(at.name);
  }
  throw new Error(`${key} never came to ${name}: ${passed.join(' | ')}`);
}

const settled = () => app.page.getByTestId('headline').and(app.page.locator('[aria-busy="false"]')).waitFor();

test('from nothing to a printed sheet without a mouse', async () => {
  const { page, complaints } = app;
  await page.getByRole('dialog', { name: 'What have you got?' }).waitFor();
  await tabTo(/^How many/);
  await page.keyboard.press('Control+A');
  await page.keyboard.type('32');
  await tabTo(/^Work out a first design/);
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'detached', timeout: 60_000 });
  await settled();

  await tabTo(/^Coils/);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Coils' }).waitFor();
  await tabTo(/^Turns/);
  const turns = Number(await page.evaluate(() => (document.activeElement as HTMLInputElement).value));
  await page.keyboard.press('ArrowUp');
  await settled();
  await page.keyboard.press('Control+Z');
  await page.keyboard.press('Control+Shift+Z');
  await settled();

  // A result opens its working, and Escape goes back to it.
  await tabTo(/^Mean turn/);
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').getByText('Source', { exact: true }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  expect((await focused()).name).toMatch(/^Mean turn/);

  await tabTo(/^File/, 'Shift+Tab');
  await page.keyboard.press('Enter');
  await page.getByRole('menu').waitFor();
  for (let i = 0; i < 12 && !/^Winding sheet/.test((await focused()).name); i++) await page.keyboard.press('ArrowDown');
  const download = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  const text = await textOf(readFileSync(await (await download).path()));
  expect(text).toContain('First design');
  expect(text).toContain(String(turns + 1));
  expect(complaints).toEqual([]);
});
