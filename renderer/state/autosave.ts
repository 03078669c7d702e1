import { parseDesign, serializeDesign } from '../../core';
import { desktop, hasMenu } from '../desktop';
import { designStore, isUnsaved } from './design';
import { setView } from './view';

const EVERY = 3000; // ms

/** Keeps a recovery copy while there is unsaved work, forgets it when there is none, and guards the window against closing. */
export async function startAutosave(): Promise<void> {
  await offerRecovery();
  const keep = recoveryKeeper();
  let told = false;
  setInterval(keep, EVERY);
  designStore.subscribe((state) => {
    const unsaved = isUnsaved(state);
    if (unsaved === told) return;
    told = unsaved;
    void desktop.setUnsaved(unsaved).catch(() => undefined);
    if (!unsaved) keep();
  });
  window.addEventListener('focus', changeWatcher());
  // The desktop window asks on its own, from what `setUnsaved` told it.
  if (hasMenu()) return;
  window.addEventListener('beforeunload', (event) => {
    if (isUnsaved(designStore.getState())) event.preventDefault();
  });
}

/** Writes the recovery copy when it is not what was written last. A failure is told once, until a copy could be kept again. */
export function recoveryKeeper(): () => void {
  let kept: string | null = null;
  let failing = false;
  return () => {
    const state = designStore.getState();
    const text = isUnsaved(state) ? serializeDesign(state.design) : null;
    if (text === kept) return;
    const before = kept;
    kept = text;
    desktop.writeRecovery(text).then(
      () => {
        failing = false;
      },
      (error: unknown) => {
        kept = before;
        if (failing) return;
        failing = true;
        const reason = error instanceof Error ? error.message : String(error);
        tell('No recovery copy of unsaved work can be kept: if the program stopped now, the work would be lost. Save it to a file.', [
          reason,
        ]);
      },
    );
  };
}

/** Looks, whenever the user comes back to the program, whether another one has changed the open file; tells it once for each file. */
export function changeWatcher(): () => void {
  let toldOf: string | undefined;
  return () => {
    const { file } = designStore.getState();
    if (!file?.token) return;
    const { token, name } = file;
    desktop.isChanged(token).then(
      (changed) => {
        if (changed && toldOf !== token)
          tell(`${name} was changed by another program since it was opened or saved here.`, [
            'What is on screen is as it was. Open the file again to see the change; saving asks before it replaces it.',
          ]);
        toldOf = changed ? token : undefined;
      },
      () => undefined, // asked again before it is saved
    );
  };
}

const tell = (text: string, lines: string[]) => setView({ message: { severity: 'error', text, lines } });

async function offerRecovery(): Promise<void> {
  const text = await desktop.readRecovery().catch(() => null);
  if (text !== null && parseDesign(text).design) setView({ dialog: { kind: 'recovery', text } });
}
