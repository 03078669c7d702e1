import { designStore, isUnsaved } from '../state/design';
import { setView } from '../state/view';

/** Goes on at once when nothing would be lost; else asks first. */
export function unlessUnsaved(go: () => void): void {
  if (isUnsaved(designStore.getState())) setView({ dialog: { kind: 'discard', go } });
  else go();
}
