import type { Design, Reel, Results } from '../../../core';
import { solveAside } from '../../state/results';

export interface Candidate {
  reel: Reel;
  inHand: number;
  turns: number;
  results: Results;
  /** Whether the reel holds enough. */
  enough: boolean;
  /** In the reels' own money, where the reel has a price. */
  cost?: number;
}

const MOST_IN_HAND = 4;
const MOST_TURNS = 5000; // as the design file allows

/** Every reel with one to four wires in hand, at the most turns that fit, fully worked out. Calls `found` as it goes; stops when `stopped`. */
export async function searchShelf(design: Design, found: (candidate: Candidate) => void, stopped: () => boolean): Promise<void> {
  for (const reel of design.shelf ?? [])
    for (let inHand = 1; inHand <= MOST_IN_HAND; inHand++) {
      if (stopped()) return;
      const candidate = await mostTurns(design, reel, inHand);
      if (candidate && !stopped()) found(candidate);
    }
}

/** The design wound from this reel. */
export function wound(design: Design, reel: Reel, inHand: number, turns: number): Design {
  const { metal, conductorDiameter, overallDiameter } = reel;
  const wire = { ...design.winding.wire, metal, conductorDiameter, overallDiameter, inHand };
  return { ...design, winding: { ...design.winding, wire, turns } };
}

async function mostTurns(design: Design, reel: Reel, inHand: number): Promise<Candidate | undefined> {
  const full = await solveAside(wound(design, reel, inHand, MOST_TURNS));
  if (!full.ok) return undefined;
  const turns = MOST_TURNS - full.results.stages.wire.turnsTooMany;
  if (turns < 1) return undefined;
  const answer = turns === MOST_TURNS ? full : await solveAside(wound(design, reel, inHand, turns));
  if (!answer.ok) return undefined;
  const { results } = answer;
  const mass = results.coils.wireMass;
  return { reel, inHand, turns, results, enough: mass <= reel.mass, ...(reel.price !== undefined && { cost: mass * reel.price }) };
}
