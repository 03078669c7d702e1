import { designStore, redo as redoStep } from '../state/design';
import type { Action } from './action';

const next = () => designStore.getState().history.future[0];

export const redo: Action = {
  id: 'redo',
  label: () => (next() ? `Redo ${next()?.name}` : 'Redo'),
  shortcut: 'Ctrl+Shift+Z',
  group: 'Edit',
  enabled: () => next() !== undefined,
  perform: redoStep,
};
