import { defaultSearch, type Design } from '../../../core';
import { designStore, editEntry } from '../../state/design';

export type Search = NonNullable<Design['search']>;

/** Ranges a search may run through, each beside the entry that it varies. */
export const axes = [
  { key: 'turns', entry: 'winding.turns' },
  { key: 'inHand', entry: 'winding.wire.inHand' },
  { key: 'parallelPaths', entry: 'winding.parallelPaths' },
  { key: 'coils', entry: 'winding.layout.coils' },
  { key: 'phases', entry: 'winding.phases' },
  { key: 'poles', entry: 'discs.poles' },
  { key: 'pitchRadius', entry: 'discs.pitchRadius' },
  { key: 'thickness', entry: 'winding.thickness' },
  { key: 'runningClearance', entry: 'discs.runningClearance' },
] as const satisfies readonly { key: keyof Search; entry: string }[];

export type AxisKey = (typeof axes)[number]['key'];

export const searchOf = (design: Design): Search => design.search ?? defaultSearch(design);

/** Changes the search from what it is now; `typed` steps merge into one until the box is left. */
export function editSearch(change: (search: Search) => Search, typed = false): void {
  const next = Object.entries(change(searchOf(designStore.getState().design))).filter(([, value]) => value !== undefined);
  editEntry('search', Object.fromEntries(next), () => 'what the search looks for', typed);
}
