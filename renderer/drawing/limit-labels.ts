import type { Scale } from './scale';

/** A line across a chart, in the units shown. */
export interface PreparedLimit {
  along: 'x' | 'y';
  at: number;
  label: string;
  tone: 'bad' | 'plain';
  /** Upright lines have their labels in rows, so that two close together stay legible. */
  row: number;
  /** Where the label is not crossed: beside an upright line, at the end of a level one. */
  side: 'left' | 'right';
}

/** Share of the width that a label takes, at most. */
const LABEL = 0.3;
/** An upright line across a level line's label counts as if every series were so much nearer. */
const CROSSED = 0.3;

/** Gives every line's label a place where nothing crosses it. */
export function placed(
  limits: Omit<PreparedLimit, 'row' | 'side'>[],
  { min, max }: Scale,
  places: readonly number[],
  series: readonly { data: readonly (number | null)[] }[],
): PreparedLimit[] {
  const upright = limits.filter((l) => l.along === 'x');
  const share = (at: number) => (at - min) / (max - min);
  /** How free a level line's label is from one share of the width to another: how near a series comes, and a steep one may cross it between two points. */
  const clearance = (at: number, from: number, to: number) =>
    (upright.some((l) => within(share(l.at), from, to)) ? CROSSED : 1) *
    Math.min(
      ...series.flatMap(({ data }) =>
        data.map((v, i) => {
          if (v === null || !within(share(places[i] ?? min), from, to)) return Infinity;
          const next = data[i + 1] ?? v;
          return (v - at) * (next - at) < 0 ? 0 : Math.abs(v - at);
        }),
      ),
    );
  return limits.map((limit) => {
    if (limit.along === 'y')
      return { ...limit, row: 0, side: clearance(limit.at, 0, LABEL) > clearance(limit.at, 1 - LABEL, 1) ? 'left' : 'right' };
    const from = share(limit.at);
    const crossed = from > 1 - LABEL || upright.some((l) => share(l.at) > from && share(l.at) < from + LABEL);
    return { ...limit, row: upright.indexOf(limit), side: crossed && from > LABEL ? 'left' : 'right' };
  });
}

const within = (value: number, from: number, to: number) => value >= from && value <= to;
