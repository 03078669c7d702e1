import { desktop } from '../desktop';
import { setView } from '../state/view';
import { always, type Action } from './action';
import { openText } from './open-text';
import { unlessUnsaved } from './unless-unsaved';

async function choose(): Promise<void> {
  const file = await desktop.openDesign();
  if (file) openText(file.text, file);
}

export const open: Action = {
  id: 'open',
  label: () => 'Open…',
  shortcut: 'Ctrl+O',
  group: 'File',
  enabled: always,
  perform: () =>
    unlessUnsaved(() => {
      choose().catch((error: unknown) => setView({ message: { severity: 'error', text: `Open failed: ${String(error)}` } }));
    }),
};

/** The design that the system asked the program to open, if there is one. */
export async function openWaiting(): Promise<void> {
  const file = await desktop.takeWaitingDesign();
  if (file) unlessUnsaved(() => openText(file.text, file));
}
