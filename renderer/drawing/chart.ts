import type { UnitKind } from '../../core';
import { entryUnit, format, inEntryUnit, type UnitPreferences } from '../units';
import { placed, type PreparedLimit } from './limit-labels';
import { scaleFor, tightScale, type Scale } from './scale';

export interface ChartSeries {
  label: string;
  values: readonly (number | null)[];
  /** Of another design laid over this one: which of the others, from 0, and the place of the own series it answers to. */
  other?: { design: number; like: number };
}

export interface ChartLimit {
  along: 'x' | 'y';
  /** null: there is none, and no line. */
  at: number | null;
  label: string;
  tone?: 'bad' | 'plain';
}

/** Quantities against one another; numbers in SI, shown in the user's units. */
export interface Chart {
  title: string;
  x: { label: string; kind: UnitKind; values: readonly number[]; fromZero?: boolean };
  y: { label: string; kind: UnitKind; fromZero?: boolean };
  series: readonly ChartSeries[];
  /** Areas one upon the other rather than lines. */
  stacked?: boolean;
  /** What a stack adds up to: told under the pointer above its parts. */
  whole?: string;
  limits?: readonly ChartLimit[];
}

/** A chart in the user's units, without a number that cannot be drawn. */
export interface PreparedChart {
  /** `told` is what hovering says of each place. */
  x: { label: string; data: number[]; told: string[]; scale: Scale };
  y: { label: string; scale: Scale };
  series: { id: string; label: string; data: (number | null)[]; told: string[]; other?: ChartSeries['other'] }[];
  limits: PreparedLimit[];
}

export function prepared(chart: Chart, units: UnitPreferences): PreparedChart {
  const keep = chart.x.values.map((v, i) => (Number.isFinite(v) ? i : -1)).filter((i) => i >= 0);
  const data = keep.map((i) => inEntryUnit(chart.x.values[i] ?? 0, chart.x.kind, units));
  const series = chart.series.map(({ label, values, other }, n) => ({
    id: `series-${n + 1}`,
    label,
    data: keep.map((i) => shownOrNull(values[i] ?? null, chart.y.kind, units)),
    told: keep.map((i) => readOut(values[i], chart.y.kind, units)),
    other,
  }));
  const limits = (chart.limits ?? []).flatMap(({ along, at, label, tone = 'plain' }) => {
    const shown = shownOrNull(at, along === 'x' ? chart.x.kind : chart.y.kind, units);
    const told = along === 'y' ? `${label}, ${format(at, chart.y.kind, units, 3)}` : label;
    return shown === null ? [] : [{ along, at: shown, label: told, tone }];
  });
  const on = (along: 'x' | 'y') => limits.filter((l) => l.along === along).map((l) => l.at);
  const piled = chart.stacked ? sums(series.filter((s) => !s.other).map((s) => s.data)) : [];
  const heights = [...piled, ...series.filter((s) => !chart.stacked || s.other).flatMap((s) => s.data.filter((v) => v !== null))];
  const scaleOfX = tightScale([...data, ...on('x'), ...(chart.x.fromZero ? [0] : [])], {
    count: 8,
    degrees: entryUnit(chart.x.kind, units) === '°',
  });
  const top = Math.max(...heights);
  const room = [
    ...on('y').map((at) => at + headroom([...heights, at], 1)),
    ...(on('x').length > 0 ? [top + headroom(heights, on('x').length)] : []),
  ];
  return {
    x: {
      label: axisLabel(chart.x, units),
      data,
      told: keep.map((i) => `${chart.x.label} ${readOut(chart.x.values[i], chart.x.kind, units)}${wholeAt(chart, i, units)}`),
      scale: scaleOfX,
    },
    y: {
      label: axisLabel(chart.y, units),
      scale: scaleFor([...heights, ...on('y'), ...room], {
        count: 6,
        fromZero: chart.y.fromZero || chart.stacked,
      }),
    },
    series,
    limits: placed(limits, scaleOfX, data, series),
  };
}

/** Room above a level line, or at the top of upright ones, for so many rows of labels. */
const headroom = (values: readonly number[], rows: number) => (0.03 + 0.07 * rows) * (Math.max(...values) - Math.min(0, ...values));

export function axisLabel({ label, kind }: { label: string; kind: UnitKind }, units: UnitPreferences): string {
  const unit = entryUnit(kind, units);
  return unit === '' ? label : `${label}, ${unit}`;
}

/** What a stack comes to at a place, in words. */
function wholeAt({ whole, series, y }: Chart, place: number, units: UnitPreferences): string {
  if (!whole) return '';
  const sum = series.filter((s) => !s.other).reduce((total, { values }) => total + (values[place] ?? 0), 0);
  return `: ${whole} ${readOut(sum, y.kind, units)}`;
}

const readOut = (value: number | null | undefined, kind: UnitKind, units: UnitPreferences): string => format(value, kind, units, 4);

/** The chart as a table that a spreadsheet reads: units in the heads, a dot for the decimal point. */
export function csvOf(chart: Chart, units: UnitPreferences): string {
  const { x, series } = prepared(chart, units);
  const unit = entryUnit(chart.y.kind, units);
  const heads = [x.label, ...series.map((s) => (unit === '' ? s.label : `${s.label}, ${unit}`))];
  const rows = x.data.map((at, i) => [at, ...series.map((s) => s.data[i] ?? null)]);
  return [heads.map(quoted), ...rows.map((row) => row.map((v) => (v === null ? '' : String(Number(v.toPrecision(7))))))]
    .map((c) => c.join(','))
    .join('\r\n');
}

const quoted = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const shownOrNull = (value: number | null, kind: UnitKind, units: UnitPreferences) =>
  value === null || !Number.isFinite(value) ? null : inEntryUnit(value, kind, units);

/** One upon the other. */
export const sums = (columns: readonly (readonly (number | null)[])[]): number[] =>
  (columns[0] ?? []).map((_, i) => columns.reduce((sum, column) => sum + (column[i] ?? 0), 0));
