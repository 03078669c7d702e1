import type { Design } from '../design/schema';
import type { WindingResult } from '../winding/stage';
import { frameFaults, placedOn, windableTurns } from './bounds';
import { searchSpace, type Candidate, type Frame, type SearchSpace, type Winding } from './space';

/** A piece of a search that one worker takes at a time: windings on one frame, all turns. */
export interface Unit {
  frame: Frame;
  windings: Winding[];
}

/** Where more than this many frames are searched a frame stays whole, so that only one worker works its field out. */
const MANY_FRAMES = 24;

/** The whole search in pieces, always the same and in the same order, field-sharing pieces together. */
export function unitsOf(space: SearchSpace): Unit[] {
  const apart = space.frames.length < MANY_FRAMES;
  return space.frames.flatMap((frame) => {
    const windings = space.windings(frame);
    return apart ? windings.map((winding) => ({ frame, windings: [winding] })) : [{ frame, windings }];
  });
}

/** Machines of a piece, those ruled out counted. */
export const sizeOf = ({ turns }: SearchSpace, { windings }: Unit): number => windings.length * turns.length;

/** Every machine of the space. */
export const spaceSize = (space: SearchSpace): number =>
  space.frames.reduce((sum, frame) => sum + space.windings(frame).length * space.turns.length, 0);

/** Machines a design's own search entries span. */
export const searchSize = (design: Design): number => spaceSize(searchSpace(design));

/** What ruled machines out before anything was solved. */
export interface Pruned {
  /** Magnets, coils or legs that do not go side by side, or coils that do not share out. */
  frame: number;
  /** Turns that do not go into the leg. */
  fit: number;
  /** Turns that the reel is too short for. */
  reel: number;
}

/** The machines of a piece that can be wound, fewest turns first. Those that cannot are counted in `pruned`. */
export function* candidatesOf(space: SearchSpace, { frame, windings }: Unit, pruned: Pruned): Generator<Candidate> {
  // Where the copper lies goes with the frame and the paths alone.
  const frames = new Map<number, { placed: WindingResult; faulty: boolean }>();
  for (const winding of windings) {
    let known = frames.get(winding.parallelPaths);
    if (!known) {
      const { design, placed } = placedOn(space, frame, winding);
      known = { placed, faulty: frameFaults(design, placed, space.magnetsInHand).length > 0 };
      frames.set(winding.parallelPaths, known);
    }
    if (known.faulty) {
      pruned.frame += space.turns.length;
      continue;
    }
    const { count, shortOfWire } = windableTurns(space, frame, winding, known.placed);
    pruned.reel += shortOfWire;
    pruned.fit += space.turns.length - count - shortOfWire;
    for (const turns of space.turns.slice(0, count)) yield { ...frame, ...winding, turns };
  }
}
