import { expect, test } from 'vitest';
import { remanenceAt, remanenceFromReading, winterShare } from '../../../core/magnets/remanence';
import type { MagnetShape } from '../../../core/magnets/section';
import { magnetField, shapeModel } from '../../../core/magnets/shapes';

test('remanence falls by its coefficient per kelvin', () => {
  expect(remanenceAt(1.28, -0.0012, 20)).toBe(1.28);
  expect(remanenceAt(1.28, -0.0012, 70)).toBeCloseTo(1.28 * 0.94, 12);
  expect(remanenceAt(1.28, -0.0012, -30)).toBeGreaterThan(1.28);
});

test('where the straight line runs out there is no magnetism left, rather than magnetism the other way round', () => {
  expect(remanenceAt(1.2, -0.01, 150)).toBe(0);
});

test('a reading on the axis gives back the remanence, whichever pole was read', () => {
  const shapes: MagnetShape[] = [
    { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 },
    { kind: 'cylinder', diameter: 0.02, axial: 0.005 },
    { kind: 'sector', innerRadius: 0.04, outerRadius: 0.08, span: 0.4, axial: 0.01 },
  ];
  for (const shape of shapes) {
    const [x, y] = shapeModel(shape).centre(shape);
    const reading = magnetField(shape, 1.31)(x, y, shape.axial / 2 + 0.0008)[2];
    for (const fluxDensity of [reading, -reading])
      expect(
        remanenceFromReading({ shape, remanenceTempCoefficient: -0.0012 }, { fluxDensity, distance: 0.0008, temperature: 20 }),
      ).toBeCloseTo(1.31, 12);
  }
});

test('a warm magnet reads less than at 20 °C, and is the same magnet', () => {
  const shape: MagnetShape = { kind: 'cylinder', diameter: 0.02, axial: 0.005 };
  const fluxDensity = magnetField(shape, remanenceAt(1.31, -0.0012, 45))(0, 0, 0.0055)[2];
  const of = { shape, remanenceTempCoefficient: -0.0012 };
  expect(remanenceFromReading(of, { fluxDensity, distance: 0.003, temperature: 45 })).toBeCloseTo(1.31, 12);
  expect(remanenceFromReading({ ...of, remanenceTempCoefficient: -0.01 }, { fluxDensity, distance: 0.003, temperature: 140 })).toBe(
    Infinity,
  );
});

test('on the axis of a round magnet the reading follows from lengths alone', () => {
  // B = (B_r/2)·[(d + h)/√((d + h)² + R²) − d/√(d² + R²)], Furlani 2001, ch. 4 (from memory): R = 10 mm, h = 5 mm, d = 3 mm
  const fluxDensity = 0.65 * (8 / Math.hypot(8, 10) - 3 / Math.hypot(3, 10));
  const of = { shape: { kind: 'cylinder', diameter: 0.02, axial: 0.005 } as const, remanenceTempCoefficient: 0 };
  expect(remanenceFromReading(of, { fluxDensity, distance: 0.003, temperature: 20 })).toBeCloseTo(1.3, 9);
});

test('a magnet that loses 0.12 % a kelvin is 7.4 % stronger at −20 °C than at 40 °C', () => {
  // By hand: (1 + 0.0012 · 40) / (1 − 0.0012 · 20) = 1.048 / 0.976.
  expect(winterShare(1.29, -0.0012, remanenceAt(1.29, -0.0012, 40))).toBeCloseTo(1.048 / 0.976, 12);
});

test('magnets that the heat has left nothing are told no stronger in winter, rather than endlessly', () => {
  expect(winterShare(1.6, -0.01, remanenceAt(1.6, -0.01, 300))).toBe(1);
});
