import { expect, test } from 'vitest';
import { drivenApp } from './driving';

const { app, entry, goTo, settled, openDemo } = drivenApp();

const number = async (label: string) => Number(await entry(label).inputValue());

const labelOf = (label: string) =>
  app.page
    .locator('label')
    .filter({ hasText: new RegExp(`^${label}`) })
    .first();

/** Drags a label sideways by some pixels, as a hand does: in several moves. */
async function drag(label: string, pixels: number): Promise<void> {
  const box = await labelOf(label).boundingBox();
  if (!box) throw new Error(`no label ${label}`);
  const [x, y] = [box.x + 10, box.y + box.height / 2];
  await app.page.mouse.move(x, y);
  await app.page.mouse.down();
  await app.page.mouse.move(x + pixels, y, { steps: 5 });
  await app.page.mouse.up();
}

test('a length is taken in any unit, as a sum or a fraction, and shown in the user’s own', async () => {
  for (const [typed, shown] of [
    ['3/8 in', '9.525'],
    ['12+0.5', '12.5'],
    ['1.2cm', '12'],
    ['½', '½'],
  ]) {
    await entry('Thickness').fill(typed);
    await entry('Thickness').press('Tab');
    expect(await entry('Thickness').inputValue()).toBe(shown);
  }
  for (const [typed, told] of [
    ['thick', /is not a number\. It takes 0.5 mm to 300 mm\./],
    ['5 kg', /is not a unit for this; try mm, in, m, cm\. It takes/],
    ['', /A number is needed here\. It takes/],
  ] as const) {
    await entry('Thickness').fill(typed);
    await entry('Thickness').press('Tab');
    await app.page.getByRole('alert').getByText(told).waitFor();
    expect(await entry('Thickness').inputValue()).toBe(typed);
  }
  await goTo('Wire and fit');
  await entry('Conductor diameter').fill('14 AWG');
  await entry('Conductor diameter').press('Tab');
  expect(await number('Conductor diameter')).toBeCloseTo(0.0641 * 25.4, 2); // ASTM B258, from memory
});

test('arrow keys step a number, ten times as much with Shift and a tenth with Alt', async () => {
  await entry('Thickness').fill('12');
  for (const [keys, shown] of [
    ['ArrowUp', 13],
    ['Shift+ArrowUp', 23],
    ['Alt+ArrowDown', 22.9],
    ['ArrowDown', 21.9],
  ] as const) {
    await entry('Thickness').press(keys);
    expect(await number('Thickness')).toBe(shown);
  }
  expect(await app.page.getByRole('contentinfo').innerText()).toMatch(/From [\d.]+ mm to [\d.]+ mm/);
});

test('dragging a label steps its number, as one step to undo; clicking it still goes to the box', async () => {
  await openDemo(/cabin/i);
  await goTo('Coils');
  const before = await number('Turns');
  await drag('Turns', 40);
  expect(await number('Turns')).toBe(before + 10);
  await app.page.keyboard.down('Shift');
  await drag('Turns', -8);
  await app.page.keyboard.up('Shift');
  expect(await number('Turns')).toBe(before - 10);
  await settled();
  await app.page.getByRole('button', { name: `Undo turns ${before + 10} → ${before - 10}` }).click();
  await app.page.getByRole('button', { name: `Undo turns ${before} → ${before + 10}` }).click();
  expect(await number('Turns')).toBe(before);
  await labelOf('Turns').click();
  expect(await entry('Turns').evaluate((box) => box === document.activeElement)).toBe(true);
  expect(app.complaints).toEqual([]);
});

test('a complaint of two entries about each other speaks the user’s units', async () => {
  await app.page.keyboard.press('Alt+L');
  await goTo('Coils');
  await entry('Hole ends at').fill('2');
  await app.page
    .getByRole('main')
    .getByRole('status')
    .getByText(/radius of [\d.]+ in; received 2 in/)
    .waitFor();
});

test('numbers that are in no table are kept under a name, found again in another design and after a restart, and forgotten', async () => {
  await goTo('Wire and fit');
  await entry('Conductor diameter').fill('1.33');
  await app.page.getByRole('button', { name: 'Keep these numbers: Wire size' }).click();
  await entry('Keep them as').fill('from the shed');
  await entry('Keep them as').press('Enter');
  const size = app.page.getByRole('combobox', { name: 'Wire size' });
  await size.getByRole('option', { name: 'from the shed' }).waitFor({ state: 'attached' });
  app.page.on('dialog', (dialog) => void dialog.accept());
  await app.page.reload();
  await settled();
  await size.waitFor();
  if (await app.page.getByRole('button', { name: 'Discard it' }).isVisible())
    await app.page.getByRole('button', { name: 'Discard it' }).click();
  expect(await number('Conductor diameter')).toBe(1.6);
  await size.selectOption('from the shed');
  expect(await number('Conductor diameter')).toBe(1.33);
  await app.page.getByRole('button', { name: 'Forget “from the shed”' }).click();
  expect(await size.getByRole('option', { name: 'from the shed' }).count()).toBe(0);
  expect(app.complaints).toEqual([]);
});

test('a radius is dragged in the drawing in steps of a tenth of a millimetre, as one step to undo', async () => {
  await openDemo(/cabin/i);
  await goTo('Coils');
  const handle = await app.page.locator('[data-handle="winding.layout.holeOuterRadius"]').boundingBox();
  if (!handle) throw new Error('no handle');
  const [x, y] = [handle.x + handle.width / 2, handle.y + handle.height / 2];
  await app.page.mouse.move(x, y);
  await app.page.mouse.down();
  await app.page.mouse.move(x + 9, y, { steps: 4 });
  await app.page.mouse.up();
  await settled();
  const after = await number('Hole ends at');
  expect(after).toBeGreaterThan(150);
  expect(after * 10).toBeCloseTo(Math.round(after * 10), 6);
  await app.page.getByRole('button', { name: `Undo hole ends at 150 mm → ${after} mm` }).click();
  expect(await number('Hole ends at')).toBe(150);
  expect(app.complaints).toEqual([]);
});

test('a gaussmeter reading becomes the remanence, as one step to undo; one that no magnet gives is refused', async () => {
  const before = await number('Remanence at 20 °C');
  await app.page.getByRole('button', { name: 'Remanence from a gaussmeter…' }).click();
  const tool = app.page.getByRole('region', { name: 'Gaussmeter' });
  await entry('Reading').fill('3000 G');
  await entry('Sensor from the pole face').fill('0.2');
  await tool.getByText(/at 20 °C/).waitFor();
  await entry('Reading').fill('2');
  await tool.getByText(/No magnet of this shape/).waitFor();
  expect(await tool.getByRole('button', { name: 'Take it over' }).isDisabled()).toBe(true);
  await entry('Reading').fill('0.32');
  await tool.getByRole('button', { name: 'Take it over' }).click();
  await settled();
  const taken = await number('Remanence at 20 °C');
  expect(taken).not.toBe(before);
  await app.page.getByRole('button', { name: /^Undo remanence from a reading/ }).click();
  expect(await number('Remanence at 20 °C')).toBe(before);
  expect(app.complaints).toEqual([]);
});

test('a section that may be left out is added and taken out where it belongs, and undone', async () => {
  for (const [worksheet, section, first] of [
    ['Battery and controller', 'Charge controller', 'Greatest input voltage'],
    ['Winding sheet', 'Hub and bolts known', 'Shaft hole'],
  ] as const) {
    await goTo(worksheet);
    const box = app.page.getByRole('checkbox', { name: section });
    await box.check();
    await entry(first).waitFor();
    await app.page.keyboard.press('Control+z');
    await entry(first).waitFor({ state: 'detached' });
    expect(await box.isChecked()).toBe(false);
  }
});

test('a first design that cannot be is refused beside the answer it comes from, and what helps does help', async () => {
  await app.page.getByRole('button', { name: 'File' }).click();
  await app.page.getByRole('menuitem', { name: 'New from what you have' }).click();
  const dialog = app.page.getByRole('dialog', { name: 'What have you got?' });
  const refused = (question: string) => dialog.getByLabel(question).and(app.page.locator('[aria-invalid="true"]')).waitFor();
  const workOut = () => dialog.getByRole('button', { name: 'Work out a first design' }).click();
  await dialog.getByRole('textbox', { name: 'Length along the radius' }).fill('40');
  await dialog.getByRole('textbox', { name: 'Width round the disc' }).fill('20');
  await dialog.getByLabel('Wire size').selectOption({ label: '2.5 mm, grade 2' });
  await workOut();
  await refused('Wire size');
  await dialog.getByText(/turns of this wire are needed in a coil, and \d+ go in/).waitFor();
  await dialog.getByLabel('Wire size').selectOption({ label: '1.4 mm, grade 2' });
  await workOut();
  await refused('Wheel diameter');
  const told = await dialog.getByText(/^The coils would reach/).innerText();
  const wheel = /or a wheel of ([\d.]+) m or less/.exec(told)?.[1];
  await dialog.getByRole('textbox', { name: 'Wheel diameter' }).fill(String(wheel));
  await workOut();
  await dialog.waitFor({ state: 'detached' });
  await settled();
  expect(await entry('Title of the design').inputValue()).toBe(`First design, ${wheel} m wheel, 24 V`);
  expect(app.complaints).toEqual([]);
});
