import { setView } from '../state/view';
import type { Action } from './action';

/** Performs an action; whatever goes wrong is shown, never swallowed. */
export async function attempt(action: Action): Promise<void> {
  if (!action.enabled()) return;
  try {
    await action.perform();
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    setView({ message: { severity: 'error', text: `${action.label().replace(/…$/, '')} failed: ${reason}` } });
  }
}
