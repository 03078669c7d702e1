import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { controls } from './driving';
import { textOf } from './pdf-text';

/** What differs from host to host: how a file comes and goes. */
export interface Files {
  /** Does what saves a file, and gives what was saved. */
  saved: (name: string, act: () => Promise<void>) => Promise<Buffer>;
  /** Does what opens a file, and gives it this one. */
  opened: (name: string, content: Buffer, act: () => Promise<void>) => Promise<void>;
}

/** For a host that asks by the system's dialogs. `answer` sets the file that the next one is answered with. */
export const filesByDialog = (folder: string, answer: (file: string) => unknown): Files => ({
  async saved(name, act) {
    const file = path.join(folder, name);
    rmSync(file, { force: true }); // an earlier try's is not this one's
    await answer(file);
    await act();
    await expect.poll(() => existsSync(file)).toBe(true);
    return readFileSync(file);
  },
  async opened(name, content, act) {
    writeFileSync(path.join(folder, name), content);
    await answer(path.join(folder, name));
    await act();
  },
});

/** A builder's way through the program, the same in every host: a demo, other turns, undone, saved, opened again, and printed. */
export async function journey(app: { page: Page }, { saved, opened }: Files): Promise<void> {
  const { headline, headlineVolts, entry, goTo, settled, openDemo } = controls(app);
  const press = (keys: string) => () => app.page.keyboard.press(keys);
  await openDemo(/cabin/i);
  const title = await app.page.getByRole('textbox', { name: 'Title of the design' }).inputValue();
  await goTo('Coils');

  const before = await headlineVolts();
  const turns = Number(await entry('Turns').inputValue());
  await entry('Turns').fill(String(turns / 2));
  await settled();
  expect(await headlineVolts()).toBeCloseTo(before / 2, 0);
  expect(await headline().innerText()).toContain('−');
  await app.page.getByRole('button', { name: `Undo turns ${turns} → ${turns / 2}` }).click();
  await settled();
  expect(await headlineVolts()).toBe(before);
  expect(await entry('Turns').inputValue()).toBe(String(turns));

  await entry('Skin over the copper').fill('0.75');
  await app.page.getByText('not saved').waitFor();
  const first = await saved('cabin.gapwright', press('Control+S'));
  expect(JSON.parse(first.toString())).toMatchObject({ kind: 'gapwright-design', winding: { skin: 0.00075 } });
  await app.page.getByText('not saved').waitFor({ state: 'detached' });

  await press('Alt+N')();
  await opened('again.gapwright', first, press('Control+O'));
  await app.page.getByText('again.gapwright').waitFor();
  const second = await saved('third.gapwright', press('Control+Shift+S'));
  expect(second.toString()).toBe(first.toString());

  await goTo('Coils');
  const text = await textOf(await saved('sheet.pdf', press('Control+P')));
  expect(text).toContain(title);
  expect(text).toContain(String(turns));
  expect(text).toMatch(/star/i);
}
