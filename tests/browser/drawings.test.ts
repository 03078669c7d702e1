import { expect, test } from 'vitest';
import { drivenApp } from './driving';

const { app, goTo, openDemo } = drivenApp();

test('a drawing is magnified, moved and shown whole by mouse and keys, and tells what is under the pointer and how long it is', async () => {
  await openDemo(/cabin/i);
  const plate = app.page.getByRole('region', { name: 'Section along the pitch circle' });
  const drawing = plate.getByRole('img');
  const view = async () => ((await drawing.getAttribute('viewBox')) ?? '').split(' ').map(Number) as [number, number, number, number];
  const whole = await view();
  await plate.getByRole('button', { name: /larger$/ }).click();
  const [left, , shown] = await view();
  expect(shown).toBeLessThan(whole[2]);
  const box = (await drawing.boundingBox())!;
  await app.page.mouse.move(box.x + box.width - 20, box.y + 20);
  await app.page.mouse.down();
  await app.page.mouse.move(box.x + box.width - 120, box.y + 20, { steps: 4 });
  await app.page.mouse.up();
  expect((await view())[0]).toBeGreaterThan(left);
  await plate.getByRole('group').press('0');
  expect(await view()).toEqual(whole);
  await plate.getByRole('group').press('+');
  await plate.getByRole('group').press('ArrowLeft');
  expect((await view())[0]).toBeLessThan(left);
  await plate.getByRole('button', { name: /show all$/ }).click();
  expect(await view()).toEqual(whole);

  const names = (await plate.locator('.named title').allTextContents()).join('; ');
  for (const name of ['magnet N, 10 thick', 'coil 1A, leg 22 wide, 11 thick', 'steel disc 8']) expect(names).toContain(name);
  await goTo('Coils');
  const coil = app.page.getByRole('region', { name: 'Plan, seen from above' }).locator('.named', { hasText: 'coil 4A' });
  const line = coil.locator('path').first();
  const [x, y] = await line.evaluate((path: SVGPathElement) => {
    const at = path.getPointAtLength(0).matrixTransform(path.getScreenCTM()!);
    return [at.x, at.y] as const;
  });
  const width = () => line.evaluate((path) => getComputedStyle(path).strokeWidth);
  const before = await width();
  await app.page.mouse.move(x, y);
  await expect.poll(width).not.toBe(before);
  expect(app.complaints).toEqual([]);
});

test('a chart reads out its numbers at the pointer and gives them all to the clipboard', async () => {
  await app.page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  const chart = app.page.getByRole('region', { name: 'Field round one pole pair, pitch radius' });
  const plot = chart.getByRole('group');
  await plot.locator('path').first().waitFor();
  await plot.scrollIntoViewIfNeeded();
  const box = (await plot.boundingBox())!;
  await app.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  const tip = app.page.getByRole('tooltip');
  await tip.getByText('Its fundamental').waitFor();
  expect(await tip.innerText()).toMatch(/^Electrical angle 1\d\d\.\d°\s+Field\s+−0\.\d+ T\s+Its fundamental\s+−0\.\d+ T$/);
  await chart.getByRole('button', { name: /^CSV/ }).click();
  await chart.getByRole('button', { name: /^Copied/ }).waitFor();
  const [head, ...rows] = (await app.page.evaluate(() => navigator.clipboard.readText())).trim().split(/\r?\n/);
  expect(head).toMatch(/Electrical angle.*Field.*Its fundamental/);
  expect(rows.length).toBeGreaterThan(50);
  for (const row of rows) for (const cell of row.split(',')) expect(Number.isFinite(Number(cell))).toBe(true);
  expect(app.complaints).toEqual([]);
});
