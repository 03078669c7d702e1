import { expect, test } from 'vitest';
import { coilSpan, roomBetweenCoils } from '../../../core/winding/concentrated';
import { layoutModel, pathLength } from '../../../core/winding/layouts';
import type { Layout } from '../../../core/winding/section';
import { pegs, roomForLeg } from '../../../core/winding/serpentine';
import type { PathPiece } from '../../../core/winding/stage';

const square: Extract<Layout, { kind: 'concentrated' }> = {
  kind: 'concentrated',
  coils: 9,
  holeInnerRadius: 0.1,
  holeOuterRadius: 0.14,
  holeInnerWidth: 0.03,
  holeOuterWidth: 0.03,
  legWidth: 0.01,
};
const trapezoid: typeof square = { ...square, holeOuterWidth: 0.04 };
const ring: Extract<Layout, { kind: 'serpentine' }> = {
  kind: 'serpentine',
  innerRadius: 0.052,
  outerRadius: 0.076,
  legWidth: 0.004,
  placement: 'stacked',
};
const turn = (layout: Layout, offset: number, corners?: 'rounded' | 'mitred') => layoutModel(layout).turnPath(layout, 16, offset, corners);

const ends = (piece: PathPiece) => {
  if (piece.kind === 'line') return { from: piece.from, to: piece.to };
  const on = (a: number): [number, number] => [piece.centre[0] + piece.radius * Math.cos(a), piece.centre[1] + piece.radius * Math.sin(a)];
  return { from: on(piece.start), to: on(piece.start + piece.sweep) };
};

test.each([
  ['a square hole, rounded', turn(square, 0.006)],
  ['a trapezoid hole, rounded', turn(trapezoid, 0.01)],
  ['a trapezoid hole, mitred', turn(trapezoid, 0.01, 'mitred')],
  ['the hole itself', turn(trapezoid, 0)],
  ['a serpentine’s innermost turn', turn(ring, 0)],
  ['a serpentine’s outermost turn', turn(ring, 0.004)],
])('a turn closes on itself: %s', (_, path) => {
  path.forEach((piece, i) => {
    const next = path[(i + 1) % path.length];
    const gap = Math.hypot(ends(piece).to[0] - ends(next).from[0], ends(piece).to[1] - ends(next).from[1]);
    expect(gap).toBeLessThan(1e-12);
  });
});

test('a rounded turn is one circumference of its offset longer than the hole', () => {
  expect(pathLength(turn(square, 0.01))).toBeCloseTo(0.14 + 2 * Math.PI * 0.01, 12);
  expect(pathLength(turn(trapezoid, 0.01)) - pathLength(turn(trapezoid, 0))).toBeCloseTo(2 * Math.PI * 0.01, 12);
});

test('a mitred turn of a square hole is eight offsets longer', () => {
  expect(pathLength(turn(square, 0.01, 'mitred'))).toBeCloseTo(0.14 + 8 * 0.01, 12);
});

test('a mitred turn keeps its distance from every side of the hole', () => {
  // linkage.json: |y| = x tan(half angle) + d / cos(half angle) for a hole whose sides point at the axle.
  const half = (7 * Math.PI) / 180;
  const hole = { ...square, holeInnerWidth: 0.2 * Math.tan(half), holeOuterWidth: 0.28 * Math.tan(half) };
  const [, , , inner] = turn(hole, 0.008, 'mitred');
  const { from } = ends(inner);
  expect(from[0]).toBeCloseTo(0.092, 12);
  expect(from[1]).toBeCloseTo(0.092 * Math.tan(half) + 0.008 / Math.cos(half), 12);
});

test('serpentine legs move parallel and arcs by the same amount', () => {
  const [inward, arc] = turn(ring, 0.0005) as [PathPiece, PathPiece];
  // 1.5 mm to the inside of the lobe round magnet 0: leg at 11.25° less asin(d / r), outer arc at 76 − 1.5 mm.
  const { from, to } = ends(inward);
  const pitch = Math.PI / 16;
  expect(Math.atan2(from[1], from[0])).toBeCloseTo(pitch - Math.asin(0.0015 / 0.0745), 12);
  expect(Math.atan2(to[1], to[0])).toBeCloseTo(pitch - Math.asin(0.0015 / 0.0505), 12);
  expect(arc.kind === 'arc' && arc.radius).toBeCloseTo(0.0505, 12);
});

test('layers of a serpentine differ in length as layers of a skein round two pegs do', () => {
  const difference = pathLength(turn(ring, 0.004)) - pathLength(turn(ring, 0));
  // Not to the last digit: legs end on arcs, not square across.
  expect(Math.abs(difference / (2 * Math.PI * 0.004) - 1)).toBeLessThan(0.002);
});

test('the straight edges for the flux are those of the mitred turn', () => {
  const model = layoutModel(trapezoid);
  const { edges, repeat } = model.fluxEdges(trapezoid, 16, 0.004);
  const length = edges.reduce((sum, [[x0, y0], [x1, y1]]) => sum + Math.hypot(x1 - x0, y1 - y0), 0);
  expect(length * repeat).toBeCloseTo(pathLength(turn(trapezoid, 0.004, 'mitred')), 12);
});

test('coils just touching leave no room, narrower legs leave twice as much', () => {
  const touching = { ...square, coils: 4, holeInnerWidth: 0.1, holeOuterWidth: 0.1 };
  // Half an angle of 45°: the inner corner (0.1, 0.05) lies 0.05/√2 from the bisector.
  const legWidth = 0.05 / Math.SQRT2;
  expect(roomBetweenCoils({ ...touching, legWidth })).toBeCloseTo(0, 12);
  expect(roomBetweenCoils({ ...touching, legWidth: legWidth - 0.001 })).toBeCloseTo(0.002, 12);
  expect(roomBetweenCoils({ ...square, coils: 1 })).toBeUndefined();
});

test('a coil spans the angle between the middles of its legs', () => {
  expect(coilSpan(square)).toBeCloseTo(2 * Math.atan(0.02 / 0.12), 12);
});

test('interleaved legs have an m-th part of the pole pitch', () => {
  expect(roomForLeg(0.104, 12, 3)).toBeCloseTo((2 * Math.PI * 0.104) / 36, 12);
});

test('the skein on its pegs is as long as the folded ring', () => {
  const found = pegs(1.5, 0.01);
  expect(found && 2 * found.distance + Math.PI * (found.diameter + 0.01)).toBeCloseTo(1.5, 12);
  expect(pegs(0.05, 0.01)).toBeUndefined();
});
