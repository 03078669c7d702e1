import { fieldId } from '../parts/field-row';
import { setView, viewStore } from '../state/view';
import { worksheetFor, worksheets } from './registry';

/** Brings an entry's box on screen and puts the cursor in it. */
export function goToEntry(where: string): void {
  const path = where.replace(/\.kind$/, '');
  const entryOf = (w: (typeof worksheets)[number]) =>
    w.groups.flatMap((g) => g.entries).find((entry) => entry === path || entry.startsWith(`${path}.`));
  const has = (w: (typeof worksheets)[number]) => entryOf(w) !== undefined;
  const now = viewStore.getState().worksheet;
  const target = worksheets.find((w) => w.id === now && has(w)) ?? worksheets.find(has) ?? worksheetFor(path);
  setView({ working: null, dialog: null, ...(target && { worksheet: target.id }) });
  setTimeout(() => {
    const box = document.getElementById(fieldId((target && entryOf(target)) ?? path));
    box?.scrollIntoView({ block: 'center' });
    box?.focus();
  }, 150); // after a closing dialog has given the focus back
}
