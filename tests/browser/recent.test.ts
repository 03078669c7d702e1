import { expect, test } from 'vitest';
import { drivenApp } from './driving';

/** The browser's pickers stand outside the page; in their place files of its own storage, whose handles outlive the page like any other. */
const { app, entry, goTo, settled, openDemo } = drivenApp((page) =>
  page.addInitScript(() => {
    const picked = async () => (await navigator.storage.getDirectory()).getFileHandle('hill.gapwright', { create: true });
    Object.defineProperty(window, 'showOpenFilePicker', { value: async () => [await picked()] });
    Object.defineProperty(window, 'showSaveFilePicker', { value: picked });
  }),
);

const file = async () => (await app.page.evaluateHandle(() => navigator.storage.getDirectory())).evaluateHandle((root) => root);
const inFile = async () => (await file()).evaluate(async (root) => (await (await root.getFileHandle('hill.gapwright')).getFile()).text());

const write = async (text: string) =>
  (await file()).evaluate(async (root, content) => {
    const stream = await (await root.getFileHandle('hill.gapwright')).createWritable();
    await stream.write(content);
    await stream.close();
  }, text);

async function openRecent(): Promise<void> {
  await app.page.keyboard.press('Alt+R');
  await app.page.getByRole('dialog').getByRole('button', { name: 'Hill cabin' }).click();
  await expect.poll(() => app.page.getByRole('textbox', { name: 'Title of the design' }).inputValue()).toMatch(/^Hill cabin/);
  await settled();
}

test('a recent design is opened from its file as it is now and saved back there; when the file is gone, as it was', async () => {
  await openDemo(/cabin/i);
  await goTo('Coils');
  await app.page.keyboard.press('Control+S');
  await app.page.getByText('Saved hill.gapwright').waitFor();
  await write((await inFile()).replace('"turns": 30', '"turns": 37'));
  await app.page.waitForTimeout(300); // the settings are on their way
  await app.page.reload();
  await settled();
  await openRecent();
  await goTo('Coils');
  expect(await entry('Turns').inputValue()).toBe('37');
  await entry('Turns').fill('38');
  await settled();
  await app.page.keyboard.press('Control+S');
  await app.page.getByText('Saved hill.gapwright').waitFor();
  expect(await inFile()).toContain('"turns": 38');

  await (await file()).evaluate((root) => root.removeEntry('hill.gapwright'));
  await app.page.waitForTimeout(300);
  await app.page.reload();
  await settled();
  await openRecent();
  await app.page.getByText('hill.gapwright is not opened from its file.').waitFor();
  await goTo('Coils');
  expect(await entry('Turns').inputValue()).toBe('38');
  expect(app.complaints).toEqual([]);
});

test('a file that another program has changed is told on coming back, and not replaced without asking', async () => {
  await openDemo(/cabin/i);
  await app.page.keyboard.press('Control+S');
  await app.page.getByText('Saved hill.gapwright').waitFor();
  const theirs = (await inFile()).replace('"turns": 30', '"turns": 37');
  await write(theirs);
  await app.page.evaluate(() => window.dispatchEvent(new Event('focus')));
  await app.page.getByText('hill.gapwright was changed by another program since it was opened or saved here.').waitFor();
  let answer = false;
  app.page.on('dialog', (dialog) => void (answer ? dialog.accept() : dialog.dismiss()));
  await app.page.keyboard.press('Control+S');
  await app.page.getByText('hill.gapwright was changed by another program and is left as it is.').waitFor();
  expect(await inFile()).toBe(theirs);
  answer = true;
  await app.page.keyboard.press('Control+S');
  await app.page.getByText('Saved hill.gapwright').waitFor();
  expect(await inFile()).toContain('"turns": 30');
  expect(app.complaints).toEqual([]);
});

test('a file that is open in another tab is opened a second time only when the user insists', async () => {
  await openDemo(/cabin/i);
  await app.page.keyboard.press('Control+S');
  await app.page.getByText('Saved hill.gapwright').waitFor();
  await app.page.waitForTimeout(300); // the settings are on their way
  const second = await app.page.context().newPage();
  await second.addInitScript(() => {
    const picked = async () => (await navigator.storage.getDirectory()).getFileHandle('hill.gapwright');
    Object.defineProperty(window, 'showOpenFilePicker', { value: async () => [await picked()] });
  });
  await second.goto(app.page.url());
  const title = second.getByRole('textbox', { name: 'Title of the design' });
  const before = await title.inputValue();
  const asked: string[] = [];
  let answer = false;
  second.on('dialog', (dialog) => {
    asked.push(dialog.message());
    void (answer ? dialog.accept() : dialog.dismiss());
  });
  await second.keyboard.press('Control+O');
  await expect.poll(() => asked).toHaveLength(1);
  expect(asked[0]).toMatch(/^hill\.gapwright is open in another tab\./);
  expect(await title.inputValue()).toBe(before);
  answer = true;
  await second.keyboard.press('Control+O');
  await expect.poll(() => title.inputValue()).toMatch(/^Hill cabin/);
  await app.page.close();
  await second.keyboard.press('Control+O');
  await second.waitForTimeout(500);
  expect(asked).toHaveLength(2);
});
