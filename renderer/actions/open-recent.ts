import { setView, viewStore } from '../state/view';
import type { Action } from './action';

export const openRecent: Action = {
  id: 'open-recent',
  label: () => 'Recent designs…',
  shortcut: 'Alt+R',
  group: 'File',
  enabled: () => viewStore.getState().recent.length > 0,
  perform: () => setView({ dialog: { kind: 'recent' } }),
};
