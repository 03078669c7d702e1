import { sums, type Chart, type ChartSeries } from './chart';

/** The same chart of another design. */
export interface OtherChart {
  name: string;
  chart: Chart;
}

/** A chart with those of other designs laid over it; of a stack, the top of the other one. Every place of any of them is read between its neighbours. */
export function overlaid(chart: Chart, others: readonly OtherChart[]): Chart {
  if (others.length === 0) return chart;
  const places = [...new Set([chart, ...others.map((o) => o.chart)].flatMap((c) => c.x.values))]
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  const own = chart.series.map((series) => ({ ...series, values: readAt(places, chart.x.values, series.values) }));
  return {
    ...chart,
    x: { ...chart.x, values: places },
    series: [...own, ...others.flatMap((other, design) => laid(other, design, chart, places))],
  };
}

function laid({ name, chart }: OtherChart, design: number, own: Chart, places: readonly number[]): ChartSeries[] {
  const columns = chart.series.map((series) => readAt(places, chart.x.values, series.values));
  if (chart.stacked) return [{ label: `All together, ${name}`, values: sums(columns), other: { design, like: 0 } }];
  return chart.series.map(({ label }, i) => {
    const like = own.series.findIndex((series) => series.label === label);
    return { label: `${label}, ${name}`, values: columns[i] ?? [], other: { design, like: like < 0 ? i : like } };
  });
}

/** Values at other places, straight between neighbours; none outside their own range or beside a hole. */
function readAt(places: readonly number[], x: readonly number[], values: readonly (number | null)[]): (number | null)[] {
  return places.map((place) => {
    const after = x.findIndex((at) => at >= place);
    if (after < 0) return null;
    const [right, high] = [x[after] ?? NaN, values[after] ?? null];
    if (right === place) return high;
    const [left, low] = [x[after - 1] ?? NaN, values[after - 1] ?? null];
    if (low === null || high === null || Number.isNaN(left)) return null;
    return low + ((high - low) * (place - left)) / (right - left);
  });
}
