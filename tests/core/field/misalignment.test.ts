import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emfFromShape, inductanceShape, linkageShape, NO_STEEL } from '../../../core/emf/stage';
import { rms } from '../../../core/emf/waveform';
import { misalignmentShares, spectrumReader } from '../../../core/field/harmonics';
import { fieldAt } from '../../../core/field/machine';
import type { DiscsSection } from '../../../core/field/section';
import { fieldStage } from '../../../core/field/stage';
import type { MagnetShape } from '../../../core/magnets/section';
import { gaussLegendre } from '../../../core/numeric/integrate';
import { layoutModel } from '../../../core/winding/layouts';
import { windingStage } from '../../../core/winding/stage';
import { coils, rings, winding } from '../emf/machine';

const block: MagnetShape = { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 };
const pair = (misalignment: number, steel = true): DiscsSection => ({
  arrangement: 'facing-pair',
  poles: 12,
  pitchRadius: 0.127,
  backing: steel ? { kind: 'steel', thickness: 0.02 } : { kind: 'none' },
  runningClearance: 0.0015,
  ...(misalignment > 0 && { misalignment }),
});
const region = { gapLength: 0.02, innerRadius: 0.09, outerRadius: 0.165, halfHeight: 0.006 };
const stage = (misalignment: number, steel = true, shape = block) => fieldStage(shape, 1.28, 1.05, pair(misalignment, steel), region);
const turned = ([x, y, z]: number[], by: number): [number, number, number] => [
  x * Math.cos(by) - y * Math.sin(by),
  x * Math.sin(by) + y * Math.cos(by),
  z,
];

const angles = fc.double({ min: 1e-3, max: 0.8, noNaN: true });
const places = fc.record({
  r: fc.double({ min: 0.09, max: 0.165, noNaN: true }),
  angle: fc.double({ min: 0, max: 6.28, noNaN: true }),
  z: fc.double({ min: -0.006, max: 0.006, noNaN: true }),
});

test('without steel the field is that of two single discs, one turned and looked at from the other side', () => {
  const lone = fieldAt(block, 1.28, 1, { ...pair(0, false), arrangement: 'single' }, region.gapLength);
  fc.assert(
    fc.property(angles, places, (misalignment, { r, angle, z }) => {
      const both = fieldAt(block, 1.28, 1, pair(misalignment, false), region.gapLength);
      const at = [r * Math.cos(angle), r * Math.sin(angle), z];
      const below = turned(lone(...turned(at, misalignment / 2)), -misalignment / 2);
      // Seen in the mirror z → −z a magnet keeps its polarisation: B_z stays, the rest changes sign.
      const [x, y, up] = turned(at, -misalignment / 2);
      const mirrored = lone(x, y, -up);
      const above = turned([-mirrored[0], -mirrored[1], mirrored[2]], misalignment / 2);
      both(...(at as [number, number, number])).forEach((b, axis) => expect(b).toBeCloseTo(below[axis] + above[axis], 9));
    }),
    { numRuns: 40, seed: 1 },
  );
});

test.each([true, false])('the harmonics are the direct sum off the mid-plane as well, steel %s', (steel) => {
  for (const misalignment of [0.03, 0.2, 0.5]) {
    const { spectrum } = stage(misalignment, steel);
    const reader = spectrumReader(spectrum);
    const direct = fieldAt(block, 1.28, 1.05, pair(misalignment, steel), region.gapLength);
    fc.assert(
      fc.property(places, ({ r, angle, z }) => {
        const sum = (b: Float64Array | undefined, wave: (x: number) => number) =>
          b!.reduce((total, value, h) => total + value * wave(spectrum.orders[h] * 6 * angle), 0);
        const [bx, by, bz] = direct(r * Math.cos(angle), r * Math.sin(angle), z);
        const axial = sum(reader.bz(r, z), Math.cos) + sum(reader.bzSine!(r, z), Math.sin);
        const round = sum(reader.bTheta(r, z), Math.sin) + sum(reader.bThetaCosine!(r, z), Math.cos);
        // 0.3 % of the field in line, which is 0.6 T.
        expect(Math.abs(axial - bz)).toBeLessThan(0.002);
        expect(Math.abs(round - (by * Math.cos(angle) - bx * Math.sin(angle)))).toBeLessThan(0.002);
      }),
      { numRuns: 40, seed: 2 },
    );
  }
});

test('the mid-plane’s fundamental falls as the cosine of half the electrical angle, to nothing a pole pitch off', () => {
  const straight = stage(0);
  for (const misalignment of [0.1, 0.3])
    expect(stage(misalignment).fundamental / straight.fundamental).toBeCloseTo(Math.cos(3 * misalignment), 9);
  expect(stage(Math.PI / 6).peak).toBeLessThan(1e-9);
  expect(stage(0.1).spectrum.bz).toEqual(straight.spectrum.bz);
});

test('the linkage of a coil off the mid-plane is the flux of the direct field through it, at every angle of the shaft', () => {
  const misalignment = 0.12;
  const height = 0.004;
  const w = { ...winding(coils(9)), thickness: 1e-4, layout: { ...coils(9), legWidth: 5e-4 } };
  const placed = windingStage(w, 12);
  const raised = { ...placed, coils: placed.coils.map((coil) => ({ ...coil, height })) };
  const { linkage, misaligned, orders } = linkageShape(w, raised, stage(misalignment).spectrum);
  const direct = fieldAt(block, 1.28, 1.05, pair(misalignment), region.gapLength);
  const { edges } = layoutModel(w.layout).fluxEdges(w.layout, 12, w.layout.legWidth / 2);
  const [[x1, y1], [x0, y0]] = edges[1];
  const xs = gaussLegendre(24, x0, x1);
  const fluxAt = (shaft: number) =>
    xs.nodes.reduce((sum, x, i) => {
      const top = y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
      const ys = gaussLegendre(24, -top, top);
      return sum + xs.weights[i] * ys.nodes.reduce((s, y, j) => s + ys.weights[j] * direct(...turned([x, y, height], -shaft))[2], 0);
    }, 0);
  for (const shaft of [0, 0.05, 0.2, 0.31]) {
    const ours = orders.reduce(
      (sum, n, h) => sum + linkage[0][h] * Math.cos(n * 6 * shaft) - misaligned!.skew[0][h] * Math.sin(n * 6 * shaft),
      0,
    );
    expect(Math.abs(ours - fluxAt(shaft))).toBeLessThan(0.003 * Math.abs(linkage[0][0]));
  }
  expect(Math.abs(misaligned!.skew[0][0] / linkage[0][0])).toBeGreaterThan(0.02);
});

test('the caution tells the volts it costs, as the volts themselves say', () => {
  for (const layout of [coils(9), rings('stacked')]) {
    const w = winding(layout, { thickness: 0.004 });
    const placed = windingStage(w, 12);
    const perTurn = inductanceShape(w, 12, placed, NO_STEEL);
    const emfAt = (misalignment: number) => emfFromShape(w, placed, linkageShape(w, placed, stage(misalignment).spectrum), perTurn);
    const [straight, off, far] = [0, 0.05, 0.2].map(emfAt);
    const lost = 1 - rms(off.phaseEmf[0]) / rms(straight.phaseEmf[0]);
    expect(lost).toBeGreaterThan(0.005);
    const told = off.cautions.find(({ where }) => where === 'discs.misalignment');
    expect(told).toMatchObject({
      severity: 'note',
      message: expect.stringContaining(`${Number((100 * lost).toPrecision(2))} %`) as string,
    });
    expect(told!.message).toContain('2.9° off each other, 17° electrical');
    expect(far.cautions.find(({ where }) => where === 'discs.misalignment')?.severity).toBe('warning');
    expect(straight.cautions.some(({ where }) => where === 'discs.misalignment')).toBe(false);
    expect(emfAt(1e-6).cautions.some(({ where }) => where === 'discs.misalignment')).toBe(false);
  }
});

test('the farther off, the fewer volts, and numbers throughout', () => {
  const w = winding(rings('stacked'), { thickness: 0.004 });
  const placed = windingStage(w, 12);
  const perTurn = inductanceShape(w, 12, placed, NO_STEEL);
  const volts = (misalignment: number) =>
    rms(emfFromShape(w, placed, linkageShape(w, placed, stage(misalignment, false).spectrum), perTurn).phaseEmf[1]);
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.5, noNaN: true }), fc.double({ min: 1e-3, max: 0.02, noNaN: true }), (from, more) => {
      const [near, far] = [volts(from), volts(from + more)];
      expect(Number.isFinite(far)).toBe(true);
      expect(far).toBeLessThan(near);
    }),
    { numRuns: 6, seed: 3 },
  );
});

test('more than half a pole pitch off is a danger, and one disc alone has nothing to stand off from', () => {
  expect(stage(0.3).cautions.map(({ severity, where }) => `${severity} ${where}`)).toEqual(['danger discs.misalignment']);
  expect(stage(0.2).cautions).toEqual([]);
  const single = (misalignment: number) => fieldStage(block, 1.28, 1.05, { ...pair(misalignment), arrangement: 'single' }, region);
  expect(single(0.2).cautions.map(({ severity, where }) => `${severity} ${where}`)).toEqual(['note discs.misalignment']);
  expect(single(0.2).spectrum).toEqual(single(0).spectrum);
});

test('discs in line keep all of every harmonic', () => {
  const { both, difference } = misalignmentShares(stage(0).spectrum);
  expect(new Set(both)).toEqual(new Set([1]));
  expect(new Set(difference)).toEqual(new Set([0]));
});
