import { choiceWord, quantityAt } from '../words';
import { unitPreferences, viewStore } from '../state/view';
import { entryText, entryUnit } from '../units';

/** How an edit reads in "Undo …", as in "turns 60 → 64". */
export function stepName(path: string, before: unknown, after: unknown): string {
  const { label, unit } = quantityAt(path.replace(/\.kind$/, ''));
  const units = unitPreferences(viewStore.getState());
  const word = (value: unknown) =>
    typeof value === 'number'
      ? `${entryText(value, unit, units)} ${entryUnit(unit, units)}`.trim()
      : typeof value === 'string'
        ? choiceWord(value)
        : 'nothing';
  return `${label.charAt(0).toLowerCase()}${label.slice(1)} ${word(before)} → ${word(after)}`;
}
