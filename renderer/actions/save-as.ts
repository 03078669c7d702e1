import { serializeDesign } from '../../core';
import { desktop } from '../desktop';
import { designStore, markSaved } from '../state/design';
import { setView } from '../state/view';
import { always, type Action } from './action';
import { fileName } from './file-name';

export async function performSaveAs(): Promise<void> {
  const { design, file } = designStore.getState();
  const saved = await desktop.saveDesignAs(file?.name ?? fileName(design.title, 'gapwright'), serializeDesign(design));
  if (!saved) return;
  markSaved(design, saved);
  setView({ message: { severity: 'success', text: `Saved ${saved.name}` } });
}

export const saveAs: Action = {
  id: 'save-as',
  label: () => 'Save as…',
  shortcut: 'Ctrl+Shift+S',
  group: 'File',
  enabled: always,
  perform: performSaveAs,
};
