import type { Download, Page } from 'playwright-core';
import { beforeEach } from 'vitest';
import { freshApp } from './app-page';

export const titles = [
  'Magnets and gap',
  'Coils',
  'Wire and fit',
  'Volts and amps',
  'Heat',
  'Wind match',
  'Battery and controller',
  'Bench',
  'Shelf search',
  'Winding sheet',
];

/** A fresh app for each test, driven by menus that a test can follow: without the pickers that a browser shows outside the page. */
export function drivenApp(prepare?: (page: Page) => Promise<unknown>) {
  const app = freshApp({
    settings: {},
    prepare: async (page) => {
      // Listening from the start: asked for only with the key press, the browser may open its own chooser first.
      page.on('filechooser', () => undefined);
      await page.addInitScript(() => {
        for (const picker of ['showOpenFilePicker', 'showSaveFilePicker']) Object.defineProperty(window, picker, { value: undefined });
      });
      await prepare?.(page);
    },
  });
  const driven = controls(app);
  beforeEach(driven.settled);
  return { app, ...driven };
}

/** The hands of a test on the page, whichever host has it. */
export function controls(app: { page: Page }) {
  const headline = () => app.page.getByTestId('headline');
  const settled = () => headline().and(app.page.locator('[aria-busy="false"]')).waitFor();
  return {
    headline,
    settled,
    entry: (label: string) => app.page.getByRole('textbox', { name: label, exact: true }),
    goTo: async (title: string): Promise<void> => {
      await app.page.getByRole('navigation', { name: 'Worksheets' }).getByRole('button', { name: title }).click();
      await app.page.getByRole('heading', { level: 1, name: title }).waitFor();
    },
    /** Volts at 1000 rpm as the strip shows them. */
    headlineVolts: async () => Number(/^([\d.]+)\s*V$/m.exec(await headline().innerText())?.[1]),
    openDemo: async (name: RegExp): Promise<void> => {
      await app.page.getByRole('button', { name: 'File' }).click();
      await app.page.getByRole('menuitem', { name: 'New from a demo' }).click();
      await app.page.getByRole('dialog').getByRole('button', { name }).click();
      await app.page.getByRole('dialog').waitFor({ state: 'detached' });
      await settled();
    },
    downloaded: async (act: () => Promise<void>): Promise<Download> => {
      const waiting = app.page.waitForEvent('download');
      await act();
      return waiting;
    },
  };
}
