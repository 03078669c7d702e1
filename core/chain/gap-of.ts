import type { Design } from '../design/schema';
import { gapLength } from '../field/gap';

/** Magnet face to magnet face, as the pipeline has it. [m] */
export function gapOf({ discs, winding }: Pick<Design, 'discs' | 'winding'>): number {
  const { layout, thickness, skin, phases } = winding;
  const stacked = layout.kind === 'serpentine' && layout.placement === 'stacked';
  return gapLength({ thickness, phases, stacked, skin, runningClearance: discs.runningClearance });
}
