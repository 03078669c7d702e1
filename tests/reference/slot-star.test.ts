import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { isBalanced, phasePhasors, slotStar, unbalanceOf, windingFactors } from '../../core/winding/slot-star';

// slot-star.csv: published tables, three digits. See slot-star.source.md.
const rows = readFileSync(new URL('slot-star.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(',').map(Number) as [phases: number, coils: number, poles: number, factor: number]);

test.each(rows)('%d phases, %d coils, %d poles: winding factor %d as published', (phases, coils, poles, factor) => {
  expect(Math.abs(windingFactors(coils, poles / 2, phases).winding - factor)).toBeLessThan(0.0006);
  expect(isBalanced(coils, poles / 2, phases)).toBe(true);
  expect(unbalanceOf(phasePhasors(slotStar(coils, poles / 2, phases), phases))).toBeLessThan(1e-9);
});

test('twelve coils with ten poles are joined A −A B −B … as every textbook shows', () => {
  // Two neighbours a phase, the second reversed, then the next phase's reversed pair: A a b B C c a A B b c C.
  const letters = slotStar(12, 5, 3).map(({ phase, direction }) => {
    const letter = 'ABC'.charAt(phase - 1);
    return direction === 1 ? letter : letter.toLowerCase();
  });
  const expected = 'AabBCcaABbcC';
  const turns = Array.from({ length: 12 }, (_, k) => letters.slice(k).concat(letters.slice(0, k)).join(''));
  const swapped = expected.replace(/./g, (c) => (c === c.toLowerCase() ? c.toUpperCase() : c.toLowerCase()));
  expect(turns.some((word) => [expected, swapped].includes(relabelled(word)))).toBe(true);
});

/** The same order with whichever phase comes first called A, its sense as it stands. */
function relabelled(word: string): string {
  const names = [...new Set(word.toUpperCase())];
  return word.replace(/./g, (c) => {
    const name = 'ABC'.charAt(names.indexOf(c.toUpperCase()));
    return c === c.toLowerCase() ? name.toLowerCase() : name;
  });
}

test.each([
  [3, 10, 8],
  [3, 12, 12],
  [3, 6, 6],
  [3, 9, 18],
  [5, 12, 10],
])('%d phases cannot be even with %d coils and %d poles', (phases, coils, poles) => {
  expect(isBalanced(coils, poles / 2, phases)).toBe(false);
  expect(unbalanceOf(phasePhasors(slotStar(coils, poles / 2, phases), phases))).toBeGreaterThan(0.01);
});
