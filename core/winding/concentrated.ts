import type { LayoutModel } from './layouts';
import type { Layout } from './section';
import type { PathPiece } from './stage';

type Concentrated = Extract<Layout, { kind: 'concentrated' }>;
type Point = [number, number];

const corners = ({ holeInnerRadius: a, holeOuterRadius: b, holeInnerWidth: v, holeOuterWidth: w }: Concentrated): Point[] => [
  [a, -v / 2],
  [b, -w / 2],
  [b, w / 2],
  [a, v / 2],
];

/** The hole's polygon moved outward by `offset` on every side, corners mitred. */
export function mitred(layout: Concentrated, offset: number): Point[] {
  const { holeInnerRadius: a, holeOuterRadius: b, holeInnerWidth: v, holeOuterWidth: w } = layout;
  const slope = (w - v) / 2 / (b - a);
  const halfWidth = (x: number) => v / 2 + slope * (x - a) + offset * Math.hypot(1, slope);
  const [inner, outer] = [a - offset, b + offset];
  return [
    [inner, -halfWidth(inner)],
    [outer, -halfWidth(outer)],
    [outer, halfWidth(outer)],
    [inner, halfWidth(inner)],
  ];
}

function turnPath(layout: Concentrated, _poles: number, offset: number): PathPiece[] {
  const hole = corners(layout);
  return hole.flatMap((corner, i): PathPiece[] => {
    const [before, after] = [hole[(i + 3) % 4], hole[(i + 1) % 4]];
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

/** Separate coils side by side in one layer, coil 1 on +x. */
export const concentrated: LayoutModel<Concentrated> = {
  count: ({ coils }) => coils,
  layers: () => 1,
  extent: (layout) => {
    const outermost = mitred(layout, layout.legWidth);
    return [outermost[0][0], Math.hypot(...outermost[1])];
  },
  turnPath,
  fluxEdges: (layout, _poles, offset) => {
    const polygon = mitred(layout, offset);
    return { edges: polygon.map((corner, i) => [corner, polygon[(i + 1) % 4]]), repeat: 1 };
  },
};

/**
 * Free room between neighbouring coils, leg to leg.
 *
 * @param layout  Concentrated layout. [m]
 * @returns       Room at the tightest place, negative where they overlap; undefined for one or two coils. [m]
 *
 * Source    the outermost turn lies everywhere one leg width from the hole, so the hole's corners decide.
 * Checked   tests/core/winding/layouts.test.ts
 */
export function roomBetweenCoils(layout: Concentrated): number | undefined {
  if (layout.coils < 3) return undefined;
  const half = Math.PI / layout.coils;
  const toBisector = ([x, y]: Point) => x * Math.sin(half) - y * Math.cos(half);
  const [, , outer, inner] = corners(layout);
  return 2 * (Math.min(toBisector(outer), toBisector(inner)) - layout.legWidth);
}
