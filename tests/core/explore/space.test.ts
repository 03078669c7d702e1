import { describe, expect, test } from 'vitest';
import { readDesign } from '../../../core/design/parse';
import { candidatesOf, spaceSize, unitsOf } from '../../../core/explore/candidates';
import { designOf, layoutOf } from '../../../core/explore/geometry';
import { defaultSearch, searchSpace, valuesOf, type Frame } from '../../../core/explore/space';
import { roomBetweenCoils } from '../../../core/winding/concentrated';
import { windingStage } from '../../../core/winding/stage';
import { demo } from '../../demo';

const cabin = demo('hill-cabin');
const { layout } = cabin.winding;
if (layout.kind !== 'concentrated') throw new Error('the demo was one with separate coils');
const frame: Frame = {
  poles: cabin.discs.poles,
  pitchRadius: cabin.discs.pitchRadius,
  thickness: cabin.winding.thickness,
  runningClearance: cabin.discs.runningClearance,
  layout: 'concentrated',
  coils: layout.coils,
  phases: 3,
};
const everything = {
  poles: { from: 8, to: 16, step: 4 },
  pitchRadius: { from: 0.12, to: 0.14, step: 0.01 },
  thickness: { from: 0.008, to: 0.012, step: 0.002 },
  runningClearance: { from: 0.001, to: 0.002, step: 0.0005 },
  layouts: ['concentrated' as const, 'stacked' as const, 'interleaved' as const],
  coils: { from: 6, to: 12, step: 3 },
  phases: { from: 1, to: 3, step: 2 },
  parallelPaths: { from: 1, to: 3, step: 1 },
  connections: ['star' as const, 'delta' as const, 'separate' as const],
  inHand: { from: 1, to: 3, step: 1 },
  turns: { from: 10, to: 90, step: 20 },
};

test('a range is its values from one end to the other', () => {
  expect(valuesOf({ from: 0.001, to: 0.002, step: 0.0005 }, 7)).toEqual([0.001, 0.0015, 0.002]);
  expect(valuesOf({ from: 3, to: 10, step: 4 }, 7)).toEqual([3, 7]);
  expect(valuesOf(undefined, 7)).toEqual([7]);
});

test('where nothing about the frame changes the layout is the design’s own', () => {
  expect(layoutOf(cabin, frame)).toBe(layout);
});

test('moved out and with more coils, coils stand as close as they did', () => {
  const moved = layoutOf(cabin, { ...frame, pitchRadius: 0.15, coils: 12 });
  if (moved.kind !== 'concentrated') throw new Error('separate coils were asked for');
  expect(roomBetweenCoils(moved)).toBeCloseTo(roomBetweenCoils(layout) ?? NaN, 12);
  expect(moved.holeInnerRadius - layout.holeInnerRadius).toBeCloseTo(0.023, 12);
});

test('every machine of a wide space is a design the file takes, and its winding goes side by side', { timeout: 30_000 }, () => {
  const space = searchSpace({ ...cabin, search: everything });
  const units = unitsOf(space);
  let seen = 0;
  for (let k = 0; k < units.length; k += 17)
    for (const candidate of candidatesOf(space, units[k], { frame: 0, fit: 0, reel: 0 })) {
      if (candidate.turns !== 10) continue;
      const design = designOf(cabin, candidate);
      const read = readDesign(design);
      expect(read.ok ? [] : read.problems).toEqual([]);
      expect(windingStage(design.winding, design.discs.poles).cautions.filter(({ severity }) => severity === 'danger')).toEqual([]);
      seen++;
    }
  expect(seen).toBeGreaterThan(100);
});

test('machines and those ruled out add up to the whole space, none twice', () => {
  const space = searchSpace({
    ...cabin,
    search: { ...everything, pitchRadius: undefined, thickness: undefined, runningClearance: undefined },
  });
  const pruned = { frame: 0, fit: 0, reel: 0 };
  const names = unitsOf(space).flatMap((unit) => [...candidatesOf(space, unit, pruned)].map((candidate) => JSON.stringify(candidate)));
  expect(new Set(names).size).toBe(names.length);
  expect(names.length + pruned.frame + pruned.fit + pruned.reel).toBe(spaceSize(space));
  expect(pruned.frame * pruned.fit * pruned.reel).toBeGreaterThan(0);
});

describe('what a search takes from the design', () => {
  test('without search entries: reels, hands, turns and connection', () => {
    const space = searchSpace(cabin);
    expect(space.frames).toEqual([frame]);
    expect(space.windings(frame)).toHaveLength(2 * 2 * 4);
    expect(space.turns[0]).toBe(10);
    expect(space.turns.at(-1)).toBe(90);
    expect(defaultSearch(cabin).limits?.temperatureMargin).toBe(0);
  });

  test('without a shelf, the design’s own wire', () => {
    const space = searchSpace({ ...cabin, shelf: [] });
    expect(space.windings(frame)[0].reel).toMatchObject({ conductorDiameter: 0.0016, mass: Infinity });
  });

  test('one phase has one connection', () => {
    const space = searchSpace({ ...cabin, search: { connections: ['star', 'delta'], phases: { from: 1, to: 1, step: 1 } } });
    expect(space.windings(space.frames[0])).toHaveLength(2);
  });
});

test.each([
  [{ turns: { from: 20, to: 10, step: 1 } }, 'search.turns.to'],
  [{ pitchRadius: { from: 0.1, to: 1.2, step: 0.0001 } }, 'search.pitchRadius.step'],
  [{ connections: [] }, 'search.connections'],
])('the file refuses %j and names %s', (search, where) => {
  const read = readDesign({ ...cabin, search });
  expect(read.ok ? [] : read.problems.map((problem) => problem.where)).toEqual([where]);
});
