import { describe, expect, test } from 'vitest';
import { completeElliptic } from '../../../core/magnets/cylinder';
import type { MagnetShape } from '../../../core/magnets/section';
import { magnetField, magnetShapes, magnetVolume, shapeModel } from '../../../core/magnets/shapes';

const block: MagnetShape = { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 };
const cylinder: MagnetShape = { kind: 'cylinder', diameter: 0.03, axial: 0.01 };
const sector: MagnetShape = { kind: 'sector', innerRadius: 0.04, outerRadius: 0.08, span: 0.4, axial: 0.01 };

test('on the axis of a cylinder the field is the solenoid’s', () => {
  const field = magnetField(cylinder, 1.2);
  const end = (z: number) => z / Math.hypot(z, 0.015);
  for (const z of [0, 0.002, 0.005, 0.02, 0.1]) expect(field(0, 0, z)[2]).toBeCloseTo(0.6 * (end(z + 0.005) - end(z - 0.005)), 12);
  expect(field(0, 0, 0.02).slice(0, 2)).toEqual([0, 0]);
});

test('on the axis of a block the field is the two faces’ solid angle', () => {
  const face = (z: number) => Math.atan((0.023 * 0.015) / (z * Math.hypot(0.023, 0.015, z)));
  for (const z of [0.006, 0.02, 0.1]) {
    expect(magnetField(block, 1)(0, 0, z)[2]).toBeCloseTo((face(z - 0.005) - face(z + 0.005)) / Math.PI, 12);
  }
});

test('complete elliptic integrals are those of the handbook (Abramowitz & Stegun 1964, table 17.1, m = 0.5)', () => {
  const complement = Math.sqrt(0.5);
  expect(completeElliptic(complement, 1, 1, 1)).toBeCloseTo(1.85407467730137, 13);
  expect(completeElliptic(complement, 1, 1, 0.5)).toBeCloseTo(1.35064388104768, 13);
});

describe.each([block, cylinder, sector])('a $kind', (shape) => {
  test('has the volume that its outline encloses', () => {
    const footprint = shapeModel(shape).footprint(shape);
    const area =
      footprint.kind === 'circle'
        ? Math.PI * footprint.radius ** 2
        : footprint.points.reduce((sum, [x, y], i, all) => {
            const [nx, ny] = all[(i + 1) % all.length];
            return sum + (x * ny - nx * y) / 2;
          }, 0);
    expect(magnetVolume(shape) / (Math.abs(area) * shape.axial)).toBeCloseTo(1, 3);
  });

  test('mirrors at its mid-height and at its radial plane', () => {
    const field = magnetField(shape, 1);
    const [cx] = shapeModel(shape).centre(shape);
    const [bx, by, bz] = field(cx + 0.012, 0.017, 0.009);
    const below = field(cx + 0.012, 0.017, -0.009);
    const aside = field(cx + 0.012, -0.017, 0.009);
    [-bx, -by, bz].forEach((b, axis) => expect(below[axis]).toBeCloseTo(b, 12));
    [bx, -by, bz].forEach((b, axis) => expect(aside[axis]).toBeCloseTo(b, 12));
  });

  test('has a field inside that is the remanence less what it turns on itself', () => {
    const [cx] = shapeModel(shape).centre(shape);
    const [, , bz] = magnetField(shape, 1)(cx, 0, 0);
    expect(bz).toBeGreaterThan(0.1);
    expect(bz).toBeLessThan(1);
  });

  test('reaches as far from the axle as its outline', () => {
    const model = shapeModel(shape);
    const { inner, outer } = model.radii(shape, 0.1);
    const footprint = model.footprint(shape);
    const at = model.onAxle ? 0 : 0.1;
    const distances =
      footprint.kind === 'circle'
        ? [at - footprint.radius, at + footprint.radius]
        : footprint.points.map(([x, y]) => Math.hypot(at + x, y));
    expect(outer).toBeCloseTo(Math.max(...distances), 9);
    expect(inner).toBeLessThanOrEqual(Math.min(...distances) + 1e-12);
  });

  test('touches its neighbour at the pitch it says it takes', () => {
    const model = shapeModel(shape);
    const taken = model.angleTaken(shape, 0.1);
    const footprint = model.footprint(shape);
    const at = model.onAxle ? 0 : 0.1;
    const widest =
      footprint.kind === 'circle' ? Math.asin(footprint.radius / at) : Math.max(...footprint.points.map(([x, y]) => Math.atan2(y, at + x)));
    expect(taken).toBeCloseTo(2 * widest, 9);
  });
});

test('a point on a curved side counts as outside', () => {
  const outside = magnetField(sector, 1)(0.08 + 1e-7, 0, 0.001);
  magnetField(sector, 1)(0.08, 0, 0.001).forEach((b, axis) => expect(b).toBeCloseTo(outside[axis], 4));
  const round = magnetField(cylinder, 1)(0.015 + 1e-7, 0, 0.001);
  magnetField(cylinder, 1)(0.015, 0, 0.001).forEach((b, axis) => expect(b).toBeCloseTo(round[axis], 4));
});

test('every kind in the registry has a name', () => {
  expect(Object.values(magnetShapes).map((model) => model.label)).toEqual(['Block', 'Cylinder', 'Ring sector']);
});

test('B_z alone is the whole field’s B_z, above, below, inside, on faces and on edges', () => {
  for (const shape of [block, cylinder, sector]) {
    const model = shapeModel(shape);
    const [x0] = model.centre(shape);
    const [alone, whole] = [model.axialField(shape, shape.axial, 1e-9), model.fieldInto(shape, shape.axial, 1e-9)];
    for (const x of [-0.05, -0.023, 0, 0.0141, 0.023])
      for (const y of [-0.015, 0, 0.004, 0.03])
        for (const z of [-0.02, -0.005, 0, 0.003, 0.005, 0.0071]) {
          const out = [0, 0, 0];
          whole(x0 + x, y, z, 1, out);
          expect(alone(x0 + x, y, z)).toBeCloseTo(out[2], 12);
        }
  }
});
