import { desktop } from '../desktop';
import { designStore } from '../state/design';
import { resultsStore } from '../state/results';
import { setView, viewStore } from '../state/view';
import type { Action } from './action';
import { fileName } from './file-name';

export const printSheet: Action = {
  id: 'print-sheet',
  label: () => 'Winding sheet (PDF)…',
  shortcut: 'Ctrl+P',
  group: 'File',
  enabled: () => resultsStore.getState().results !== null,
  async perform() {
    const { file } = designStore.getState();
    const { results, solvedFor } = resultsStore.getState();
    if (!results || !solvedFor) return;
    const { printedSheet } = await import('../sheet-printing');
    const name = fileName(`${solvedFor.title} winding sheet`, 'pdf');
    const bytes = await printedSheet(solvedFor, results, viewStore.getState().paper, file?.name ?? 'not saved');
    const saved = await desktop.exportFile(name, 'pdf', bytes);
    if (saved) setView({ message: { severity: 'success', text: `Saved ${saved.name}` } });
  },
};
