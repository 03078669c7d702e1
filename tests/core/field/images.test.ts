import { expect, test } from 'vitest';
import { bodyStack } from '../../../core/field/images';

const round = (bodies: { zCentre: number; axial: number }[]) => bodies.map((b) => [Math.round(b.zCentre * 1e4), Math.round(b.axial * 1e4)]);

test('a pair without steel is two bodies and no more', () => {
  const stack = bodyStack('facing-pair', false, 0.012, 0.008);
  expect(round(stack.set(0))).toEqual([
    [-100, 80],
    [100, 80],
  ]);
  expect(stack.set(1)).toEqual([]);
  expect(stack.symmetric).toBe(true);
});

test('steel behind a pair makes an endless stack of bodies twice as high', () => {
  const stack = bodyStack('facing-pair', true, 0.012, 0.008);
  expect(round(stack.set(0))).toEqual([
    [-140, 160],
    [140, 160],
  ]);
  expect(round(stack.set(2))).toEqual([
    [-700, 160],
    [700, 160],
  ]);
});

test('steel behind a single disc doubles its magnets and ends there', () => {
  const stack = bodyStack('single', true, 0.012, 0.008);
  expect(round(stack.set(0))).toEqual([[-140, 160]]);
  expect(stack.set(1)).toEqual([]);
});

test('a return plate mirrors what lies before it, and every image its image', () => {
  expect(round(bodyStack('single-with-return', false, 0.012, 0.008).set(0))).toEqual([
    [-100, 80],
    [220, 80],
  ]);
  const stack = bodyStack('single-with-return', true, 0.012, 0.008);
  const centres = [0, 1, 2, 3].flatMap((k) => stack.set(k).map((b) => b.zCentre));
  for (const plate of [stack.steelBelow, stack.steelAbove]) {
    // But for the ends of what was taken, each body has its mirror image in each plate.
    for (const z of centres.filter((c) => Math.abs(c) < 0.1)) expect(centres.some((c) => Math.abs(c - (2 * plate - z)) < 1e-12)).toBe(true);
  }
});
