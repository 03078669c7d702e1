import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { BrowserWindow, Rectangle, Screen } from 'electron';

const defaults = { width: 1400, height: 900 };
export const least = { width: 700, height: 500 };

/** Where the window was when it was last closed, kept in the user's application data. */
export function windowState(folder: string, screen: Pick<Screen, 'getAllDisplays'>) {
  const file = path.join(folder, 'window.json');
  const kept = read(file);
  return {
    /** Where to open: as kept if that can still be seen, else in the middle of the screen. */
    bounds: kept && screen.getAllDisplays().some(({ workArea }) => isSeen(kept, workArea)) ? boundsOf(kept) : defaults,
    maximized: kept?.maximized ?? false,
    /** At once, since the program ends with its window. */
    keep(window: BrowserWindow): void {
      try {
        writeFileSync(file, JSON.stringify({ ...window.getNormalBounds(), maximized: window.isMaximized() }));
      } catch {
        // That the window opens elsewhere next time is not worth a word.
      }
    },
  };
}

type Kept = Rectangle & { maximized: boolean };

function read(file: string): Kept | undefined {
  try {
    const { x, y, width, height, maximized } = JSON.parse(readFileSync(file, 'utf8')) as Record<keyof Kept, unknown>;
    const numbers = [x, y, width, height].map((value) => (Number.isSafeInteger(value) ? (value as number) : NaN));
    if (numbers.some(Number.isNaN)) return undefined;
    const [left, top, wide, high] = numbers as [number, number, number, number];
    return { x: left, y: top, width: Math.max(wide, least.width), height: Math.max(high, least.height), maximized: maximized === true };
  } catch {
    return undefined;
  }
}

const boundsOf = ({ x, y, width, height }: Kept): Rectangle => ({ x, y, width, height });

/** Enough of the title bar to take hold of. */
function isSeen(kept: Rectangle, area: Rectangle): boolean {
  const across = Math.min(kept.x + kept.width, area.x + area.width) - Math.max(kept.x, area.x);
  return across >= 100 && kept.y >= area.y && kept.y <= area.y + area.height - 50;
}
