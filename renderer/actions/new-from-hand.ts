import { setView } from '../state/view';
import { always, type Action } from './action';

export const newFromHand: Action = {
  id: 'new-from-hand',
  label: () => 'New from what you have…',
  shortcut: 'Alt+H',
  group: 'File',
  enabled: always,
  perform: () => setView({ dialog: { kind: 'start' } }),
};
