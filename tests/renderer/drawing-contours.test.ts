import { expect, test } from 'vitest';
import { fluxLinesOf, solve, type Design } from '../../core';
import { contours, type Grid } from '../../renderer/drawing/contours';
import { fieldMap, fieldMapDrawing } from '../../renderer/worksheets/magnets/field-map';
import { fluxDrawing } from '../../renderer/worksheets/magnets/flux-drawing';
import { demo } from '../demo';

const gridOf = (value: (x: number, y: number) => number, size = 41): Grid => {
  const at = (i: number) => (2 * i) / (size - 1) - 1;
  const values = Array.from({ length: size * size }, (_, i) => value(at(i % size), at(Math.floor(i / size))));
  return { rows: size, columns: size, values, place: (row, column) => [at(column), at(row)] };
};

test('the level line of a cone is one closed circle', () => {
  const lines = contours(
    gridOf((x, y) => Math.hypot(x, y)),
    0.5,
  );
  expect(lines).toHaveLength(1);
  const [line = []] = lines;
  for (const [x, y] of line) expect(Math.hypot(x, y)).toBeCloseTo(0.5, 2);
  expect(line.at(-1)).toEqual(line[0]);
});

test('the level line of a slope is one straight line from edge to edge', () => {
  const lines = contours(
    gridOf((x) => x),
    0.31,
  );
  expect(lines).toHaveLength(1);
  for (const [x] of lines[0] ?? []) expect(x).toBeCloseTo(0.31, 12);
  expect(lines[0]).toHaveLength(41);
});

test('a saddle has two lines, and a plain none', () => {
  const saddle = gridOf((x, y) => x * y + 1e-3);
  expect(contours(saddle, 0.2)).toHaveLength(2);
  expect(
    contours(
      gridOf(() => 1),
      2,
    ),
  ).toEqual([]);
});

test('the map of the field has the gap’s own peak, turns round from pole to pole and has level lines within it', () => {
  const design = demo('shed-light');
  const results = solve(design);
  const { innerRadius, outerRadius } = results.stages.winding;
  const map = fieldMap(design, innerRadius, outerRadius);
  const peak = Math.max(...map.values);
  expect(peak).toBeGreaterThan(0.95 * results.gap.peak);
  expect(Math.min(...map.values)).toBeCloseTo(-peak, 12);
  const { strokes, step } = fieldMapDrawing(map, design, results);
  const named = strokes.flatMap((stroke) => ('name' in stroke && stroke.name ? [Number.parseFloat(stroke.name)] : []));
  expect(Math.max(...named)).toBeCloseTo(Math.floor(peak / step) * step, 6);
  expect(named).toContain(0);
  expect(strokes.filter(({ layer }) => layer === 'outline')).toHaveLength(2);
});

test.each<Partial<Design['discs']>>([
  {},
  { misalignment: 0.03 },
  { arrangement: 'single', backing: { kind: 'none' } },
  { arrangement: 'single-with-return' },
])('flux lines fill two poles of the section and keep out of magnets and plates: %o', (change) => {
  const whole = demo('hill-cabin');
  const design = { ...whole, discs: { ...whole.discs, ...change } };
  const { strokes, bounds } = fluxDrawing(fluxLinesOf(design, 16), design, solve(design));
  const lines = strokes.flatMap((stroke) => (stroke.kind === 'polyline' && stroke.layer === 'outline' ? [stroke.points] : []));
  expect(lines.length).toBeGreaterThan(24);
  const solids = strokes.flatMap((stroke) => (stroke.kind === 'polyline' && stroke.filled ? [stroke.points] : []));
  for (const [s, z] of lines.flat()) {
    expect(s).toBeGreaterThan(bounds.minX);
    expect(s).toBeLessThan(bounds.maxX);
    for (const corners of solids) {
      const [xs, zs] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
      const depth = Math.min(s - Math.min(...xs), Math.max(...xs) - s, z - Math.min(...zs), Math.max(...zs) - z);
      expect(depth).toBeLessThan(0.01);
    }
  }
});
