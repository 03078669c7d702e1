import { expect, test } from 'vitest';
import { entryAt, solve, type Design } from '../../core';
import { valueAt, withValueAt } from '../../renderer/path';
import { coilHandles, gapHandles, pitchHandles } from '../../renderer/worksheets/handles';
import { demo } from '../demo';

const handlesOf = (design: Design) => [...pitchHandles(design), ...coilHandles(design), ...gapHandles(design, solve(design))];

for (const name of ['hill-cabin', 'shed-light', 'farm-tracker'])
  test(`every handle of ${name} holds an entry, and moves with it as far as a drag says`, () => {
    const design = demo(name);
    const handles = handlesOf(design);
    expect(handles.length).toBeGreaterThanOrEqual(5);
    for (const { path, value, at, along, perMm } of handles) {
      expect([path, entryAt(path, design)?.number !== undefined, valueAt(design, path)]).toEqual([path, true, value]);
      expect(Math.hypot(...along)).toBeCloseTo(1, 12);
      // A millimetre further along its line is where the handle stands once the entry has grown by what a millimetre is worth.
      const moved = handlesOf(withValueAt(design, path, value + 0.1 * perMm)).find((h) => h.path === path);
      expect([path, moved?.at[0], moved?.at[1]]).toEqual([
        path,
        expect.closeTo(at[0] + 0.1 * along[0], 6),
        expect.closeTo(at[1] + 0.1 * along[1], 6),
      ]);
    }
  });
