import type { Design } from '../design/schema';
import type { SearchLayout, SearchSection } from '../design/search';
import type { Reel } from '../design/shelf';
import { shapeModel } from '../magnets/shapes';

export interface Range {
  from: number;
  to: number;
  step: number;
}

/** All that decides the field and where the copper lies: machines of one frame share every stage up to the coils. */
export interface Frame {
  poles: number;
  pitchRadius: number;
  thickness: number;
  runningClearance: number;
  layout: SearchLayout;
  coils: number;
  phases: number;
}

/** What is wound on a frame, but for the turns. */
export interface Winding {
  parallelPaths: number;
  connection: Design['winding']['connection'];
  reel: Reel;
  inHand: number;
}

/** One machine of the search. */
export interface Candidate extends Frame, Winding {
  turns: number;
}

/** Where the search looks: frames in the order in which field-sharing machines come together, and what each may be wound with. */
export interface SearchSpace {
  base: Design;
  frames: Frame[];
  windings(frame: Frame): Winding[];
  turns: number[];
  magnetsInHand: number;
}

/** Where nothing else is asked, turns are looked for from a third to three times the design's, in at most so many steps. */
const TURNS_STEPS = 60;
const MOST_IN_HAND = 4;

/** What a design lets a search vary where it does not say so itself: reels, wires in hand, turns, connection. */
export function defaultSearch({ winding }: Pick<Design, 'winding'>): SearchSection {
  const [from, to] = [Math.max(1, Math.round(winding.turns / 3)), Math.min(5000, 3 * winding.turns)];
  return {
    connections: winding.phases > 1 ? ['star', 'delta'] : [winding.connection],
    inHand: { from: 1, to: MOST_IN_HAND, step: 1 },
    turns: { from, to, step: Math.max(1, Math.ceil((to - from) / TURNS_STEPS)) },
    limits: { temperatureMargin: 0, controllerMargin: 0 },
  };
}

/** The space a design's own search entries span. Without reels on the shelf the design's wire is taken, as much as it needs. */
export function searchSpace(design: Design): SearchSpace {
  const search = design.search ?? defaultSearch(design);
  const { magnets, discs, winding, shelf } = design;
  const { layout } = winding;
  const own: SearchLayout = layout.kind === 'serpentine' ? layout.placement : 'concentrated';
  const coils = valuesOf(search.coils, layout.kind === 'concentrated' ? layout.coils : usualCoils(discs.poles));
  // Sectors are drawn about the axle and do not move out.
  const { onAxle } = shapeModel(magnets.shape);
  const frames: Frame[] = [];
  for (const poles of valuesOf(search.poles, discs.poles))
    for (const pitchRadius of valuesOf(onAxle ? undefined : search.pitchRadius, discs.pitchRadius))
      for (const thickness of valuesOf(search.thickness, winding.thickness))
        for (const runningClearance of valuesOf(search.runningClearance, discs.runningClearance))
          for (const kind of search.layouts ?? [own])
            for (const count of kind === 'concentrated' ? coils : coils.slice(0, 1))
              for (const phases of valuesOf(search.phases, winding.phases)) {
                // One ring has nothing to lie on or beside: both ways are the same machine.
                if (kind === 'interleaved' && phases === 1 && (search.layouts ?? []).includes('stacked')) continue;
                frames.push({ poles, pitchRadius, thickness, runningClearance, layout: kind, coils: count, phases });
              }
  const reels = shelf?.length ? shelf : [ownReel(design)];
  return {
    base: design,
    frames,
    turns: valuesOf(search.turns, winding.turns),
    magnetsInHand: search.magnetsInHand ?? Infinity,
    windings: ({ phases }) => {
      const connections = search.connections ?? [winding.connection];
      return valuesOf(search.parallelPaths, winding.parallelPaths).flatMap((parallelPaths) =>
        // One phase has no star or delta: all connections are the same machine.
        connections
          .slice(0, phases === 1 ? 1 : undefined)
          .flatMap((connection) =>
            reels.flatMap((reel) =>
              valuesOf(search.inHand, winding.wire.inHand).map((inHand): Winding => ({ parallelPaths, connection, reel, inHand })),
            ),
          ),
      );
    },
  };
}

/** The values of an axis, rising; one, as the design is, where it does not vary. */
export function valuesOf(range: Range | undefined, own: number): number[] {
  if (!range) return [own];
  const count = Math.floor((range.to - range.from) / range.step + 1e-9) + 1;
  return Array.from({ length: count }, (_, i) => Number((range.from + i * range.step).toPrecision(12)));
}

function ownReel({ winding: { wire } }: Design): Reel {
  const { metal, conductorDiameter, overallDiameter } = wire;
  return { label: 'The design’s own wire', metal, conductorDiameter, overallDiameter, mass: Infinity };
}

/** Three coils to four poles, the usual three-phase machine. Common practice, no source. */
const usualCoils = (poles: number) => Math.max(3, 3 * Math.round(poles / 4));
