import { expect, test } from 'vitest';
import { accessibilityFaults, freshApp } from './app-page';

const app = freshApp();

const isShown = () => app.page.locator('#root > *').first().waitFor();

test('the page loads without a complaint and asks nothing of any other place', async () => {
  await isShown();
  await app.page.waitForLoadState('networkidle');
  expect(app.complaints).toEqual([]);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`a reader who needs aids can use the first page, ${colorScheme}`, async () => {
    await app.page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await isShown();
    await app.page.waitForLoadState('networkidle');
    expect(await accessibilityFaults(app.page)).toEqual([]);
  });
}

test('the key of the printed address lets the page keep its settings, and a page without it keeps nothing', async () => {
  await isShown();
  const ask = () =>
    app.page.evaluate(async () => {
      const reply = await fetch('/host/readSettings', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ args: [] }),
      });
      return { status: reply.status, body: (await reply.json()) as object };
    });
  expect(await ask()).toMatchObject({ status: 200 });
  await app.page.context().clearCookies();
  expect(await ask()).toMatchObject({ status: 403 });
});

test('a script that is not the program’s own does not run, and nothing can be fetched from elsewhere', async () => {
  await isShown();
  const ran = await app.page.evaluate(async () => {
    const script = document.createElement('script');
    script.textContent = 'window.ran = true';
    document.head.append(script);
    const fetched = await fetch('http://127.0.0.1:9/').then(
      () => true,
      () => false,
    );
    return { script: 'ran' in window, fetched };
  });
  expect(ran).toEqual({ script: false, fetched: false });
  expect(app.complaints.filter((words) => words.includes('Content Security Policy')).length).toBeGreaterThanOrEqual(2);
});
