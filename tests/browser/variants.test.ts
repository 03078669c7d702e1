import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { accessibilityFaults } from './app-page';
import { drivenApp } from './driving';

const { app, entry, goTo, settled, openDemo, downloaded, headlineVolts } = drivenApp();

test('two pinned variants stand side by side and in the charts, and using one is a step to undo', async () => {
  await openDemo(/cabin/i);
  await app.page.keyboard.press('Alt+P');
  await app.page.getByText(/^Pinned: A/).waitFor();
  const first = await headlineVolts();
  await goTo('Coils');
  await entry('Turns').fill('40');
  await settled();
  await app.page.keyboard.press('Alt+P');
  await app.page.getByText(/; B – turns 30 → 40/).waitFor();
  await entry('Turns').fill('50');
  await settled();

  await goTo('Wind match');
  await app.page.getByText('Shaft, B', { exact: true }).first().waitFor();

  await app.page.keyboard.press('Alt+V');
  const turns = app.page.getByRole('row', { name: /^Turns/ }).first();
  await turns.waitFor();
  expect(await turns.getByRole('cell').allInnerTexts()).toEqual([
    'Turns',
    '50',
    expect.stringMatching(/^30\s*−20$/),
    expect.stringMatching(/^40\s*−10$/),
  ]);
  expect(await accessibilityFaults(app.page)).toEqual([]);
  await app.page.getByRole('button', { name: /^Use A/ }).click();
  await settled();
  expect(await headlineVolts()).toBe(first);
  await app.page.getByRole('button', { name: /^Undo use of A/ }).click();
  await goTo('Coils');
  expect(await entry('Turns').inputValue()).toBe('50');
  expect(app.complaints).toEqual([]);
});

test('a chart goes out as SVG that stands alone and as PNG of twice the size', async () => {
  const chart = app.page.getByRole('region', { name: 'Field round one pole pair, pitch radius' });
  await chart.locator('.MuiLineElement-root, .MuiLineChart-line, path').first().waitFor();
  const svg = await downloaded(() => chart.getByRole('button', { name: /^SVG/ }).click());
  const text = readFileSync(await svg.path(), 'utf8');
  expect(text).toMatch(/^<svg xmlns/);
  for (const words of ['Field round one pole pair', 'Its fundamental', 'Electrical angle, °']) expect(text).toContain(words);
  expect(text).not.toContain('class=');
  const png = await downloaded(() => chart.getByRole('button', { name: /^PNG/ }).click());
  const bytes = readFileSync(await png.path());
  expect(bytes.subarray(1, 4).toString()).toBe('PNG');
  expect(bytes.readUInt32BE(16)).toBe(2 * Number(/width="(\d+)"/.exec(text)?.[1]));
  expect(app.complaints).toEqual([]);
});
