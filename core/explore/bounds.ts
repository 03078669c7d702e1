import type { Design } from '../design/schema';
import { geometryProblems } from '../design/geometry';
import { discCautions } from '../field/discs';
import type { Problem } from '../problem';
import { windingStage, type WindingResult } from '../winding/stage';
import { wireStage } from '../wire/stage';
import { designOf } from './geometry';
import type { Frame, SearchSpace, Winding } from './space';

/** Why nothing can be built on a frame, whatever is wound on it: asked of the stages themselves, before any field is worked out. */
export function frameFaults(design: Design, placed: WindingResult, magnetsInHand: number): Problem[] {
  const { discs, magnets } = design;
  const needed = discs.poles * (discs.arrangement === 'facing-pair' ? 2 : 1);
  const short = needed > magnetsInHand ? [{ where: 'discs.poles', message: `Needs ${needed} magnets; ${magnetsInHand} are in hand.` }] : [];
  const dangers = [...discCautions(magnets.shape, discs), ...placed.cautions].filter(({ severity }) => severity === 'danger');
  return [...short, ...geometryProblems(design), ...dangers.map(({ where, message }) => ({ where, message }))];
}

/** How many of a search's turns can be wound: those that go in by hand and that the reel is enough for. */
export interface Windable {
  /** How many of the space's turns, from the least, can be wound. */
  count: number;
  /** How many more would go in if the reel were longer. */
  shortOfWire: number;
}

/**
 * The turns of a winding on a frame, pruned by the wire stage itself. Both the space taken and the wire needed grow with every turn, so the first turn
 * that does not go in, or that the reel is not enough for, rules out all above it.
 */
export function windableTurns({ base, turns }: SearchSpace, frame: Frame, winding: Winding, placed: WindingResult): Windable {
  const design = designOf(base, { ...frame, ...winding, turns: turns[0] });
  let enough = 0;
  let fitting = 0;
  for (const count of turns) {
    const { fits, wireMass } = wireStage({ ...design.winding, turns: count }, design.winding.wire, placed);
    if (!fits) break;
    fitting++;
    if (wireMass <= winding.reel.mass) enough++;
  }
  return { count: enough, shortOfWire: fitting - enough };
}

/** Where the copper lies, for any number of turns. */
export function placedOn({ base, turns }: SearchSpace, frame: Frame, winding: Winding): { design: Design; placed: WindingResult } {
  const design = designOf(base, { ...frame, ...winding, turns: turns[0] });
  return { design, placed: windingStage(design.winding, design.discs.poles) };
}
