import { expect, test } from 'vitest';
import { yearAdvice, yearVariants } from '../../../core/explore/year-variants';
import { blankDesign, createSolver } from '../../../core/index';

const blank = blankDesign();

test('turns are whole and the design’s own, one more and one fewer among them', () => {
  const turns = yearVariants(blank).filter(({ of }) => of === 'turns');
  const own = blank.winding.turns;
  expect(turns.map(({ value }) => value)).toEqual(expect.arrayContaining([own - 1, own, own + 1, 2 * own]));
  for (const { value, design } of turns) expect([design.winding.turns, Number.isInteger(value)]).toEqual([value, true]);
});

test('a single turn has no fewer, and a load without a voltage of its own only turns', () => {
  const one = yearVariants({ ...blank, winding: { ...blank.winding, turns: 1 }, load: { kind: 'resistor', resistance: 2 } });
  expect(one.map(({ of, value }) => [of, value])).toEqual([
    ['turns', 1],
    ['turns', 2],
  ]);
});

test('one more is the slope at the own value, the best is the highest', () => {
  // 10·(12 − 10)/(11 − 9) by neighbours: (120 − 100)/2 = 10 a turn.
  const curve = [
    { value: 9, energy: 100 },
    { value: 10, energy: 112 },
    { value: 11, energy: 120 },
    { value: 20, energy: 90 },
  ];
  expect(yearAdvice(curve, 10, 1)).toEqual({ own: 112, oneMore: 10, best: { value: 11, energy: 120 } });
  expect(yearAdvice(curve, 20, 1)!.oneMore).toBeCloseTo(-30 / 9, 9);
  expect(yearAdvice(curve, 15, 1)).toBeUndefined();
});

test('what is called best does bring more than the design when it is solved', () => {
  const solver = createSolver();
  // Twice the turns than suit: fewer bring more.
  const design = { ...blank, winding: { ...blank.winding, turns: 2 * blank.winding.turns } };
  const curve = yearVariants(design)
    .filter(({ of }) => of === 'turns')
    .map(({ value, design: variant }) => ({ value, energy: solver(variant).year.energy }));
  const { own, best, oneMore } = yearAdvice(curve, design.winding.turns, 1)!;
  expect(best.energy).toBeGreaterThan(own);
  expect(best.value).toBeLessThan(design.winding.turns);
  expect(oneMore).toBeLessThan(0);
});
