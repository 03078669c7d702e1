import { describe, expect, it } from 'vitest';
import { prepared, type Chart } from '../../renderer/drawing/chart';
import { overlaid } from '../../renderer/drawing/overlay';

const metric = { length: 'mm', wire: 'metric', temperature: 'C' } as const;

const chartOf = (x: number[], values: (number | null)[], stacked = false): Chart => ({
  title: 'Watts',
  x: { label: 'Speed', kind: 'rpm', values: x },
  y: { label: 'Watts', kind: 'power' },
  series: stacked ? ['a', 'b'].map((label) => ({ label, values })) : [{ label: 'Watts', values }],
  stacked,
});

describe('a chart with another laid over it', () => {
  it('alone stays the very chart it was', () => {
    const chart = chartOf([0, 1], [0, 1]);
    expect(overlaid(chart, [])).toBe(chart);
  });

  it('has every place of both, each line read straight between its own points and ending with them', () => {
    const both = overlaid(chartOf([0, 10, 20], [0, 100, 200]), [{ name: 'A', chart: chartOf([5, 15, 30], [1, 2, 5]) }]);
    expect(both.x.values).toEqual([0, 5, 10, 15, 20, 30]);
    expect(both.series[0]?.values).toEqual([0, 50, 100, 150, 200, null]);
    expect(both.series[1]?.values).toEqual([null, 1, 1.5, 2, 3, 5]);
    expect(both.series[1]).toMatchObject({ label: 'Watts, A', other: { design: 0, like: 0 } });
  });

  it('bridges no hole', () => {
    const [own] = overlaid(chartOf([0, 10, 20], [0, null, 200]), [{ name: 'A', chart: chartOf([5], [1]) }]).series;
    expect(own?.values).toEqual([0, null, null, 200]);
  });

  it('in a stack is the top of the other stack, and the scale has room for it', () => {
    const both = overlaid(chartOf([0, 10], [0, 10], true), [{ name: 'A', chart: chartOf([0, 10], [0, 90], true) }]);
    expect(both.series.map((s) => s.label)).toEqual(['a', 'b', 'All together, A']);
    expect(both.series[2]?.values).toEqual([0, 180]);
    expect(prepared(both, metric).y.scale.max).toBe(200);
  });
});

it('a chart that is the same to the last digit is not laid over', () => {
  const chart = chartOf([0, 1], [0, 1]);
  expect(overlaid(chart, [{ name: 'as saved', chart: chartOf([0, 1], [0, 1]) }])).toBe(chart);
  const mixed = overlaid(chart, [
    { name: 'A', chart: chartOf([0, 1], [0, 1]) },
    { name: 'as saved', chart: chartOf([0, 1], [0, 2]) },
  ]);
  expect(mixed.series.map((s) => s.label)).toEqual(['Watts', 'Watts, as saved']);
});
