import { expect, test } from 'vitest';
import { gapAdmittance, layerPotentials, magnetHarmonic, plateAdmittance } from '../../../core/field/layers';

const layer = { wave: 50, height: 0.01, recoilPermeability: 1, back: 1, front: 1 };

test('a layer in the open has the potential of its two charged faces', () => {
  // Each face of charge gives 1/2 at itself and fades by e^(−kh) at the other.
  const { front, back } = layerPotentials(layer);
  expect(front).toBeCloseTo((1 - Math.exp(-0.5)) / 2, 12);
  expect(back).toBeCloseTo(-front, 12);
});

test('a layer between plates without a gap has no potential and carries nothing across', () => {
  const { front, back, through } = layerPotentials({ ...layer, back: Infinity, front: 1e12 });
  expect(front).toBeCloseTo(0, 9);
  expect(back).toBe(0);
  expect(through).toBeCloseTo(1, 9);
});

test('very good steel is ideal steel', () => {
  const nearly = layerPotentials({ ...layer, back: 1e9 });
  const ideal = layerPotentials({ ...layer, back: Infinity });
  expect(nearly.front).toBeCloseTo(ideal.front, 8);
  expect(nearly.through).toBeCloseTo(ideal.through, 8);
});

test('a tall magnet neither overflows nor cares how tall it is', () => {
  const tall = layerPotentials({ ...layer, height: 100 });
  expect(tall.front).toBeCloseTo(0.5, 12);
  expect(layerPotentials({ ...layer, height: 100, back: Infinity }).front).toBeCloseTo(0.5, 12);
});

test('a plate of no iron is open air, and so is a plate of no thickness', () => {
  expect(plateAdmittance(1, 50, 0.01)).toBeCloseTo(1, 12);
  expect(plateAdmittance(1000, 50, 0)).toBe(1);
  expect(plateAdmittance(1000, 50, 1)).toBeCloseTo(1000, 6);
});

test('across a pair’s gap flux density is least in the middle and even about it', () => {
  const at = (distance: number) => gapAdmittance('facing-pair', 50, 0.02, distance);
  expect(at(0.01)).toBeLessThan(at(0.005));
  expect(at(0.005)).toBeCloseTo(at(0.015), 12);
  expect(at(0.01)).toBeCloseTo(1 / Math.sinh(0.5), 12);
  expect(gapAdmittance('single', 50, 0.02, 0.01)).toBeCloseTo(Math.exp(-0.5), 12);
});

test('magnets that touch make a square wave', () => {
  expect(magnetHarmonic(1, 1)).toBeCloseTo(4 / Math.PI, 12);
  expect(magnetHarmonic(3, 2 / 3)).toBeCloseTo(0, 12);
});
