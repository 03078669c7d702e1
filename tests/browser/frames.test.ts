import { expect, test } from 'vitest';
import { drivenApp } from './driving';

const { app, entry, goTo, openDemo, settled } = drivenApp();

const FRAME = 1000 / 60; // ms
/** A held key repeats 30 times a second on common keyboards (common practice, no source). [ms] */
const REPEAT = 1000 / 30;
const SECONDS = 3;
/** Until the drawings and the field's map, which follow once the numbers stand still, are there. [ms] */
const REST = 1500;
/** What a median must keep to even on a machine that is busy with other things. [ms] */
const BUSY = 200;

declare const scheduler: { postTask<T>(task: () => T, options: { priority: 'user-blocking' }): Promise<T> };

/** Where the time of one update goes. [ms] */
interface Update {
  /** From the key until the page holds the numbers of the step: worked out, sent, rendered. */
  shown: number;
  /** Layout and paint of the frame that shows them. */
  painted: number;
}

const sorted = (values: number[]) => values.sort((a, b) => a - b);
const median = (values: number[]) => sorted(values)[values.length >> 1] ?? NaN;

/** Steps an entry by its own arrow keys as a held key does, always on to a value not met before, each after the one before is painted, and times every one. */
function scrub(id: string, altKey: boolean, milliseconds: number): Promise<Update[]> {
  return app.page.evaluate(
    async ({ id, altKey, milliseconds, repeat }) => {
      const box = document.getElementById(id) as HTMLInputElement;
      const strip = document.querySelector('[data-testid="headline"]') as HTMLElement;
      box.focus();
      const frame = () => new Promise<number>((resolve) => requestAnimationFrame(() => resolve(performance.now())));
      // Before whatever else waits: drawings follow after the numbers are painted.
      const afterPaint = () => scheduler.postTask(() => performance.now(), { priority: 'user-blocking' });
      /** When the strip first stands idle with other numbers than before. */
      const answered = (before: string) =>
        new Promise<number>((resolve) => {
          const observer = new MutationObserver(() => {
            if (strip.getAttribute('aria-busy') !== 'false' || strip.textContent === before) return;
            observer.disconnect();
            resolve(performance.now());
          });
          observer.observe(strip, { subtree: true, childList: true, characterData: true, attributes: true });
        });
      const updates: { shown: number; painted: number }[] = [];
      const end = performance.now() + milliseconds;
      while (performance.now() < end) {
        const done = answered(strip.textContent);
        const began = performance.now();
        box.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowUp', altKey, bubbles: true, cancelable: true }));
        const shown = (await done) - began;
        const drawn = await frame();
        updates.push({ shown, painted: (await afterPaint()) - drawn });
        await new Promise((resolve) => setTimeout(resolve, began + repeat - performance.now()));
      }
      return updates;
    },
    { id, altKey, milliseconds, repeat: REPEAT },
  );
}

for (const { worksheet, label, id, altKey } of [
  { worksheet: 'Magnets and gap', label: 'Running clearance', id: 'entry-discs-runningClearance', altKey: true },
  { worksheet: 'Coils', label: 'Turns', id: 'entry-winding-turns', altKey: false },
])
  test(`scrubbing “${label}” for ${SECONDS} s keeps up with the screen`, async () => {
    await openDemo(/cabin/i);
    await goTo(worksheet);
    await entry(label).press('ArrowUp'); // the first edit also warms up what the later ones re-use
    await settled();
    await app.page.waitForTimeout(REST);
    const updates = await scrub(id, altKey, SECONDS * 1000);
    const times = sorted(updates.map(({ shown, painted }) => shown + painted));
    const within = times.filter((t) => t <= FRAME).length / times.length;
    const [typical, worst] = [median(times), times.at(-1) ?? NaN];
    const part = (of: keyof Update) => `${of} ${median(updates.map((update) => update[of])).toFixed(1)}`;
    console.log(
      `${label}: ${times.length} updates, ${(100 * within).toFixed(0)} % within ${FRAME.toFixed(1)} ms, median ${typical.toFixed(1)} ms, ` +
        `95 % within ${(times[Math.floor(0.95 * times.length)] ?? NaN).toFixed(1)} ms, worst ${worst.toFixed(1)} ms; medians: ${part('shown')}, ${part('painted')}`,
    );
    expect(times.length).toBeGreaterThan(20);
    expect(typical).toBeLessThan(BUSY);
    expect(app.complaints).toEqual([]);
  });
