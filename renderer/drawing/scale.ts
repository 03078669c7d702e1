/** Steps that read well: powers of ten of these. */
const decimal = [1, 2, 2.5, 5, 10];
const turning = [1.5, 3, 4.5, 9, 18];

export interface Scale {
  min: number;
  max: number;
  ticks: number[];
}

/** A scale of whole steps round some values. Without values, or with one only, it still has a width. */
export function scaleFor(values: readonly number[], options: { count?: number; fromZero?: boolean; degrees?: boolean } = {}): Scale {
  const { count = 5, fromZero = false, degrees = false } = options;
  let [low, high] = extent(fromZero ? [0, ...values] : values);
  if (high - low <= 1e-9 * Math.max(Math.abs(high), Math.abs(low), 1e-9)) {
    const room = Math.abs(high) / 2 || 1;
    if (!fromZero || low < 0) low -= room;
    if (!fromZero || high >= 0) high += room;
  }
  const step = niceStep((high - low) / count, degrees ? turning : decimal);
  const first = Math.floor(low / step + 1e-9);
  const last = Math.ceil(high / step - 1e-9);
  const at = (i: number) => Number((i * step).toPrecision(12));
  return { min: at(first), max: at(last), ticks: Array.from({ length: last - first + 1 }, (_, i) => at(first + i)) };
}

/** The ticks of a scale that ends where the values end, as a horizontal axis does. */
export function tightScale(values: readonly number[], options: { count?: number; degrees?: boolean } = {}): Scale {
  const [min, max] = extent(values);
  const { ticks } = scaleFor(values, options);
  if (max <= min) return scaleFor(values, options);
  return { min, max, ticks: ticks.filter((t) => t >= min && t <= max) };
}

function extent(values: readonly number[]): [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return low <= high ? [low, high] : [0, 1];
}

/** The smallest step that reads well and is no smaller than `least`. */
function niceStep(least: number, steps: readonly number[]): number {
  const decade = 10 ** Math.floor(Math.log10(least));
  const step = [decade / 10, decade, decade * 10].flatMap((d) => steps.map((s) => s * d)).find((s) => s >= least * (1 - 1e-9));
  return step ?? decade * 10;
}
