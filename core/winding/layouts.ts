import { concentrated } from './concentrated';
import type { Layout } from './section';
import { serpentine } from './serpentine';
import type { PathPiece } from './stage';

type Of<K extends Layout['kind']> = Extract<Layout, { kind: K }>;
export type Point = [x: number, y: number];
export type Edge = [from: Point, to: Point];
/** Corners as wire lies round them, or square as the field is worked out. */
export type Corners = 'rounded' | 'mitred';

/** What the later stages need of a way of laying the turns. Offsets run from 0, the innermost turn, to the leg width. */
export interface LayoutModel<L> {
  /** Coils that make a machine of so many phases. */
  count(layout: L, phases: number): number;
  /** Layers of copper one above the other. */
  layers(layout: L, phases: number): number;
  /** Radii between which the legs of the hole run, as a textbook takes their length. [m] */
  legRadii(layout: L): [inner: number, outer: number];
  /** Poles of one sense that one turn links: one for a coil, every one for a ring. */
  polesLinked(polePairs: number): number;
  /** Radii between which copper lies, corners mitred. [m] */
  extent(layout: L): [inner: number, outer: number];
  /** One closed turn, counter-clockwise: rounded, as for drawings and the length of wire, or mitred, as for the field. [m] */
  turnPath(layout: L, poles: number, offset: number, corners?: Corners): PathPiece[];
  /** Whether coils of one layer cross in the drawing, so that in copper one must pass over the other. */
  crosses(layout: L): boolean;
  /** How many times a turn repeats itself round the axle. */
  symmetry(poles: number): number;
  /**
   * Straight edges of one turn, corners mitred; those at constant radius carry no term of the flux integral and are left out. The turn is made of
   * `repeat` such sets, turned or mirrored. [m]
   */
  fluxEdges(layout: L, poles: number, offset: number): { edges: Edge[]; repeat: number };
}

/** The registry of layouts: a new one is a new file and a line here. */
export const layouts: { [K in Layout['kind']]: LayoutModel<Of<K>> } = { serpentine, concentrated };

/** The model of a layout, whichever it is. */
export function layoutModel(layout: Layout): LayoutModel<Layout> {
  return layouts[layout.kind];
}

/**
 * Length of a path.
 *
 * @param path  Lines and arcs. [m]
 * @returns     Length. [m]
 *
 * Source    geometry.
 * Checked   tests/core/winding/layouts.test.ts
 */
export function pathLength(path: readonly PathPiece[]): number {
  return path.reduce(
    (sum, piece) =>
      sum +
      (piece.kind === 'line' ? Math.hypot(piece.to[0] - piece.from[0], piece.to[1] - piece.from[1]) : Math.abs(piece.sweep) * piece.radius),
    0,
  );
}
