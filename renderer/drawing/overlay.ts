import { sums, type Chart, type ChartSeries } from './chart';

/** The same chart of another design. */
export interface OtherChart {
  name: string;
  chart: Chart;
}

/**
 * A chart with those of other designs laid over it; of a stack, the top of the other one. Every place of any of them is read between its
 * neighbours. One that is the same to the last digit is left out.
 */
export function overlaid(chart: Chart, others: readonly OtherChart[]): Chart {
  const differing = others.filter((other) => !isSame(chart, other.chart));
  if (differing.length === 0) return chart;
  const places = [...new Set([chart, ...differing.map((o) => o.chart)].flatMap((c) => c.x.values))]
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  const own = chart.series.map((series) => ({ ...series, values: readAt(places, chart.x.values, series.values) }));
  return {
    ...chart,
    x: { ...chart.x, values: places },
    series: [...own, ...differing.flatMap((other) => laid(other, others.indexOf(other), chart, places))],
  };
}

/** Nothing to see in laying it over. */
const isSame = (own: Chart, other: Chart) =>
  alike(own.x.values, other.x.values) &&
  own.series.length === other.series.length &&
  own.series.every(({ values }, i) => alike(values, other.series[i]?.values ?? []));

const alike = (a: readonly (number | null)[], b: readonly (number | null)[]) => a.length === b.length && a.every((v, i) => v === b[i]);

function laid({ name, chart }: OtherChart, design: number, own: Chart, places: readonly number[]): ChartSeries[] {
  const columns = chart.series.map((series) => readAt(places, chart.x.values, series.values));
  if (chart.stacked) return [{ label: `${chart.whole ?? 'All together'}, ${name}`, values: sums(columns), other: { design, like: 0 } }];
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
