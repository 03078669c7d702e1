import { expect, test } from 'vitest';
import { isNightly, size } from '../electron/size';
import { drivenApp, titles } from './driving';

const { app, goTo, openDemo } = drivenApp();

/** What the box with the cursor in it is called. */
const cursorIn = () =>
  app.page.evaluate(() => {
    const label = document.querySelector(`label[for="${document.activeElement?.id}"]`);
    return label?.firstChild?.textContent?.replaceAll('\u00a0', ' ');
  });

/** A spread of entries, choices and links on to another worksheet; every worksheet at night. */
const walked = isNightly ? titles : ['Coils', 'Wind match'];

test('every result of a worksheet opens to its working, and each input named there brings its box on screen with the cursor in it', async () => {
  await openDemo(/cabin/i);
  const followed = new Set<string>();
  const dialog = app.page.getByRole('dialog');
  for (const title of walked) {
    await goTo(title);
    const results = app.page.locator('.result-list button');
    for (let i = 0; i < (await results.count()); ) {
      await results.nth(i).click();
      expect(await dialog.innerText()).toMatch(/Meaning[^]*(Law|How|Formula)[^]*Limits\n.+\nSource\n.+/);
      const links = await dialog.locator('[title^="Goes to"]').evaluateAll((all) => all.map((link) => link.getAttribute('title') ?? ''));
      const next = links.find((link) => !followed.has(link));
      if (next === undefined) {
        await dialog.getByRole('button', { name: 'Close' }).click();
        i++;
      } else {
        followed.add(next);
        await dialog.getByTitle(next).first().click();
        await dialog.waitFor({ state: 'detached' });
        await expect.poll(async () => next === `Goes to “${await cursorIn()}”`, { message: `${title}: ${next}` }).toBe(true);
        await goTo(title);
      }
    }
  }
  expect(followed.size).toBeGreaterThan(size(15, 50));
  expect(app.complaints).toEqual([]);
});
