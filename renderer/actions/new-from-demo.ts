import { setView } from '../state/view';
import { always, type Action } from './action';

export const newFromDemo: Action = {
  id: 'new-from-demo',
  label: () => 'New from a demo…',
  shortcut: 'Alt+D',
  group: 'File',
  enabled: always,
  perform: () => setView({ dialog: { kind: 'demos' } }),
};
