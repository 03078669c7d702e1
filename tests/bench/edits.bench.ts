import { solve } from '../../core/chain/solve';
import { createStageCache } from '../../core/chain/stage-cache';
import type { Design } from '../../core/index';
import { demo } from '../demo';

/** One frame of a screen. [ms] */
const FRAME = 16.7;

/** Edits in 20 steps, more than the cache keeps: each makes a design that it does not know, or no longer. */
const STEPS = 20;
const edits: Record<string, (design: Design, step: number) => Design> = {
  turns: (d, step) => ({ ...d, winding: { ...d.winding, turns: d.winding.turns + step } }),
  wire: ({ winding, ...d }, step) => {
    const conductorDiameter = winding.wire.conductorDiameter * (1 - step / 200);
    return { ...d, winding: { ...winding, wire: { ...winding.wire, conductorDiameter } } };
  },
  load: (d, step) => ({ ...d, load: d.load.kind === 'battery' ? { ...d.load, voltage: d.load.voltage * (1 + step / 400) } : d.load }),
  gap: (d, step) => ({ ...d, discs: { ...d.discs, runningClearance: d.discs.runningClearance * (1 + step / 100) } }),
};

/** A warm solver, asked each time for a design it does not know: what one keystroke costs. */
function edited(name: string, edit: keyof typeof edits) {
  const design = demo(name);
  const cache = createStageCache();
  solve(design, cache);
  let step = 0;
  const run = () => solve(edits[edit](design, 1 + (step++ % STEPS)), cache);
  const note = () => {
    const before = { ...cache.worked };
    run();
    return `works out ${Object.keys(cache.worked)
      .filter((stage) => cache.worked[stage] > before[stage])
      .join(', ')}`;
  };
  return { name: `edit of the ${edit}, ${name}`, run, note, budgetMs: FRAME };
}

export default [
  ...Object.keys(edits).map((edit) => edited('hill-cabin', edit)),
  ...['shed-light', 'farm-tracker'].flatMap((name) => ['turns', 'gap'].map((edit) => edited(name, edit))),
];
