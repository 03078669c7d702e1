import { expect, test } from 'vitest';
import { discCautions } from '../../../core/field/discs';
import type { DiscsSection } from '../../../core/field/section';
import type { MagnetShape } from '../../../core/magnets/section';

const block: MagnetShape = { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 };
const discs: DiscsSection = {
  arrangement: 'facing-pair',
  poles: 12,
  pitchRadius: 0.127,
  backing: { kind: 'steel', thickness: 0.008 },
  runningClearance: 0.0015,
};
const found = (shape: MagnetShape, change: Partial<DiscsSection> = {}) =>
  discCautions(shape, { ...discs, ...change }).map((c) => `${c.severity} ${c.where}`);

test('magnets with room between them raise no caution', () => {
  expect(found(block)).toEqual([]);
});

test('magnets that overlap are a danger, and the caution says how many fit', () => {
  const [caution] = discCautions(block, { ...discs, poles: 24 });
  expect(caution).toMatchObject({ severity: 'danger', where: 'discs.poles' });
  const most = Number(/At most (\d+) fit/.exec(caution.message)![1]);
  expect(found(block, { poles: most })).toEqual([]);
  expect(found(block, { poles: most + 2 })).toEqual(['danger discs.poles']);
});

test('magnets that reach the axle are a danger', () => {
  expect(found(block, { pitchRadius: 0.02 })).toEqual(['danger discs.pitchRadius']);
});

test('sectors may touch but not overlap', () => {
  const sector = (span: number): MagnetShape => ({ kind: 'sector', innerRadius: 0.1, outerRadius: 0.15, span, axial: 0.01 });
  expect(found(sector(Math.PI / 6))).toEqual([]);
  expect(found(sector(Math.PI / 6 + 0.01))).toEqual(['danger discs.poles']);
});

test('a pitch radius outside the sectors is questioned', () => {
  expect(found({ kind: 'sector', innerRadius: 0.1, outerRadius: 0.12, span: 0.4, axial: 0.01 })).toEqual(['warning discs.pitchRadius']);
});

test('a return plate must turn with the magnets', () => {
  expect(found(block, { arrangement: 'single-with-return' })).toEqual(['warning discs.arrangement']);
});
