import { expect, test } from 'vitest';
import { MU_0 } from '../../../core/constants';
import {
  armatureField,
  coercivityAt,
  demagnetizingField,
  loadLineField,
  permeanceCoefficient,
} from '../../../core/magnets/demagnetization';

test('the flatter a magnet the harder it works against itself', () => {
  const permeance = (axial: number) => permeanceCoefficient({ kind: 'cylinder', diameter: 0.03, axial });
  expect(permeance(0.003)).toBeLessThan(permeance(0.01));
  expect(loadLineField(1.2, permeance(0.003), 1.05)).toBeGreaterThan(loadLineField(1.2, permeance(0.01), 1.05));
  expect(loadLineField(1.2, 0, 1.05)).toBeCloseTo(1.2 / (1.05 * MU_0), 6);
});

test('at the pole face of a long magnet half the remanence is left', () => {
  expect(permeanceCoefficient({ kind: 'cylinder', diameter: 0.01, axial: 0.3 })).toBeCloseTo(1, 2);
});

test('load line and flux density give the same field', () => {
  const field = loadLineField(1.2, 0.6, 1.05);
  expect(demagnetizingField(1.2, 0.6 * MU_0 * field, 1.05)).toBeCloseTo(field, 6);
});

test('ampere-turns spread over gap and magnets', () => {
  expect(armatureField(1000, 0.013, 0.02, 1)).toBeCloseTo(1000 / 0.033, 9);
  expect(armatureField(1000, 0.013, 0.02, 1.05)).toBeLessThan(armatureField(1000, 0.013, 0.02, 1));
});

test('neodymium loses coercivity as it warms, ferrite gains it', () => {
  expect(coercivityAt(955e3, -0.0065, 80)).toBeCloseTo(955e3 * 0.61, 6);
  expect(coercivityAt(230e3, 0.003, -20)).toBeLessThan(230e3);
  expect(coercivityAt(955e3, -0.0065, 400)).toBe(0);
});
