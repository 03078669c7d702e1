import { describe, expect, it, test } from 'vitest';
import { blankDesign, solve } from '../../core';
import { prepared, sums } from '../../renderer/drawing/chart';
import { booksInWords, lossChart, wattsChart } from '../../renderer/drawing/watts';

const metric = { length: 'mm', wire: 'metric', temperature: 'C' } as const;
const { curve, match, stages } = solve(blankDesign());

describe.each([
  ['speed', curve, curve.map((p) => p.rpm)],
  ['wind', match, match.map((p) => p.wind)],
])('where the watts go over the %s', (_, points, values) => {
  const along = { x: { label: 'Along', kind: 'ratio' as const, values } };
  it('adds up to the power of the shaft, to a millionth', () => {
    const top = sums(wattsChart(points, along).series.map((s) => s.values));
    points.forEach((p, i) => expect(Math.abs((top[i] ?? NaN) - p.shaftWatts)).toBeLessThanOrEqual(1e-6 * Math.max(1e-3, p.shaftWatts)));
  });
  it('of the losses leaves what the load gets', () => {
    const top = sums(lossChart(points, along).series.map((s) => s.values));
    points.forEach((p, i) =>
      expect(Math.abs((top[i] ?? NaN) + p.dcWatts - p.shaftWatts)).toBeLessThanOrEqual(1e-6 * Math.max(1e-3, p.shaftWatts)),
    );
  });
  it('tells the shaft’s power under the pointer', () => {
    const { told } = prepared(wattsChart(points, along), metric).x;
    expect(told.at(-1)).toMatch(/^Along [\d.]+: Shaft [\d.]+ k?W$/);
  });
});

test('the books in words name what reaches the load and the greatest loss first', () => {
  const words = booksInWords({
    ...stages.rated,
    shaftWatts: 200,
    dcWatts: 150,
    copperLoss: 20,
    diodeLoss: 25,
    eddyLoss: 4.8,
    cableLoss: 0.2,
    bearingLoss: 0,
  });
  expect(words).toBe('At rated wind 75 % of the shaft’s power reaches the load; diodes 13 %, copper 10 %, eddy currents 2 %.');
  expect(booksInWords({ ...stages.rated, shaftWatts: 0 })).toBe('');
});
