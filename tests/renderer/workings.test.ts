import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { blankDesign, type Design, entryQuantities, parseDesign, solve, workingLines, workingsOf } from '../../core';
import { valueAt } from '../../renderer/path';
import { worksheets } from '../../renderer/worksheets/registry';

const demo = (name: string): Design => {
  const parsed = parseDesign(readFileSync(new URL(`../../assets/${name}.gapwright`, import.meta.url), 'utf8'));
  if (!parsed.ok) throw new Error(`the demo ${name} does not open`);
  return parsed.design;
};

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
