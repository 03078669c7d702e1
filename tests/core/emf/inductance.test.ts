import { expect, test } from 'vitest';
import { MU_0 } from '../../../core/constants';
import {
  imageLifts,
  imagesInductance,
  mutualInductance,
  ownDistance,
  passingDistance,
  selfInductance,
  type Bundle,
} from '../../../core/emf/bundle';
import { filament, neumann } from '../../../core/emf/inductance';
import { integral } from '../../../core/numeric/integrate';
import type { PathPiece } from '../../../core/winding/stage';

const circle = (radius: number, pieces = 60): PathPiece[] =>
  Array.from({ length: pieces }, (_, k) => ({
    kind: 'arc',
    centre: [0, 0],
    radius,
    start: (2 * Math.PI * k) / pieces,
    sweep: (2 * Math.PI) / pieces,
  }));
const ring: Bundle = {
  path: (offset) => circle(0.03 + offset),
  symmetry: 60,
  legWidth: 0.01,
  thickness: 0.01,
  passing: passingDistance(0.01, 0.01),
};
const polygon = (corners: [number, number][]): PathPiece[] =>
  corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % corners.length] }));

test('counting the symmetry once over gives what counting every piece gives', () => {
  const [whole, part] = [filament(circle(0.05), 1, 0), filament(circle(0.05), 60, 0)];
  expect(neumann(part, part, 0.01)).toBeCloseTo(neumann(whole, whole, 0.01), 15);
});

test('turning two filaments together changes nothing', () => {
  const [a, b] = [polygon([[0.1, -0.02], [0.15, -0.03], [0.15, 0.03], [0.1, 0.02]]), polygon([[0.1, -0.01], [0.14, -0.03], [0.16, 0.03]])]; // prettier-ignore
  const still = neumann(filament(a, 1, 0), filament(b, 1, 0.7), 0);
  expect(neumann(filament(a, 1, 1.1), filament(b, 1, 1.8), 0) / still).toBeCloseTo(1, 9);
});

test('either filament may come first', () => {
  const a = filament(polygon([[0.1, -0.02], [0.15, -0.03], [0.15, 0.03], [0.1, 0.02]]), 1, 0); // prettier-ignore
  const b = filament(circle(0.04), 1, 0);
  expect(neumann(a, b, 0.02) / neumann(b, a, 0.02)).toBeCloseTo(1, 3);
});

test('a coil has more inductance than it shares with any other place', () => {
  const own = selfInductance(ring);
  for (const lift of [0.01, 0.02, 0.03]) expect(mutualInductance(ring, 0, lift)).toBeLessThan(own);
});

test('six filaments kept that far from each other are as far apart as their section is from itself', () => {
  const e = passingDistance(0.018, 0.01);
  const [xs, zs] = [
    [0.003, 0.009, 0.015],
    [0.0025, 0.0075],
  ];
  const cells = xs.flatMap((x) => zs.map((z) => [x, z] as const));
  const logs = cells.flatMap(([x, z]) => cells.map(([u, w]) => Math.log(Math.hypot(x - u, z - w, e))));
  expect(Math.exp(logs.reduce((a, b) => a + b) / 36)).toBeCloseTo(ownDistance(0.018, 0.01), 9);
});

test('one plate makes one image, as far behind it as the coil is before', () => {
  expect(imageLifts(0.001, -0.002, -0.01, Infinity, 0.1)).toEqual([[expect.closeTo(0.019, 12), 1]]);
  expect(imageLifts(0, 0, -Infinity, Infinity, 0.1)).toEqual([]);
});

test('two plates make an endless row of images, near ones first to be found', () => {
  const lifts = imageLifts(0, 0, -0.02, 0.02, 0.1);
  for (const k of [1, 2, 3]) expect(lifts).toContainEqual([expect.closeTo(0.04 * k, 9), 2]);
});

test('heights off the middle are mirrored in each plate', () => {
  const lifts = imageLifts(0.005, 0.005, -0.02, 0.03, 0.1).map(([lift]) => lift);
  for (const expected of [0.05, 0.1]) expect(lifts.some((lift) => Math.abs(lift - expected) < 1e-9)).toBe(true);
});

/** I₁ and K₁ by their integrals, Abramowitz & Stegun 1964, 9.6.19 and 9.6.24. */
const i1 = (x: number) => integral((t) => Math.exp(x * (Math.cos(t) - 1)) * Math.cos(t), 0, Math.PI, 60) / Math.PI;
const k1 = (x: number) => integral((t) => Math.exp(-x * (Math.cosh(t) - 1)) * Math.cosh(t), 0, 12, 400);

test('circles between two plates agree with the series of Bessel functions within 1 %', () => {
  // Between plates D apart: M = 2π μ₀ r a/D · [r/2a + 2 Σ I₁(kr) K₁(ka) cos²(nπ/2)], k = nπ/D, r < a, both in the middle. Solved by separation of variables.
  const [r, a, d] = [0.03, 0.05, 0.04];
  let series = r / a / 2;
  for (let n = 2; n < 80; n += 2) {
    const k = (n * Math.PI) / d;
    series += 2 * i1(k * r) * k1(k * a) * Math.exp(k * (r - a));
  }
  const expected = ((2 * Math.PI * MU_0 * r * a) / d) * series;
  const [inner, outer] = [filament(circle(r, 90), 90, 0), filament(circle(a, 90), 90, 0)];
  const lifts = imageLifts(0, 0, -d / 2, d / 2, a);
  const sum = neumann(inner, outer, 0) + lifts.reduce((total, [lift, weight]) => total + weight * neumann(inner, outer, lift), 0);
  expect(Math.abs(sum / expected - 1)).toBeLessThan(0.01);
});

test('steel raises the inductance, less the farther off it is', () => {
  const added = [0.012, 0.02, 0.05, 0.2].map((plate) => imagesInductance(ring, 0, imageLifts(0, 0, -plate, plate, 0.04)));
  added.slice(1).forEach((now, i) => expect(now).toBeLessThan(added[i]));
  expect(added[3]).toBeGreaterThan(0);
  expect(added[3] / selfInductance(ring)).toBeLessThan(0.01);
});
