import { designStore, undo as undoStep } from '../state/design';
import type { Action } from './action';

const isTyping = () => Object.keys(designStore.getState().faults).length > 0;
const last = () => designStore.getState().history.past.at(-1);

export const undo: Action = {
  id: 'undo',
  label: () => (isTyping() ? 'Undo typing' : last() ? `Undo ${last()?.name}` : 'Undo'),
  shortcut: 'Ctrl+Z',
  group: 'Edit',
  enabled: () => isTyping() || last() !== undefined,
  perform: undoStep,
};
