import { expect, test } from 'vitest';
import { drivenApp } from './driving';

const { app, entry, goTo, settled, openDemo, downloaded } = drivenApp();
const region = (name: string) => app.page.getByRole('region', { name, exact: true });

test('Wind match tells the operating points, what happens over the wind, and what would lift the year’s energy', async () => {
  await openDemo(/cabin/i);
  await goTo('Wind match');
  const points = region('Operating points');
  expect(await points.getByRole('row').nth(1).innerText()).toMatch(/^39\d\.\d rpm\s+4\.\d+\s+Stable\./);
  expect(await points.getByRole('listitem').allInnerTexts()).toEqual(expect.arrayContaining([expect.stringMatching(/ it charges\.$/)]));
  const year = region('What would lift the year’s energy');
  await year.getByText(/^One turn more: [+−]/).waitFor();
  await year.getByText(/^One per cent more volts: [+−]/).waitFor();
  await app.page.getByRole('button', { name: /^Start-up wind/ }).click();
  await app.page.getByRole('dialog', { name: /^Start-up wind = 1\.3/ }).waitFor();
  expect(app.complaints).toEqual([]);
});

test('charts lie over the design as last saved once it differs, and no longer when it is saved', async () => {
  await openDemo(/cabin/i);
  await goTo('Volts and amps');
  const watts = region('Where the watts go');
  await watts.getByText(/^At rated wind 7\d % of the shaft’s power reaches the load; copper/).waitFor();
  expect(await watts.getByRole('listitem').allInnerTexts()).toEqual(['Copper', 'Eddy currents', 'Diodes', 'Cable', 'Bearings', 'Load']);
  await entry('Turns').fill('34');
  await settled();
  await watts.getByText('Shaft, as saved').waitFor();
  await downloaded(() => app.page.keyboard.press('Control+S'));
  await watts.getByText('Shaft, as saved').waitFor({ state: 'detached' });
  expect(app.complaints).toEqual([]);
});

test('a cable section is chosen by its drop, one step to undo', async () => {
  await openDemo(/cabin/i);
  await goTo('Volts and amps');
  await region('Cable sections')
    .getByRole('button', { name: /^Use 16/ })
    .click();
  await settled();
  expect(await entry('Conductor section').inputValue()).toBe('16');
  await app.page.getByRole('button', { name: 'Undo conductor section 10 mm² → 16 mm²' }).click();
  expect(await entry('Conductor section').inputValue()).toBe('10');
});

test('the controller’s margin stands beside its verdict, and a failure says by how much to change what', async () => {
  await openDemo(/farm/i);
  await goTo('Battery and controller');
  const check = region('Controller check');
  const gust = () => check.getByRole('row', { name: /^Gust, load lost/ }).innerText();
  expect(await gust()).toMatch(/\+\d+ %\s+pass/);
  await entry('Greatest input voltage').fill('300');
  await settled();
  expect(await gust()).toMatch(
    /−\d+ %\s+fail\s+\d+ turns fewer a coil, cut-in then at \d+ rpm; or delta instead of star, \d+ V.*more than \d+\.\d m\/s/,
  );
  expect(app.complaints).toEqual([]);
});

test('the minutes a gust leaves are told, and coils that nothing cools below the melting point are said to run away', async () => {
  await openDemo(/farm/i);
  await goTo('Heat');
  await app.page.getByRole('button', { name: /^Time to the limit in the gust/ }).click();
  await app.page.getByRole('dialog', { name: /^Time to the limit in the gust = 1\.\d+ min/ }).waitFor();
  await app.page.keyboard.press('Escape');
  await openDemo(/cabin/i);
  await goTo('Heat');
  await app.page
    .getByRole('button', { name: /^Coil temperature in the gust/ })
    .getByText('runs away')
    .waitFor();
});
