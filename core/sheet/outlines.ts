import { arcPoints } from './bounds';
import type { Layout } from '../winding/section';
import type { PathPiece } from '../winding/stage';
import type { Layer, Point, Stroke } from './drawing';

type Concentrated = Extract<Layout, { kind: 'concentrated' }>;
type Serpentine = Extract<Layout, { kind: 'serpentine' }>;

/** A turn at `offset` from the innermost, corners rounded, before the coil is turned to its place. [m] */
export function turnOutline(layout: Layout, poles: number, offset: number): PathPiece[] {
  return layout.kind === 'concentrated' ? roundedHole(layout, offset) : ring(layout, poles, offset - layout.legWidth / 2);
}

function roundedHole(layout: Concentrated, offset: number): PathPiece[] {
  const { holeInnerRadius: a, holeOuterRadius: b, holeInnerWidth: v, holeOuterWidth: w } = layout;
  const corners: Point[] = [
    [a, -v / 2],
    [b, -w / 2],
    [b, w / 2],
    [a, v / 2],
  ];
  return corners.flatMap((corner, i): PathPiece[] => {
    const [before, after] = [corners[(i + 3) % 4], corners[(i + 1) % 4]];
    const normalIn = Math.atan2(corner[1] - before[1], corner[0] - before[0]) - Math.PI / 2;
    const normalOut = Math.atan2(after[1] - corner[1], after[0] - corner[0]) - Math.PI / 2;
    const sweep = (((normalOut - normalIn) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    const moved = ([x, y]: Point): Point => [x + offset * Math.cos(normalOut), y + offset * Math.sin(normalOut)];
    return [
      ...(offset > 0 ? [{ kind: 'arc', centre: corner, radius: offset, start: normalIn, sweep } as PathPiece] : []),
      { kind: 'line', from: moved(corner), to: moved(after) },
    ];
  });
}

/** Legs moved by `aside` from the middle of their bundle, arcs by the same amount. */
function ring(layout: Serpentine, poles: number, aside: number): PathPiece[] {
  const pitch = (2 * Math.PI) / poles;
  const [inner, outer] = [layout.innerRadius + aside, layout.outerRadius + aside];
  const at = (radius: number, angle: number): Point => [radius * Math.cos(angle), radius * Math.sin(angle)];
  return Array.from({ length: poles }, (_, k): PathPiece[] => {
    const outwards = k % 2 === 1;
    const side = outwards ? -1 : 1;
    const legAt = (k + 0.5) * pitch;
    const end = (radius: number, sign: number) => legAt + sign * Math.asin(Math.max(-1, Math.min(1, aside / radius)));
    const [from, to] = outwards ? [inner, outer] : [outer, inner];
    const next = legAt + pitch - side * Math.asin(Math.max(-1, Math.min(1, aside / to)));
    const start = end(to, side);
    return [
      { kind: 'line', from: at(from, end(from, side)), to: at(to, start) },
      { kind: 'arc', centre: [0, 0], radius: to, start, sweep: next - start },
    ];
  }).flat();
}

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
