import { designStore, undo as undoStep } from '../state/design';
import type { Action } from './action';

const last = () => designStore.getState().history.past.at(-1);

export const undo: Action = {
  id: 'undo',
  label: () => (last() ? `Undo ${last()?.name}` : 'Undo'),
  shortcut: 'Ctrl+Z',
  group: 'Edit',
  enabled: () => last() !== undefined,
  perform: undoStep,
};
