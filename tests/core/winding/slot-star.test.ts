import { expect, test } from 'vitest';
import { isBalanced, nearestBalanced, phaseAngle, phasePhasors, slotStar, unbalanceOf } from '../../../core/winding/slot-star';

test('whatever the textbook calls balanced comes out even, for one to six phases', () => {
  for (let phases = 1; phases <= 6; phases++)
    for (let pairs = 2; pairs <= 14; pairs++)
      for (let coils = phases; coils <= 48; coils += phases) {
        if (!isBalanced(coils, pairs, phases)) continue;
        const star = slotStar(coils, pairs, phases);
        const unbalance = unbalanceOf(phasePhasors(star, phases));
        expect(unbalance, `${coils} coils, ${2 * pairs} poles, ${phases} phases`).toBeLessThan(1e-9);
        for (let phase = 1; phase <= phases; phase++) expect(star.filter((coil) => coil.phase === phase)).toHaveLength(coils / phases);
      }
});

test('two phases stand at a right angle, others share the circle', () => {
  expect(phaseAngle(2, 2)).toBeCloseTo(Math.PI / 2);
  expect(phaseAngle(2, 3)).toBeCloseTo((2 * Math.PI) / 3);
  expect(phaseAngle(6, 6)).toBeCloseTo((5 * Math.PI) / 3);
});

test('nine coils with twelve poles need no coil reversed and take the phases in turn', () => {
  const star = slotStar(9, 6, 3);
  expect(star.map(({ direction }) => direction)).toEqual(new Array(9).fill(1));
  expect(new Set(star.slice(0, 3).map(({ phase }) => phase)).size).toBe(3);
  expect(star.slice(3, 6).map(({ phase }) => phase)).toEqual(star.slice(0, 3).map(({ phase }) => phase));
});

test('six phases can be had from three directions by reversing half of the coils', () => {
  const star = slotStar(12, 4, 6);
  expect(unbalanceOf(phasePhasors(star, 6))).toBeLessThan(1e-9);
});

test('an odd number of coils still gets every coil a phase', () => {
  const star = slotStar(10, 4, 3);
  expect(star).toHaveLength(10);
  expect(star.every(({ phase }) => phase >= 1 && phase <= 3)).toBe(true);
});

test('fewer coils than phases leave phases empty and say so in the unbalance', () => {
  expect(unbalanceOf(phasePhasors(slotStar(2, 4, 3), 3))).toBeGreaterThan(0.5);
});

test('suggestions balance and name their poles', () => {
  const found = nearestBalanced(10, 12, 3);
  expect(found.length).toBeGreaterThan(0);
  for (const words of found) {
    const [coils, poles] = (words.match(/\d+/g) ?? []).map(Number) as [number, number];
    expect(isBalanced(coils, poles / 2, 3)).toBe(true);
  }
  expect(found[0]).toBe('9 coils with 12 poles');
});
