import { setView } from '../state/view';
import { worksheets } from '../worksheets/registry';
import { always, type Action } from './action';

/** One action a worksheet: Alt+1 to Alt+9, then Alt+0. */
export const goToWorksheet: Action[] = worksheets.map(({ id, title }, i) => ({
  id: `go-${id}`,
  label: () => title,
  shortcut: i < 10 ? `Alt+${(i + 1) % 10}` : undefined,
  group: 'Go',
  enabled: always,
  perform: () => setView({ worksheet: id }),
}));
