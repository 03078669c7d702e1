import { desktop } from '../desktop';
import type { DocumentName } from '../printing';
import { designStore } from '../state/design';
import { resultsStore } from '../state/results';
import { setView, viewStore } from '../state/view';
import type { Action } from './action';
import { fileName } from './file-name';

const isSolved = () => resultsStore.getState().results !== null;

/** Saves one of the documents as PDF; the writer is loaded only now. */
async function print(what: DocumentName, ending: string): Promise<void> {
  const { file } = designStore.getState();
  const { results, solvedFor } = resultsStore.getState();
  if (!results || !solvedFor) return;
  const { printed } = await import('../printing');
  const name = fileName(`${solvedFor.title} ${ending}`, 'pdf');
  const bytes = await printed(what, solvedFor, results, viewStore.getState().paper, file?.name);
  const saved = await desktop.exportFile(name, 'pdf', bytes);
  if (saved) setView({ message: { severity: 'success', text: `Saved ${saved.name}` } });
}

export const printSheet: Action = {
  id: 'print-sheet',
  label: () => 'Winding sheet (PDF)…',
  shortcut: 'Ctrl+P',
  group: 'File',
  enabled: isSolved,
  perform: () => print('sheet', 'winding sheet'),
};

export const printReport: Action = {
  id: 'print-report',
  label: () => 'Calculation report (PDF)…',
  shortcut: 'Ctrl+Shift+P',
  group: 'File',
  enabled: isSolved,
  perform: () => print('report', 'calculation report'),
};

export const printTemplates: Action = {
  id: 'print-templates',
  label: () => 'Templates at natural size (PDF)…',
  group: 'File',
  enabled: isSolved,
  perform: () => print('templates', 'templates'),
};
