import { createSolver, type Design } from '../../core/index';
import { demo } from './demo';

let step = 0;
/** A warm solver, asked each time for a design it has not seen: what one keystroke costs. */
function edit(name: string, change: (design: Design, step: number) => Design): () => void {
  const design = demo(name);
  const solve = createSolver();
  solve(design);
  return () => {
    solve(change(design, ++step));
  };
}

const turns = (design: Design, by: number): Design => ({ ...design, winding: { ...design.winding, turns: 20 + (by % 400) } });
const gap = (design: Design, by: number): Design => ({ ...design, discs: { ...design.discs, runningClearance: 0.001 + by * 1e-7 } });

export default ['shed-light', 'hill-cabin', 'farm-tracker'].flatMap((name) => [
  { name: `edit of turns, ${name}`, run: edit(name, turns) },
  { name: `edit of the gap, ${name}`, run: edit(name, gap) },
]);
