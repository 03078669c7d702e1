import { serializeDesign } from '../../core';
import { desktop } from '../desktop';
import { designStore, markSaved } from '../state/design';
import { setView } from '../state/view';
import { always, type Action } from './action';
import { performSaveAs } from './save-as';

export const save: Action = {
  id: 'save',
  label: () => 'Save',
  shortcut: 'Ctrl+S',
  group: 'File',
  enabled: always,
  async perform() {
    const { design, file } = designStore.getState();
    if (!file?.token) return performSaveAs();
    await desktop.saveDesign(file.token, serializeDesign(design));
    markSaved(design, file);
    setView({ message: { severity: 'success', text: `Saved ${file.name}` } });
  },
};
