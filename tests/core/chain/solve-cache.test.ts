import { expect, test } from 'vitest';
import { solve } from '../../../core/chain/solve';
import { createStageCache } from '../../../core/chain/stage-cache';
import type { Design } from '../../../core/design/schema';
import { demo } from '../../demo';

const demos = ['shed-light', 'hill-cabin', 'farm-tracker'];
const edits: Record<string, (design: Design) => Design> = {
  turns: (d) => ({ ...d, winding: { ...d.winding, turns: d.winding.turns + 1 } }),
  wire: (d) => ({ ...d, winding: { ...d.winding, wire: { ...d.winding.wire, inHand: d.winding.wire.inHand + 1 } } }),
  load: (d) => ({ ...d, load: { kind: 'resistor', resistance: 3 } }),
};
const heavy = ['field', 'linkage', 'inductance'];

test.each(demos.flatMap((name) => Object.keys(edits).map((edit) => [name, edit])))(
  '%s: an edit of the %s re-works nothing of field, linkage shape or inductance shape',
  (name, edit) => {
    const design = demo(name);
    const cache = createStageCache();
    solve(design, cache);
    solve(edits[edit](design), cache);
    expect(heavy.map((stage) => cache.worked[stage])).toEqual([1, 1, 1]);
    expect(cache.worked.curve).toBe(2);
  },
);
