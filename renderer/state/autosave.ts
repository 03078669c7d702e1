import { parseDesign, serializeDesign } from '../../core';
import { desktop, hasMenu } from '../desktop';
import { designStore, isUnsaved } from './design';
import { viewStore } from './view';

const EVERY = 3000; // ms

/** Keeps a recovery copy while there is unsaved work, forgets it when there is none, and guards the window against closing. */
export async function startAutosave(): Promise<void> {
  await offerRecovery();
  let kept: string | null = null;
  let told = false;
  const keep = () => {
    const state = designStore.getState();
    const text = isUnsaved(state) ? serializeDesign(state.design) : null;
    if (text === kept) return;
    const before = kept;
    kept = text;
    desktop.writeRecovery(text).catch(() => {
      kept = before;
    });
  };
  setInterval(keep, EVERY);
  designStore.subscribe((state) => {
    const unsaved = isUnsaved(state);
    if (unsaved === told) return;
    told = unsaved;
    void desktop.setUnsaved(unsaved).catch(() => undefined);
    if (!unsaved) keep();
  });
  // The desktop window asks on its own, from what `setUnsaved` told it.
  if (hasMenu()) return;
  window.addEventListener('beforeunload', (event) => {
    if (isUnsaved(designStore.getState())) event.preventDefault();
  });
}

async function offerRecovery(): Promise<void> {
  const text = await desktop.readRecovery().catch(() => null);
  if (text !== null && parseDesign(text).ok) viewStore.setState({ dialog: { kind: 'recovery', text } });
}
