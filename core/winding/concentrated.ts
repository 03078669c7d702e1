import type { Corners, LayoutModel, Point } from './layouts';
import type { Layout } from './section';
import type { PathPiece } from './stage';

type Concentrated = Extract<Layout, { kind: 'concentrated' }>;

/** The hole's polygon moved outward by `offset` on every side, corners mitred, counter-clockwise from the inner corner at negative y. [m] */
function mitred({ holeInnerRadius: a, holeOuterRadius: b, holeInnerWidth: v, holeOuterWidth: w }: Concentrated, offset: number): Point[] {
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

/** The same with an arc round every corner of the hole. */
function rounded(layout: Concentrated, offset: number): PathPiece[] {
  const hole = mitred(layout, 0);
  return hole.flatMap((corner, i): PathPiece[] => {
    const [before, after] = [hole[(i + 3) % 4], hole[(i + 1) % 4]];
    const normalIn = Math.atan2(corner[1] - before[1], corner[0] - before[0]) - Math.PI / 2;
    const normalOut = Math.atan2(after[1] - corner[1], after[0] - corner[0]) - Math.PI / 2;
    const sweep = (((normalOut - normalIn) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    const moved = ([x, y]: Point): Point => [x + offset * Math.cos(normalOut), y + offset * Math.sin(normalOut)];
    return [
      ...(offset > 0 ? [{ kind: 'arc', centre: corner, radius: offset, start: normalIn, sweep } as const] : []),
      { kind: 'line', from: moved(corner), to: moved(after) },
    ];
  });
}

function turnPath(layout: Concentrated, _poles: number, offset: number, corners: Corners = 'rounded'): PathPiece[] {
  if (corners === 'rounded') return rounded(layout, offset);
  const polygon = mitred(layout, offset);
  return polygon.map((from, i) => ({ kind: 'line', from, to: polygon[(i + 1) % 4] }));
}

/** Separate coils side by side in one layer, coil 1 on +x. */
export const concentrated: LayoutModel<Concentrated> = {
  count: ({ coils }) => coils,
  layers: () => 1,
  legRadii: ({ holeInnerRadius, holeOuterRadius }) => [holeInnerRadius, holeOuterRadius],
  polesLinked: () => 1,
  extent: (layout) => {
    const [inner, outer] = mitred(layout, layout.legWidth);
    return [inner[0], Math.max(Math.hypot(...inner), Math.hypot(...outer))];
  },
  turnPath,
  crosses: (layout) => (roomBetweenCoils(layout) ?? 0) < 0,
  symmetry: () => 1,
  fluxEdges: (layout, _poles, offset) => {
    const [, , outer, inner] = mitred(layout, offset);
    // The half above the coil's own axis; the other is its mirror image.
    const edges: [Point, Point][] = [
      [[outer[0], 0], outer],
      [outer, inner],
      [inner, [inner[0], 0]],
    ];
    return { edges, repeat: 2 };
  },
};

/**
 * Free room between neighbouring coils, leg to leg.
 *
 * @param layout  Concentrated layout. [m]
 * @returns       Room at the tightest place, negative where they overlap; undefined for a single coil. [m]
 *
 * Source    geometry: the outermost turn lies everywhere one leg width from the hole, so the hole's corners decide.
 * Checked   tests/core/winding/layouts.test.ts
 */
export function roomBetweenCoils(layout: Concentrated): number | undefined {
  if (layout.coils < 2) return undefined;
  const half = Math.PI / layout.coils;
  const toBisector = ([x, y]: Point) => x * Math.sin(half) - y * Math.cos(half);
  const [, , outer, inner] = mitred(layout, 0);
  return 2 * (Math.min(toBisector(outer), toBisector(inner)) - layout.legWidth);
}

/**
 * Angle a coil spans at the axle, middle of leg to middle of leg half-way along its hole.
 *
 * @param layout  Concentrated layout. [m]
 * @returns       Angle. [rad]
 *
 * Source    geometry.
 * Checked   tests/core/winding/layouts.test.ts
 */
export function coilSpan(layout: Concentrated): number {
  const [, , outer, inner] = mitred(layout, layout.legWidth / 2);
  return 2 * Math.atan2(outer[1] + inner[1], outer[0] + inner[0]);
}
