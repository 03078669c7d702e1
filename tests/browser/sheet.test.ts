import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { pageTexts } from './pdf-text';
import { drivenApp } from './driving';

const { app, downloaded, goTo, openDemo } = drivenApp();

/** Share of the shown picture's points that are not white. */
const inked = () =>
  app.page.locator('figure canvas').evaluate((canvas: HTMLCanvasElement) => {
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
    let dark = 0;
    for (let i = 0; i < data.length; i += 4) if (data[i] + data[i + 1] + data[i + 2] < 600) dark++;
    return dark / (data.length / 4);
  });

test('the preview shows, page by page, the very file that is saved', async () => {
  await openDemo(/cabin/i);
  await goTo('Winding sheet');
  await app.page.getByText(/^page 1 of \d+$/).waitFor();
  const sheet = await downloaded(() => app.page.keyboard.press('Control+P'));
  const printed = await pageTexts(readFileSync(await sheet.path()));
  for (const [i, words] of printed.slice(0, 3).entries()) {
    await app.page.getByText(`page ${i + 1} of ${printed.length}`, { exact: true }).waitFor();
    const shown = app.page.getByRole('figure', { name: `Page ${i + 1}`, exact: true });
    await expect.poll(() => shown.locator('p').textContent()).toBe(words);
    if (i === 0) expect(await inked()).toBeGreaterThan(0.002);
    await app.page.getByRole('button', { name: 'Page after' }).click();
  }
  await app.page.getByRole('combobox', { name: 'Document' }).selectOption('templates');
  await app.page.getByRole('figure').getByText('natural size: must measure 100 mm').waitFor({ state: 'attached' });

  // Documents that overtake one another leave the last.
  const paper = app.page.getByRole('combobox', { name: 'Paper' });
  for (const size of ['letter', 'a4', 'letter']) await paper.selectOption(size);
  const ratio = () => app.page.locator('figure canvas').evaluate((canvas: HTMLCanvasElement) => canvas.height / canvas.width);
  await app.page.getByRole('combobox', { name: 'Document' }).selectOption('sheet');
  await expect.poll(ratio).toBeCloseTo(11 / 8.5, 2);
  await expect.poll(() => app.page.getByRole('figure').locator('p').textContent()).toContain('What to wind');
  expect(app.complaints).toEqual([]);
});

test('parts and tables are saved under their names', async () => {
  await openDemo(/cabin/i);
  await goTo('Winding sheet');
  const saved = async (name: string) => {
    const file = await downloaded(() => app.page.getByRole('button', { name, exact: true }).click());
    return { name: file.suggestedFilename(), text: readFileSync(await file.path(), 'utf8') };
  };
  const hub = app.page.getByRole('region', { name: 'What the parts must fit' });
  expect(await app.page.getByText('Drill template').count()).toBe(0);
  await hub.getByRole('checkbox').check();
  await hub.getByRole('textbox').first().waitFor();
  await app.page.getByText('Drill template').waitFor();
  const disc = await saved('Save disc as DXF');
  expect(disc.name).toMatch(/disc\.dxf$/);
  expect(disc.text).toContain('LWPOLYLINE');
  const svg = await saved('Save winding mould as SVG');
  expect(svg.name).toMatch(/winding-mould\.svg$/);
  expect(svg.text).toMatch(/^<svg [^>]*width="[\d.]+mm"/m);
  const coils = await saved('Save coil table as CSV');
  expect(coils.text.trim().split('\r\n')).toHaveLength(1 + 9);
  expect(app.complaints).toEqual([]);
});
