import { resultsStore } from '../state/results';
import { setView } from '../state/view';
import type { Action } from './action';

export const sideBySide: Action = {
  id: 'side-by-side',
  label: () => 'Variants side by side…',
  shortcut: 'Alt+V',
  group: 'View',
  enabled: () => resultsStore.getState().variants.length > 0,
  perform: () => setView({ dialog: { kind: 'comparison' } }),
};
