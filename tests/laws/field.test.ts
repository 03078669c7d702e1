/*
 * Laws the field must obey, whatever the formulas:
 *   doubling remanence doubles B                       all shapes
 *   flux out of a closed box is zero                   all shapes, magnet outside, inside and cut through
 *   curl of B is zero in air                           all shapes
 *   far away every magnet is the dipole of its volume  all shapes, block against cylinder
 *   sectors side by side make a ring                   ring = cylinder less bore
 *   the machine repeats every pole pair and changes sign from pole to pole
 *   steel behind the magnets: no field along the plate
 *   a return plate stands for the other half of a pair
 *   any machine that can be entered yields numbers
 *   a thicker plate, a nearer disc, more steel: never less field
 */
import { describe, expect, test } from 'vitest';
import { bodyStack } from '../../core/field/images';
import { fieldAt } from '../../core/field/machine';
import { steelPlate } from '../../core/field/plate';
import { fieldStage } from '../../core/field/stage';
import type { DiscsSection } from '../../core/field/section';
import type { MagnetShape } from '../../core/magnets/section';
import { type FieldFunction, magnetField, magnetVolume, shapeModel } from '../../core/magnets/shapes';
import { gaussLegendre } from '../../core/numeric/integrate';

const shapes: MagnetShape[] = [
  { kind: 'block', radial: 0.04, tangential: 0.02, axial: 0.01 },
  { kind: 'cylinder', diameter: 0.03, axial: 0.012 },
  { kind: 'sector', innerRadius: 0.05, outerRadius: 0.09, span: 0.5, axial: 0.01 },
];
const discs: DiscsSection = {
  arrangement: 'facing-pair',
  poles: 12,
  pitchRadius: 0.12,
  backing: { kind: 'steel', thickness: 0.01 },
  runningClearance: 0.001,
};
type Vector = [number, number, number];

function fluxOut(field: FieldFunction, centre: Vector, half: Vector): { net: number; gross: number } {
  const { nodes, weights } = gaussLegendre(24);
  let net = 0;
  let gross = 0;
  for (const axis of [0, 1, 2] as const) {
    const [u, v] = [(axis + 1) % 3, (axis + 2) % 3] as [0 | 1 | 2, 0 | 1 | 2];
    for (const side of [-1, 1]) {
      nodes.forEach((a, i) =>
        nodes.forEach((b, j) => {
          const at: Vector = [...centre];
          at[axis] += side * half[axis];
          at[u] += a * half[u];
          at[v] += b * half[v];
          const flux = side * field(...at)[axis] * weights[i] * weights[j] * half[u] * half[v];
          net += flux;
          gross += Math.abs(flux);
        }),
      );
    }
  }
  return { net, gross };
}

describe.each(shapes)('a $kind', (shape) => {
  const field = magnetField(shape, 1.2);
  const [cx, cy] = shapeModel(shape).centre(shape);

  test('of twice the remanence has twice the field', () => {
    const twice = magnetField(shape, 2.4);
    for (const offset of [
      [0.03, 0.02, 0.02],
      [0, 0, 0.03],
      [-0.04, 0.01, 0],
    ] as Vector[]) {
      const at: Vector = [cx + offset[0], cy + offset[1], offset[2]];
      field(...at).forEach((b, axis) => expect(twice(...at)[axis]).toBeCloseTo(2 * b, 14));
    }
  });

  test('sends no net flux out of a closed box beside it', () => {
    const { net, gross } = fluxOut(field, [cx + 0.02, cy + 0.05, 0.02], [0.02, 0.015, 0.01]);
    expect(Math.abs(net)).toBeLessThan(1e-7 * gross);
  });

  test('sends no net flux out of a closed box round it', () => {
    const { net, gross } = fluxOut(field, [cx, cy, 0], [0.045, 0.045, 0.03]);
    expect(Math.abs(net)).toBeLessThan(1e-6 * gross);
  });

  test('has no curl in air', () => {
    const [x, y, z] = [cx + 0.012, cy + 0.021, 0.014];
    const d = 1e-5;
    const slope = (component: 0 | 1 | 2, axis: 0 | 1 | 2) => {
      const [up, down]: [Vector, Vector] = [
        [x, y, z],
        [x, y, z],
      ];
      up[axis] += d;
      down[axis] -= d;
      return (field(...up)[component] - field(...down)[component]) / (2 * d);
    };
    expect(slope(2, 1) - slope(1, 2)).toBeCloseTo(0, 4);
    expect(slope(0, 2) - slope(2, 0)).toBeCloseTo(0, 4);
    expect(slope(1, 0) - slope(0, 1)).toBeCloseTo(0, 4);
  });

  test('is a dipole from afar', () => {
    // A sector's dipole sits at its centroid, 2/3 (R₂³ − R₁³)/(R₂² − R₁²) · sin(s/2)/(s/2) from the axle.
    const centroid =
      shape.kind === 'sector'
        ? ((2 / 3) * (shape.outerRadius ** 3 - shape.innerRadius ** 3) * Math.sin(shape.span / 2)) /
          ((shape.outerRadius ** 2 - shape.innerRadius ** 2) * (shape.span / 2))
        : 0;
    const moment = (1.2 * magnetVolume(shape)) / (4 * Math.PI);
    const [dx, dy, dz] = [1.2, 0.9, 2];
    const r2 = dx * dx + dy * dy + dz * dz;
    const expected = [3 * dx * dz, 3 * dy * dz, 3 * dz * dz - r2].map((term) => (moment * term) / r2 ** 2.5);
    field(centroid + dx, dy, dz).forEach((b, axis) => expect(b / expected[axis] - 1).toBeCloseTo(0, 3));
  });

  test('has a finite field on every face, edge, corner and axis', () => {
    const half = shape.axial / 2;
    const { inner, outer } = shapeModel(shape).radii(shape, 0);
    const places = shape.kind === 'sector' ? [0, inner, outer] : [0, -outer, inner, outer];
    const turn = shape.kind === 'sector' ? shape.span / 2 : 0.4;
    for (const r of places) {
      for (const angle of [0, turn, -turn, Math.PI / 2]) {
        for (const z of [-2 * half, -half, 0, half, 2 * half]) {
          for (const b of field(r * Math.cos(angle), r * Math.sin(angle), z)) expect(Number.isFinite(b)).toBe(true);
        }
      }
    }
    if (shape.kind === 'block') {
      for (const b of field(shape.radial / 2, shape.tangential / 2, half)) expect(Number.isFinite(b)).toBe(true);
    }
  });

  test('has a normal component that is continuous through its pole face', () => {
    const half = shape.axial / 2;
    const at = (z: number) => field(cx + 0.003, cy + 0.002, z)[2];
    expect(at(half)).toBeCloseTo(at(half + 1e-9), 6);
    expect(at(half)).toBeCloseTo(at(half - 1e-9), 6);
  });

  test('makes a machine that changes sign from pole to pole and repeats every pair', () => {
    const shapeHere: MagnetShape = shape.kind === 'sector' ? { ...shape, innerRadius: 0.1, outerRadius: 0.14, span: 0.4 } : shape;
    const whole = fieldAt(shapeHere, 1.2, 1.05, discs, 0.014);
    const at = (angle: number) => whole(0.11 * Math.cos(angle), 0.11 * Math.sin(angle), 0.002)[2];
    const pitch = (2 * Math.PI) / 12;
    expect(at(0.1 + pitch)).toBeCloseTo(-at(0.1), 10);
    expect(at(0.1 + 2 * pitch)).toBeCloseTo(at(0.1), 10);
    expect(at(-0.1)).toBeCloseTo(at(0.1), 10);
  });

  test('meets steel at a right angle', () => {
    const shapeHere: MagnetShape = shape.kind === 'sector' ? { ...shape, innerRadius: 0.1, outerRadius: 0.14, span: 0.4 } : shape;
    for (const arrangement of ['single-with-return', 'facing-pair'] as const) {
      const whole = fieldAt(shapeHere, 1.2, 1, { ...discs, arrangement }, 0.014);
      const { steelAbove } = bodyStack(arrangement, true, 0.014, shape.axial);
      const [bx, by, bz] = whole(0.09, 0.03, steelAbove - 1e-9);
      expect(Math.hypot(bx, by)).toBeLessThan(1e-5 + 1e-4 * Math.abs(bz));
      expect(whole(0.09, 0.03, steelAbove + 1e-3)).toEqual([0, 0, 0]);
    }
  });
});

test('a block and a cylinder of one volume are the same dipole from afar', () => {
  const side = 0.02;
  const block = magnetField({ kind: 'block', radial: side, tangential: side, axial: 0.01 }, 1);
  const cylinder = magnetField({ kind: 'cylinder', diameter: (2 * side) / Math.sqrt(Math.PI), axial: 0.01 }, 1);
  for (const at of [
    [1, 0, 0],
    [0, 0, 1],
    [0.5, 0.6, 0.7],
  ] as Vector[]) {
    block(...at).forEach((b, axis) => expect(cylinder(...at)[axis] - b).toBeCloseTo(0, 10));
  }
});

test('sectors side by side make a ring, which is a cylinder less its bore', () => {
  const ring = magnetField({ kind: 'cylinder', diameter: 0.1, axial: 0.01 }, 1);
  const bore = magnetField({ kind: 'cylinder', diameter: 0.06, axial: 0.01 }, 1);
  for (const pieces of [3, 4, 7]) {
    const sector = magnetField({ kind: 'sector', innerRadius: 0.03, outerRadius: 0.05, span: (2 * Math.PI) / pieces, axial: 0.01 }, 1);
    for (const [x, y, z] of [
      [0.041, 0.003, 0.008],
      [0.01, -0.02, 0.002],
      [0.06, 0.02, -0.004],
      [0.04, 0, 0.001],
      [0, 0, 0.02],
    ] as Vector[]) {
      const sum: Vector = [0, 0, 0];
      for (let k = 0; k < pieces; k++) {
        const [c, s] = [Math.cos((2 * Math.PI * k) / pieces), Math.sin((2 * Math.PI * k) / pieces)];
        const [bx, by, bz] = sector(x * c + y * s, y * c - x * s, z);
        sum[0] += bx * c - by * s;
        sum[1] += bx * s + by * c;
        sum[2] += bz;
      }
      const expected = ring(x, y, z).map((b, axis) => b - bore(x, y, z)[axis]);
      sum.forEach((b, axis) => expect(b).toBeCloseTo(expected[axis], 7));
    }
  }
});

test('steel, a second disc and a smaller gap each give more field', () => {
  const block = shapes[0];
  const centre = (section: Partial<DiscsSection>, gap = 0.014) => fieldAt(block, 1.2, 1.05, { ...discs, ...section }, gap)(0.12, 0, 0)[2];
  const none = { kind: 'none' } as const;
  expect(centre({ backing: none })).toBeLessThan(centre({}));
  expect(centre({ backing: none, arrangement: 'single' })).toBeLessThan(centre({ backing: none, arrangement: 'single-with-return' }));
  expect(centre({ arrangement: 'single' })).toBeLessThan(centre({ arrangement: 'facing-pair' }));
  expect(centre({}, 0.014)).toBeLessThan(centre({}, 0.012));
});

test('a return plate stands for the other half of a pair with twice the gap', () => {
  const block = shapes[0];
  const back = fieldAt(block, 1.2, 1, { ...discs, arrangement: 'single-with-return', backing: { kind: 'none' } }, 0.012);
  const pair = fieldAt(block, 1.2, 1, { ...discs, backing: { kind: 'none' } }, 0.024);
  for (const z of [-0.004, 0, 0.005]) {
    const expected = pair(0.115, 0.02, z - 0.006);
    back(0.115, 0.02, z).forEach((b, axis) => expect(b).toBeCloseTo(expected[axis], 12));
  }
});

test('a thicker plate never weakens the field by saturating', () => {
  const machine = {
    arrangement: 'facing-pair',
    steel: true,
    polePitch: 0.06,
    magnetWidth: 0.03,
    magnetHeight: 0.01,
    gapLength: 0.013,
    recoilPermeability: 1.05,
  } as const;
  let before = 0;
  for (const thickness of [0.001, 0.002, 0.004, 0.006, 0.008, 0.01]) {
    const { saturation } = steelPlate(machine, 1.3, thickness);
    expect(saturation).toBeGreaterThan(before);
    expect(saturation).toBeLessThanOrEqual(1);
    before = saturation;
  }
});

test('any machine that can be entered yields numbers, however poor', () => {
  let state = 20;
  const draw = () => (state = (state * 16807) % 2147483647) / 2147483647;
  const between = (low: number, high: number) => low * (high / low) ** draw();
  const isFinite = (value: unknown): boolean =>
    typeof value === 'number'
      ? Number.isFinite(value)
      : typeof value !== 'object' || value === null || Object.values(value).every(isFinite);
  for (let n = 0; n < 60; n++) {
    const pitchRadius = between(0.01, 1.5);
    const axial = between(0.5e-3, 0.3);
    const innerRadius = between(2e-3, 1.5);
    const shape: MagnetShape = [
      { kind: 'block' as const, radial: between(0.5e-3, 0.3), tangential: between(0.5e-3, 0.3), axial },
      { kind: 'cylinder' as const, diameter: between(0.5e-3, 0.3), axial },
      { kind: 'sector' as const, innerRadius, outerRadius: innerRadius * between(1.01, 10), span: between(0.01, 3.1), axial },
    ][n % 3];
    const section: DiscsSection = {
      arrangement: (['facing-pair', 'single', 'single-with-return'] as const)[Math.floor(draw() * 3)],
      poles: 2 * Math.floor(between(2, 40)),
      pitchRadius,
      backing: draw() < 0.5 ? { kind: 'none' } : { kind: 'steel', thickness: between(0.5e-3, 0.05) },
      runningClearance: 0.001,
    };
    const halfHeight = between(0.1e-3, 0.1);
    const inner = pitchRadius * between(0.2, 1);
    const region = {
      gapLength: 2 * halfHeight + between(0.2e-3, 0.06),
      innerRadius: inner,
      outerRadius: inner * between(1.01, 3),
      halfHeight,
    };
    const result = fieldStage(shape, between(0.05, 1.6), 1 + draw(), section, region, 955e3);
    expect(isFinite(result), JSON.stringify({ shape, section, region })).toBe(true);
    expect(result.saturation).toBeLessThan(1 + 1e-12);
    expect(result.recoil).toBeLessThan(1 + 1e-12);
  }
});
