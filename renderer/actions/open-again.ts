import { desktop } from '../desktop';
import type { RecentDesign } from '../state/recent';
import { setView } from '../state/view';
import { openText } from './open-text';

/** Opens a recent design from its file; where that cannot be had, what was in it last, and says so. */
export async function openAgain({ id, name, text }: RecentDesign): Promise<void> {
  try {
    if (id === undefined) throw new Error('This browser does not let a page find a file again.');
    const file = await desktop.reopenDesign(id);
    if (file) openText(file.text, file);
  } catch (error) {
    openText(text, { name });
    const reason = error instanceof Error ? error.message : String(error);
    const copy = 'On screen is what was in it when it was last opened or saved here. Saving asks where.';
    setView({ message: { severity: 'error', text: `${name} is not opened from its file.`, lines: [reason, copy] } });
  }
}
