import { parseDesign } from '../../core';
import { loadDesign, type OpenFile } from '../state/design';
import { setView } from '../state/view';

/** Puts the text of a design file on screen, or says entry by entry why not and leaves the present one alone. */
export function openText(text: string, file: OpenFile): void {
  const parsed = parseDesign(text);
  // One that only cannot be worked out is shown, with what is at fault.
  if (parsed.design) {
    loadDesign(parsed.design, file.token === undefined ? null : file);
    setView({ message: null });
  } else if (!parsed.ok) {
    const lines = parsed.problems.map((problem) => (problem.where ? `${problem.where}: ${problem.message}` : problem.message));
    setView({ message: { severity: 'error', text: `${file.name} cannot be opened.`, lines } });
  }
}
