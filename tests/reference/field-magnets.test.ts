import { expect, test } from 'vitest';
import { magnetField } from '../../core/magnets/shapes';
import type { MagnetShape } from '../../core/magnets/section';
import table from './field_magnets.json';

// Origin of the table and of the tolerances: field_magnets.source.md.
const cases: { name: string; shape: MagnetShape; tolerance: number }[] = [
  { name: 'block_46x30x10', shape: { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 }, tolerance: 1e-6 },
  { name: 'block_20x12x6', shape: { kind: 'block', radial: 0.02, tangential: 0.012, axial: 0.006 }, tolerance: 1e-6 },
  { name: 'cylinder_d25xh8', shape: { kind: 'cylinder', diameter: 0.025, axial: 0.008 }, tolerance: 1e-6 },
  { name: 'cylinder_d20xh5', shape: { kind: 'cylinder', diameter: 0.02, axial: 0.005 }, tolerance: 1e-6 },
  {
    name: 'ring_sector_r40-75_22deg_h8',
    shape: { kind: 'sector', innerRadius: 0.04, outerRadius: 0.075, span: 0.3839724354387525, axial: 0.008 },
    tolerance: 1e-5,
  },
];

test.each(cases)('the field of $name agrees with the table at every point', ({ name, shape, tolerance }) => {
  const row = table.outputs.find((output) => output.name === name)!;
  const field = magnetField(shape, table.inputs.J_T);
  let worst = 0;
  row.points_m.forEach((point, i) => {
    const b = field(point[0], point[1], point[2]);
    const expected = row.B_T[i];
    const error = Math.hypot(...b.map((component, axis) => component - expected[axis]));
    worst = Math.max(worst, error / Math.hypot(...expected));
  });
  expect(worst).toBeLessThan(tolerance);
});

test('every case of the table is tested', () => {
  expect(cases.map((c) => c.name)).toEqual(table.outputs.map((output) => output.name));
});
