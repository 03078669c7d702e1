import { describe, expect, test } from 'vitest';
import { accessibilityFaults } from './app-page';
import { drivenApp, titles } from './driving';

const { app, headline, headlineVolts, entry, goTo, settled, openDemo, downloaded } = drivenApp();

describe('a blank design', () => {
  test('is worked out as soon as the page is there', async () => {
    expect(await app.page.getByRole('textbox', { name: 'Title of the design' }).inputValue()).toBe('Untitled machine');
    expect(await headlineVolts()).toBeGreaterThan(1);
    expect(app.complaints).toEqual([]);
  });
});

describe('an entry that cannot be used', () => {
  test('is told so at once, keeps its text, and the numbers stay those before it', async () => {
    await goTo('Coils');
    const before = await headlineVolts();
    await entry('Turns').fill('9999');
    await app.page.getByText('Must be between').waitFor();
    expect(await entry('Turns').inputValue()).toBe('9999');
    expect(await headline().innerText()).toContain('An entry cannot be used as it stands');
    expect(await headlineVolts()).toBe(before);
    await app.page.keyboard.press('Control+Z');
    expect(await app.page.getByText('Must be between').count()).toBe(0);
  });

  test('a design whose entries cannot stand together names the one at fault', async () => {
    await goTo('Coils');
    await entry('Hole ends at').fill('90');
    await app.page.getByRole('status').getByText('cannot be worked out').first().waitFor();
    await app.page.getByRole('button', { name: 'Hole ends at', exact: true }).waitFor();
  });

  test('stands first among all there is to heed, the gravest first, and each leads to its entry', async () => {
    await goTo('Coils');
    await entry('Turns').fill('9999');
    await headline()
      .getByRole('button', { name: /^Errors and cautions/ })
      .click();
    const dialog = app.page.getByRole('dialog', { name: 'Errors and cautions' });
    const gravity = await dialog
      .locator('li')
      .getByRole('img')
      .evaluateAll((icons) => icons.map((icon) => icon.textContent));
    const order = ['Error', 'Danger', 'Warning', 'Note'];
    expect(gravity).toEqual(gravity.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)));
    expect(new Set(gravity).size).toBeGreaterThan(2);
    await dialog.locator('li').first().getByRole('button', { name: 'Turns' }).click();
    await expect.poll(() => entry('Turns').evaluate((box) => box === document.activeElement)).toBe(true);
  });
});

test('a file that is no design is refused and the one on screen left alone', async () => {
  const chooser = app.page.waitForEvent('filechooser');
  await app.page.getByRole('button', { name: 'File' }).click();
  await app.page.getByRole('menuitem', { name: 'Open' }).click();
  await (await chooser).setFiles({ name: 'bad.gapwright', mimeType: 'application/json', buffer: Buffer.from('{"kind":"other"}') });
  await app.page.getByText('bad.gapwright cannot be opened').waitFor();
  expect(await app.page.getByRole('textbox', { name: 'Title of the design' }).inputValue()).toBe('Untitled machine');
});

test('a design that was saved is found again after a restart', async () => {
  await openDemo(/cabin/i);
  await goTo('Coils');
  await entry('Turns').fill('33');
  await settled();
  await downloaded(() => app.page.keyboard.press('Control+S'));
  await app.page.getByText('Saved').waitFor();
  await app.page.waitForTimeout(300); // the settings are on their way
  await app.page.reload();
  await settled();
  await app.page.keyboard.press('Alt+R');
  await app.page
    .getByRole('dialog')
    .getByRole('button', { name: /^Hill cabin/ })
    .click();
  await settled();
  await goTo('Coils');
  expect(await entry('Turns').inputValue()).toBe('33');
  expect(app.complaints).toEqual([]);
});

test('unsaved work is offered again after the program stopped', async () => {
  await goTo('Coils');
  await entry('Turns').fill('61');
  await app.page.waitForTimeout(4000);
  const { page } = app;
  const asked: string[] = [];
  page.on('dialog', (dialog) => {
    asked.push(dialog.type());
    void dialog.accept();
  });
  await page.reload();
  expect(asked).toEqual(['beforeunload']);
  await page.getByRole('button', { name: 'Take it up again' }).click();
  await goTo('Coils');
  expect(await entry('Turns').inputValue()).toBe('61');
});

test('inches and degrees Fahrenheit are shown everywhere and kept', async () => {
  await app.page.keyboard.press('Alt+L');
  await app.page.keyboard.press('Alt+F');
  expect(await entry('Thickness').inputValue()).toBe('0.3937');
  const gap = Number((await app.page.getByRole('button', { name: /^Magnet face to magnet face/ }).innerText()).match(/[\d.]+/g)?.at(-1));
  await app.page.getByText(new RegExp(`^gap ${Number(gap.toFixed(3))}$`)).waitFor();
  await app.page.getByText('Lengths in the drawing are in inches.').first().waitFor();
  await app.page.waitForTimeout(300);
  await app.page.reload();
  await settled();
  expect(await headline().innerText()).toContain('°F');
});

/** Elements that would move although less motion was asked for. */
const moving = () =>
  app.page.evaluate(
    () =>
      [...document.querySelectorAll('*')].filter((element) =>
        [undefined, '::before', '::after'].some((part) => {
          const { transitionProperty, transitionDuration, animationName } = getComputedStyle(element, part);
          return animationName !== 'none' || (transitionProperty !== 'none' && !/^0s(, 0s)*$/.test(transitionDuration));
        }),
      ).length,
  );

for (const colorScheme of ['light', 'dark'] as const)
  test(`a reader who needs aids can use every worksheet, ${colorScheme}`, async () => {
    await app.page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await openDemo(/cabin/i);
    for (const title of titles) {
      await goTo(title);
      expect([title, await accessibilityFaults(app.page)]).toEqual([title, []]);
      // 1280 by 800, and the same window at 200 %.
      for (const zoom of [1, 2]) {
        await app.page.setViewportSize({ width: 1280 / zoom, height: 800 / zoom });
        const wider = await app.page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
        expect([title, zoom, wider]).toEqual([title, zoom, false]);
      }
      await app.page.setViewportSize({ width: 1400, height: 900 });
      expect([title, await moving()]).toEqual([title, 0]);
    }
    await goTo('Coils');
    for (const [name, open] of [
      [
        'Errors and cautions',
        () =>
          headline()
            .getByRole('button', { name: /^Errors and cautions/ })
            .click(),
      ],
      ['Mean turn', () => app.page.getByRole('button', { name: /^Mean turn/ }).click()],
      ['New from a demo', () => app.page.keyboard.press('Alt+D')],
    ] as const) {
      await open();
      await app.page.getByRole('dialog', { name }).waitFor();
      expect([name, await accessibilityFaults(app.page)]).toEqual([name, []]);
      await app.page.keyboard.press('Escape');
      await app.page.getByRole('dialog').waitFor({ state: 'detached' });
    }
  });
