import { blankDesign } from '../../core';
import { loadDesign } from '../state/design';
import { always, type Action } from './action';
import { unlessUnsaved } from './unless-unsaved';

export const newDesign: Action = {
  id: 'new',
  label: () => 'New design',
  shortcut: 'Alt+N',
  group: 'File',
  enabled: always,
  perform: () => unlessUnsaved(() => loadDesign(blankDesign(), null)),
};
