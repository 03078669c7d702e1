import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { solve } from '../../../core/chain/solve';
import { createStageCache } from '../../../core/chain/stage-cache';
import { parseDesign } from '../../../core/design/parse';
import type { Design } from '../../../core/design/schema';

const demos = ['shed-light', 'hill-cabin', 'farm-tracker'];
const edits: Record<string, (design: Design) => Design> = {
  turns: (d) => ({ ...d, winding: { ...d.winding, turns: d.winding.turns + 1 } }),
  wire: (d) => ({ ...d, winding: { ...d.winding, wire: { ...d.winding.wire, inHand: d.winding.wire.inHand + 1 } } }),
  load: (d) => ({ ...d, load: { kind: 'resistor', resistance: 3 } }),
};
const heavy = ['field', 'linkage', 'inductance'];

test.each(demos.flatMap((demo) => Object.keys(edits).map((edit) => [demo, edit])))(
  '%s: an edit of the %s re-works nothing of field, linkage shape or inductance shape',
  (demo, edit) => {
    const parsed = parseDesign(readFileSync(new URL(`../../../assets/${demo}.gapwright`, import.meta.url), 'utf8'));
    if (!parsed.ok) throw new Error(`the demo ${demo} does not open`);
    const cache = createStageCache();
    solve(parsed.design, cache);
    solve(edits[edit](parsed.design), cache);
    expect(heavy.map((stage) => cache.worked[stage])).toEqual([1, 1, 1]);
    expect(cache.worked.curve).toBe(2);
  },
);
