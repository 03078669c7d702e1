import { describe, expect, test } from 'vitest';
import { blankDesign, type Design, entryQuantities, solve, workingLines, workingsOf } from '../../core';
import { valueAt } from '../../renderer/path';
import { worksheets } from '../../renderer/worksheets/registry';
import { demo } from '../demo';

const designs: [string, Design][] = [
  ['blank', blankDesign()],
  ...['hill-cabin', 'shed-light', 'farm-tracker'].map((name): [string, Design] => [name, demo(name)]),
];
const listed = worksheets.flatMap((w) => w.groups.flatMap((g) => g.entries));

describe.each(designs)('%s', (_name, design) => {
  const results = solve(design);
  const workings = workingsOf(design, results).flatMap((group) => group.workings);

  test.each(worksheets.map((w) => [w.title, w.results] as const))('%s: every result opens to its working', (_title, paths) => {
    const shown = paths.filter((path) => valueAt(results, path) !== undefined);
    expect(shown.filter((path) => !workings.some(({ result }) => result === path))).toEqual([]);
  });

  test('every input of a working leads to a box of a worksheet, or to another working', () => {
    for (const working of workings) {
      const named = [...(working.from ?? []), ...workingLines(working, String).terms.flatMap((term) => term.path ?? [])];
      const lost = named.filter((path) =>
        path in entryQuantities
          ? !listed.some((entry) => entry === path || entry.startsWith(`${path}.`))
          : !workings.some(({ result }) => result === path),
      );
      expect([working.result, lost]).toEqual([working.result, []]);
    }
  });
});
