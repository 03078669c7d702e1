import { concentrated } from './concentrated';
import type { Layout } from './section';
import { serpentine } from './serpentine';
import type { PathPiece } from './stage';

type Of<K extends Layout['kind']> = Extract<Layout, { kind: K }>;
export type Edge = [from: [number, number], to: [number, number]];

/** What the later stages need of a way of laying the turns. Offsets run from 0, the innermost turn, to the leg width. */
export interface LayoutModel<L> {
  /** Coils that make a machine of so many phases. */
  count(layout: L, phases: number): number;
  /** Layers of copper one above the other. */
  layers(layout: L, phases: number): number;
  /** Radii between which copper lies, corners mitred. [m] */
  extent(layout: L): [inner: number, outer: number];
  /** One turn as it lies, for drawings and for the length of wire. [m] */
  turnPath(layout: L, poles: number, offset: number): PathPiece[];
  /**
   * The straight edges of one turn, corners mitred, counter-clockwise; those at constant radius carry no term of the flux integral and are left
   * out. They stand for `repeat` equal sets round the axle. [m]
   */
  fluxEdges(layout: L, poles: number, offset: number): { edges: Edge[]; repeat: number };
}

/** The registry of layouts: a new one is a new file and a line here. */
export const layouts: { [K in Layout['kind']]: LayoutModel<Of<K>> } = { serpentine, concentrated };

/** The model of a layout, whichever it is. */
export function layoutModel(layout: Layout): LayoutModel<Layout> {
  return layouts[layout.kind] as LayoutModel<Layout>;
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
