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

/** A path turned about the axle, as one closed outline in millimetres. */
export function outline(pieces: readonly PathPiece[], angle: number, layer: Layer, name?: string): Extract<Stroke, { kind: 'polyline' }> {
  const points = pieces.flatMap((piece): Point[] => {
    if (piece.kind === 'line') return [piece.from, piece.to];
    return arcPoints(piece);
  });
  return {
    kind: 'polyline',
    layer,
    closed: true,
    points: points.map((p) => turned([p[0] * 1000, p[1] * 1000], angle)),
    ...(name && { name }),
  };
}
