import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { drivenApp } from './driving';

const { app, goTo, settled } = drivenApp();

test('a bench reading is judged as soon as it is entered', async () => {
  await goTo('Bench');
  await app.page.getByRole('button', { name: 'Add a reading' }).click();
  const expected = await app.page
    .getByRole('row', { name: /^One coil/ })
    .getByRole('cell')
    .nth(3)
    .innerText();
  const volts = Number.parseFloat(expected);
  await app.page.getByRole('textbox', { name: 'Speed rpm of reading 1' }).fill('150');
  await app.page.getByRole('textbox', { name: 'Read V of reading 1' }).fill(String(volts));
  await app.page.getByText('as it should be').waitFor();
  await app.page.getByRole('textbox', { name: 'Read V of reading 1' }).fill(String(volts / 2));
  await app.page.getByText('not as planned').waitFor();
});

test('readings pasted with one coil open name that coil, and one step takes them out again', async () => {
  await goTo('Bench');
  await app.page.getByRole('button', { name: 'Paste readings…' }).click();
  const rows = Array.from({ length: 9 }, (_, k) => `coil;${k + 1};20;${k === 3 ? 'OL' : '0,028'}`);
  await app.page
    .getByRole('textbox', { name: 'Readings as text' })
    .fill(['on;number;temperature C;ohms', ...rows, 'coil;x;20;1'].join('\n'));
  await app.page.getByText('Line 11, number: must be a number').waitFor();
  await app.page.getByRole('button', { name: 'Take 9 readings' }).click();
  await app.page
    .getByRole('list', { name: /likeliest first/ })
    .getByText('coil 4 is open')
    .waitFor();
  await app.page.keyboard.press('Control+Z');
  await app.page.getByRole('textbox', { name: 'Note of reading 2' }).waitFor({ state: 'detached' });
});

test('a published machine’s sound runs are made the plan, and its tilted rotor shows as 1.4 % less', async () => {
  // What was read and the author’s conclusion: tests/reference/machines/kohler-2021.source.md.
  const file = readFileSync(new URL('../reference/machines/kohler-2021.gapwright', import.meta.url));
  const chooser = app.page.waitForEvent('filechooser');
  await app.page.keyboard.press('Control+O');
  await (await chooser).setFiles({ name: 'kohler-2021.gapwright', mimeType: 'application/json', buffer: file });
  await app.page.getByText('kohler-2021.gapwright').waitFor();
  await settled();
  await goTo('Bench');
  const field = app.page.getByRole('region', { name: 'The measured machine' }).getByRole('definition');
  await field.getByText(/^108\.1 % \(108\.0 % to 108\.3 %\)$/).waitFor();
  await app.page.getByRole('button', { name: 'Use the measured machine' }).click();
  await field.getByText(/^100\.0 % /).waitFor();

  const tilted = [28.065, 28.011, 27.965, 27.953, 27.973];
  await app.page.getByRole('button', { name: 'Paste readings…' }).click();
  await app.page
    .getByRole('textbox', { name: 'Readings as text' })
    .fill(['note,on,number,hertz,volts,meter', ...tilted.map((volts, i) => `tilted ${i + 1},line,1,31,${volts},rms`)].join('\n'));
  await app.page.getByRole('button', { name: 'Take 5 readings' }).click();
  const offs = app.page.getByRole('row', { name: /tilted/ });
  await offs
    .nth(4)
    .getByText(/^−1\.4 %$/)
    .waitFor();
  const read = await offs.getByText(/^[−+]\d\.\d %$/).allInnerTexts();
  const percent = read.map((text) => Number(text.replace('−', '-').replace(' %', '')));
  expect(percent.reduce((a, b) => a + b, 0) / percent.length).toBeCloseTo(-1.4, 1);
  expect(app.complaints).toEqual([]);
});
