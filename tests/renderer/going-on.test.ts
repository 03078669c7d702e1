import { expect, test } from 'vitest';
import { entryQuantities, type Design, type EntryPath } from '../../core';
import { valueAt, withValueAt } from '../../renderer/path';
import { parse } from '../../renderer/reading';
import { goingOn } from '../../renderer/state/going-on';
import { entryStep, entryText, type UnitPreferences } from '../../renderer/units';
import { demo } from '../demo';

const metric: UnitPreferences = { length: 'mm', wire: 'metric', temperature: 'C' };
const imperial: UnitPreferences = { length: 'in', wire: 'awg', temperature: 'F' };
const cabin = demo('hill-cabin');

/** As an arrow key does: the value in the box's unit, a step on, read again. */
function stepped(design: Design, path: EntryPath, units: UnitPreferences, share: number): Design {
  const { unit } = entryQuantities[path];
  const value = valueAt(design, path) as number;
  const read = parse(entryText(value + share * entryStep(value, unit, units), unit, units), unit, units);
  if (!read.ok) throw new Error(read.message);
  return withValueAt(design, path, read.value);
}

test.each([
  ['discs.runningClearance', metric, 0.1],
  ['discs.runningClearance', metric, 1],
  ['discs.runningClearance', imperial, 1],
  ['winding.turns', metric, 1],
  ['winding.turns', metric, -10],
  ['discs.pitchRadius', metric, 0.1],
  ['surroundings.airTemperature', metric, 1],
  ['site.meanWind', metric, -0.1],
] as const)('a held key on %s (%j, %d steps) meets what was worked out ahead', (path, units, share) => {
  // The first step brings a value on to the digits of the box.
  const designs = [stepped(cabin, path, units, share)];
  for (let i = 0; i < 6; i++) designs.push(stepped(designs[i], path, units, share));
  for (let i = 1; i < 5; i++) expect(goingOn(designs[i - 1], designs[i], designs[i + 1])).toEqual(designs[i + 2]);
});

test('nothing is worked out ahead when steps differ, turn back, are of two entries, or are no numbers', () => {
  const turns = (n: number, design = cabin) => withValueAt(design, 'winding.turns', n);
  expect(goingOn(turns(60), turns(61), turns(63))).toBeUndefined();
  expect(goingOn(turns(60), turns(61), turns(60))).toBeUndefined();
  expect(goingOn(turns(60), turns(61), turns(61))).toBeUndefined();
  expect(goingOn(turns(60), turns(61), turns(62, { ...cabin, title: 'Another' }))).toBeUndefined();
  expect(goingOn(cabin, { ...cabin, title: 'A' }, { ...cabin, title: 'B' })).toBeUndefined();
  expect(goingOn(turns(60), turns(61), withValueAt(turns(61), 'site.meanWind', 9))).toBeUndefined();
  expect(goingOn(turns(60), turns(61), turns(62))).toEqual(turns(63));
});
