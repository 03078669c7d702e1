import { describe, expect, it } from 'vitest';
import { csvOf, prepared, type Chart } from '../../renderer/drawing/chart';

const metric = { length: 'mm', wire: 'metric', temperature: 'C' } as const;
const imperial = { length: 'in', wire: 'awg', temperature: 'F' } as const;

const chart: Chart = {
  title: 'Coil temperature',
  x: { label: 'Speed', kind: 'rpm', values: [0, 100, 200] },
  y: { label: 'Temperature', kind: 'temperature' },
  series: [
    { label: 'Coil', values: [20, 40, Number.NaN] },
    { label: 'Magnet, rear', values: [20, null, 100] },
  ],
  limits: [
    { along: 'y', at: 110, label: 'limit', tone: 'bad' },
    { along: 'x', at: null, label: 'cut-in' },
  ],
};

describe('prepared', () => {
  it('shows numbers in the user’s units', () => {
    expect(prepared(chart, metric).series[1]?.data).toEqual([20, null, 100]);
    const shown = prepared(chart, imperial).series[1]?.data ?? [];
    expect(shown[0]).toBeCloseTo(68, 10);
    expect(shown[2]).toBeCloseTo(212, 10);
    expect(prepared(chart, imperial).y.label).toBe('Temperature, °F');
  });

  it('draws no point that is not a number', () => {
    expect(prepared(chart, metric).series[0]?.data).toEqual([20, 40, null]);
    const holed = { ...chart, x: { ...chart.x, values: [0, Number.NaN, 200] } };
    expect(prepared(holed, metric)).toMatchObject({ x: { data: [0, 200] } });
    expect(prepared(holed, metric).series[0]?.data).toEqual([20, null]);
  });

  it('leaves room for a limit beyond the values, and leaves out a limit that is not there', () => {
    const { y, limits } = prepared(chart, metric);
    expect(y.scale.max).toBeGreaterThanOrEqual(110);
    expect(limits).toEqual([{ along: 'y', at: 110, label: 'limit, 110.0 °C', tone: 'bad', row: 0, side: 'left' }]);
  });

  it('labels upright lines in rows of their own, on the side where no other line crosses the words', () => {
    const limits = [
      { along: 'x' as const, at: 90, label: 'cut-in' },
      { along: 'y' as const, at: 50, label: 'limit' },
      { along: 'x' as const, at: 110, label: 'rated' },
      { along: 'x' as const, at: 190, label: 'run-away' },
    ];
    const upright = prepared({ ...chart, limits }, metric).limits.filter((l) => l.along === 'x');
    expect(upright.map((l) => [l.row, l.side])).toEqual([
      [0, 'left'],
      [1, 'right'],
      [2, 'left'],
    ]);
  });

  it('labels a level line at the end where no series passes, and no upright line if it can be', () => {
    const sideOf = (values: number[], cutIn: number | null = null) =>
      prepared(
        {
          ...chart,
          series: [{ label: 'Coil', values }],
          limits: [
            { along: 'y', at: 110, label: 'limit' },
            { along: 'x', at: cutIn, label: 'cut-in' },
          ],
        },
        metric,
      ).limits[0]?.side;
    expect(sideOf([20, 60, 105])).toBe('left');
    expect(sideOf([105, 60, 20])).toBe('right');
    expect(sideOf([20, 200, 160])).toBe('right');
    expect(sideOf([20, 40, 60], 30)).toBe('right');
    expect(sideOf([20, 60, 105], 30)).toBe('left');
  });

  it('has axes and lines even where there is nothing to draw', () => {
    const empty = { ...chart, x: { ...chart.x, values: [] }, series: [], limits: [{ along: 'x' as const, at: 300, label: 'rated' }] };
    const { x, y, limits } = prepared(empty, metric);
    for (const { min, max } of [x.scale, y.scale]) expect(max).toBeGreaterThan(min);
    expect(limits).toHaveLength(1);
  });

  it('keeps room for the words over a level line at the top', () => {
    const limits = [{ along: 'y' as const, at: 120, label: 'limit' }];
    expect(prepared({ ...chart, limits }, metric).y.scale.max).toBeGreaterThan(120);
  });

  it('leaves room for all the areas of a stack together', () => {
    const stack: Chart = {
      ...chart,
      y: { label: 'Loss', kind: 'power' },
      stacked: true,
      limits: [],
      series: ['a', 'b'].map((label) => ({ label, values: [0, 50, 90] })),
    };
    expect(prepared(stack, metric).y.scale).toMatchObject({ min: 0, max: 200 });
  });
});

describe('csvOf', () => {
  it('puts units in the heads, quotes where it must and leaves holes empty', () => {
    expect(csvOf(chart, metric).split('\r\n')).toEqual(['"Speed, rpm","Coil, °C","Magnet, rear, °C"', '0,20,20', '100,40,', '200,,100']);
  });

  it('writes what the chart shows, to seven digits', () => {
    const angles: Chart = {
      title: 'Field',
      x: { label: 'Angle', kind: 'angle', values: [Math.PI / 3] },
      y: { label: 'Ratio', kind: 'ratio' },
      series: [{ label: 'A "b"', values: [-1 / 3] }],
    };
    expect(csvOf(angles, metric)).toBe('"Angle, °","A ""b"""\r\n60,-0.3333333');
  });
});
