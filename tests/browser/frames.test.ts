import { expect, test } from 'vitest';
import { drivenApp } from './driving';

const { app, entry, goTo, openDemo, settled } = drivenApp();

const FRAME = 1000 / 60; // ms
const SECONDS = 3;

interface Update {
  /** From the edit until its results stand on the page. [ms] */
  computed: number;
  /** Layout and paint of the frame that shows them. [ms] */
  painted: number;
}

/** Steps an entry by its own arrow keys, each as soon as the one before is painted, and times every one. */
function scrub(id: string, milliseconds: number): Promise<Update[]> {
  return app.page.evaluate(
    async ({ id, milliseconds }) => {
      const box = document.getElementById(id) as HTMLInputElement;
      const strip = document.querySelector('[data-testid="headline"]') as HTMLElement;
      box.focus();
      const frame = () => new Promise<number>((resolve) => requestAnimationFrame(() => resolve(performance.now())));
      const afterPaint = () =>
        new Promise<number>((resolve) => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => resolve(performance.now());
          port2.postMessage(null);
        });
      /** When the strip first stands idle with other numbers than before. */
      const answered = (before: string) =>
        new Promise<number>((resolve) => {
          const observer = new MutationObserver(() => {
            if (strip.getAttribute('aria-busy') !== 'false' || strip.innerText === before) return;
            observer.disconnect();
            resolve(performance.now());
          });
          observer.observe(strip, { subtree: true, childList: true, characterData: true, attributes: true });
        });
      const updates: { computed: number; painted: number }[] = [];
      const end = performance.now() + milliseconds;
      let up = true;
      for (let n = 0; performance.now() < end; n++) {
        if (n % 10 === 9) up = !up;
        const done = answered(strip.innerText);
        const began = performance.now();
        box.dispatchEvent(new KeyboardEvent('keydown', { key: up ? 'ArrowUp' : 'ArrowDown', bubbles: true, cancelable: true }));
        const computed = (await done) - began;
        const shown = await frame();
        updates.push({ computed, painted: (await afterPaint()) - shown });
      }
      return updates;
    },
    { id, milliseconds },
  );
}

for (const { worksheet, label, id } of [
  { worksheet: 'Magnets and gap', label: 'Running clearance', id: 'entry-discs-runningClearance' },
  { worksheet: 'Coils', label: 'Turns', id: 'entry-winding-turns' },
])
  test(`scrubbing “${label}” for ${SECONDS} s keeps up with the screen`, async () => {
    await openDemo(/cabin/i);
    await goTo(worksheet);
    await entry(label).press('ArrowUp'); // the first edit also warms up what the later ones re-use
    await settled();
    const times = (await scrub(id, SECONDS * 1000)).map(({ computed, painted }) => computed + painted).sort((a, b) => a - b);
    const within = times.filter((t) => t <= FRAME).length / times.length;
    const [median, worst] = [times[times.length >> 1] ?? NaN, times.at(-1) ?? NaN];
    console.log(
      `${label}: ${times.length} updates, ${(100 * within).toFixed(0)} % within ${FRAME.toFixed(1)} ms, median ${median.toFixed(1)} ms, worst ${worst.toFixed(1)} ms`,
    );
    expect(times.length).toBeGreaterThan(20);
    expect(median).toBeLessThan(100);
    expect(app.complaints).toEqual([]);
  });
