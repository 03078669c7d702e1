import { interpolationCoefficients } from './interpolate';

/** So many neighbours an interpolated value is read off: a cubic. */
const NEIGHBOURS = 4;

/** What a smooth function is asked for, and how its values are put together. */
export interface Sampling<T> {
  /** The value at a place; `guess` is what its neighbours lead one to expect, undefined for the very first. */
  work: (place: number, guess: T | undefined) => T;
  /** Σ weightᵢ valueᵢ, weights adding up to 1. */
  mix: Mix<T, T>;
  /** Whether a guess is so far from the value that its surroundings must be looked at more closely. */
  far: (guess: T, value: T) => boolean;
  /** Whether two values are of one kind, so that no kink need lie between them. */
  alike?: (a: T, b: T) => boolean;
  /** Whether there can be such a value: a cubic overshoots, where it does a straight line is taken. */
  possible?: (value: T) => boolean;
}

export type Mix<T, U> = (values: readonly T[], weights: readonly number[]) => U;

/** A function known at some places and read off at all others. */
export interface Refined<T> {
  at: (place: number) => T;
  /** As `at`, only a part of the value: without the check whether it is possible. */
  part: <U>(place: number, mix: Mix<T, U>) => U;
}

/**
 * A smooth function between the places 0 and count − 1, worked out at whole places and only where it cannot be read off its neighbours.
 *
 * @param count     Places, at least 1. [-]
 * @param stride    Of the first places. [-] Between them the middle is always worked out, and on as long as guesses are far from what is found.
 * @param sampling  The function. [any]
 * @returns         The function: as worked out at the places that were, else by the cubic through the nearest four; straight across a kink. [any]
 *
 * Valid     functions smooth but for kinks; a wiggle narrower than half the stride that is zero at all looks is missed.
 * Source    bisection until a cubic foretells the middle; the halves then differ from their cubic by about a sixteenth of that.
 * Checked   tests/core/numeric/refine.test.ts
 */
export function refined<T>(
  count: number,
  stride: number,
  { work, mix, far, alike = () => true, possible = () => true }: Sampling<T>,
): Refined<T> {
  const places: number[] = [];
  const values: T[] = [];
  const blend = <U>(from: number, to: number, place: number, by: Mix<T, U>) =>
    by(values.slice(from, to), interpolationCoefficients(places.slice(from, to), place));
  const part = <U>(place: number, by: Mix<T, U>) => {
    const from = Math.max(0, Math.min(placeIn(places, place) - NEIGHBOURS / 2, places.length - NEIGHBOURS));
    return blend(from, from + NEIGHBOURS, place, by);
  };
  const at = (place: number) => {
    const above = placeIn(places, place);
    if (places[above] === place) return values[above];
    const from = Math.max(0, Math.min(above - 1, places.length - 2));
    const straight = places.length > 1 && !alike(values[from], values[from + 1]);
    const smooth = straight ? undefined : part(place, mix);
    return smooth !== undefined && possible(smooth) ? smooth : blend(from, from + 2, place, mix);
  };
  const settle = (place: number, guess: T | undefined) => {
    const value = work(place, guess);
    const index = placeIn(places, place);
    places.splice(index, 0, place);
    values.splice(index, 0, value);
    return value;
  };
  const split = (low: number, high: number) => {
    if (high - low < 2) return;
    const middle = (low + high) >> 1;
    const guess = at(middle);
    const value = settle(middle, guess);
    const bad = far(guess, value);
    if (bad || !alike(at(low), value)) split(low, middle);
    if (bad || !alike(value, at(high))) split(middle, high);
  };

  const first: number[] = [];
  for (let place = 0; place < count - 1; place += stride) first.push(place);
  first.push(count - 1);
  for (const place of first) settle(place, places.length ? at(place) : undefined);
  for (let i = 1; i < first.length; i++) split(first[i - 1], first[i]);
  return { at, part };
}

/** Index of the first of rising places not below one. */
function placeIn(places: readonly number[], place: number): number {
  let at = 0;
  while (at < places.length && places[at] < place) at++;
  return at;
}
