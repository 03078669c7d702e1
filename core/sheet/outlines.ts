import { layoutModel } from '../winding/layouts';
import type { Layout } from '../winding/section';
import type { PathPiece } from '../winding/stage';
import { arcPoints } from './bounds';
import type { Layer, Point, Stroke } from './drawing';

/** A turn at `offset` from the innermost, corners rounded, before its coil is turned to its place. [m] */
export const turnOutline = (layout: Layout, poles: number, offset: number): PathPiece[] =>
  layoutModel(layout).turnPath(layout, poles, offset);

const turned = ([x, y]: Point, angle: number): Point => [
  x * Math.cos(angle) - y * Math.sin(angle),
  x * Math.sin(angle) + y * Math.cos(angle),
];

/** A path turned about the axle, as one closed outline in millimetres; a point where two pieces meet stands once. */
export function outline(pieces: readonly PathPiece[], angle: number, layer: Layer, name?: string): Extract<Stroke, { kind: 'polyline' }> {
  const points = pieces
    .flatMap((piece) =>
      piece.kind === 'line'
        ? [mm(piece.from), mm(piece.to)]
        : arcPoints({ ...piece, centre: mm(piece.centre), radius: 1000 * piece.radius }),
    )
    .filter((p, i, all) => apart(p, all[(i || all.length) - 1]));
  return { kind: 'polyline', layer, closed: true, points: points.map((p) => turned(p, angle)), ...(name && { name }) };
}

const mm = ([x, y]: readonly [number, number]): Point => [x * 1000, y * 1000];
const apart = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]) > 1e-6;
