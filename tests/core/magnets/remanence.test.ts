import { expect, test } from 'vitest';
import { remanenceAt, remanenceFromReading } from '../../../core/magnets/remanence';
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
    expect(remanenceFromReading(shape, reading, 0.0008)).toBeCloseTo(1.31, 12);
    expect(remanenceFromReading(shape, -reading, 0.0008)).toBeCloseTo(1.31, 12);
  }
});
