import { expect, test } from 'vitest';
import { magnetField } from '../../core/magnets/shapes';
import type { MagnetShape } from '../../core/magnets/section';
import table from './field_magnets.json';
import { held } from './held';

// Origin of the table and of the tolerances: field_magnets.source.md.
const hold = {
  block: held('block', 1e-6),
  cylinder: held('cylinder', 1e-6),
  sector: held('ring sector', 1e-5),
};

const cases: { name: string; shape: MagnetShape }[] = [
  { name: 'block_46x30x10', shape: { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 } },
  { name: 'block_20x12x6', shape: { kind: 'block', radial: 0.02, tangential: 0.012, axial: 0.006 } },
  { name: 'cylinder_d25xh8', shape: { kind: 'cylinder', diameter: 0.025, axial: 0.008 } },
  { name: 'cylinder_d20xh5', shape: { kind: 'cylinder', diameter: 0.02, axial: 0.005 } },
  {
    name: 'ring_sector_r40-75_22deg_h8',
    shape: { kind: 'sector', innerRadius: 0.04, outerRadius: 0.075, span: 0.3839724354387525, axial: 0.008 },
  },
];

test.each(cases)('the field of $name agrees with the table at every point', ({ name, shape }) => {
  const row = table.outputs.find((output) => output.name === name)!;
  const field = magnetField(shape, table.inputs.J_T);
  let worst = 0;
  row.points_m.forEach((point, i) => {
    const b = field(point[0], point[1], point[2]);
    const expected = row.B_T[i];
    const error = Math.hypot(...b.map((component, axis) => component - expected[axis]));
    worst = Math.max(worst, error / Math.hypot(...expected));
  });
  hold[shape.kind](worst);
});

test('every case of the table is tested', () => {
  expect(cases.map((c) => c.name)).toEqual(table.outputs.map((output) => output.name));
});
