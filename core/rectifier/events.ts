/** A guard at an angle, and its slope there. [A or V, per electrical rad] */
export interface Level {
  value: number;
  slope: number;
}

/** A dip whose estimated bottom lies higher than this share of the lower end is let pass. */
const SHALLOW = 0.3;
/** A guard that far below zero has failed; nearer it is rounding. [A or V] */
export const FAILED = -1e-9;
const MOST_TRIES = 60;
const CLOSE = 1e-12;

/**
 * First angle between two looks at which a guard fails: it has by the second, or it dips below zero between them and comes up again.
 *
 * @param guard   Guard over the angle. [electrical rad → A or V]
 * @param low     First look. [electrical rad]
 * @param atLow   The guard there, not below zero but for rounding. [A or V]
 * @param high    Second look. [electrical rad]
 * @param atHigh  The guard there. [A or V]
 * @returns       Angle within 1e-12 of the failure, the last the guard was asked for; undefined for a guard that holds. [electrical rad]
 *
 * Valid     guards that turn once between two looks: the flow looks often enough.
 * Source    cubic through two values and slopes for the hint of a dip; Newton's method kept between two bounds.
 * Checked   tests/core/rectifier/events.test.ts
 */
export function firstFailure(
  guard: (angle: number) => Level,
  low: number,
  atLow: Readonly<Level>,
  high: number,
  atHigh: Readonly<Level>,
): number | undefined {
  if (atHigh.value < FAILED) return crossingDown(guard, low, high, atHigh.value, atHigh.slope);
  if (atLow.slope >= 0 || atHigh.slope <= 0) return undefined;
  if (cubicBottom(low, atLow, high, atHigh) > SHALLOW * Math.min(atLow.value, atHigh.value)) return undefined;
  const failed = failedInDip(guard, low, atLow.slope, high, atHigh.slope);
  if (failed === undefined) return undefined;
  const { value, slope } = guard(failed);
  return crossingDown(guard, low, failed, value, slope);
}

/** Least value of the cubic through two looks, between them. */
function cubicBottom(low: number, atLow: Level, high: number, atHigh: Level): number {
  const width = high - low;
  const [a, b] = [atLow.slope * width, atHigh.slope * width];
  const rise = atHigh.value - atLow.value;
  // f(s) = value + a s + p s² + q s³, and its slope's root between 0 and 1.
  const p = 3 * rise - 2 * a - b;
  const q = a + b - 2 * rise;
  const s = Math.min(1, Math.max(0, -a / (p + Math.sqrt(Math.max(0, p * p - 3 * q * a)))));
  return atLow.value + s * (a + s * (p + s * q));
}

/** An angle in a dip at which the guard has failed, on the way to its bottom by false position on the slope. */
function failedInDip(guard: (angle: number) => Level, low: number, falling: number, high: number, rising: number): number | undefined {
  for (let tries = 0; tries < MOST_TRIES && high - low > CLOSE; tries++) {
    const share = tries % 3 === 2 ? 0.5 : Math.min(0.9, Math.max(0.1, falling / (falling - rising)));
    const angle = low + share * (high - low);
    const { value, slope } = guard(angle);
    if (value < FAILED) return angle;
    if (slope < 0) [low, falling] = [angle, slope];
    else [high, rising] = [angle, slope];
    // What is left to fall is less than the height.
    if (value > Math.max(-falling, rising) * (high - low)) return undefined;
  }
  return undefined;
}

/** Between an angle where the guard holds and one where it has failed. */
function crossingDown(guard: (angle: number) => Level, low: number, high: number, value: number, slope: number): number {
  let angle = high;
  for (let tries = 0; tries < MOST_TRIES && high - low > CLOSE; tries++) {
    const newton = slope < 0 ? angle - value / slope : NaN;
    if (Math.abs(newton - angle) < CLOSE) break;
    angle = newton > low && newton < high ? newton : (low + high) / 2;
    ({ value, slope } = guard(angle));
    if (value < 0) high = angle;
    else low = angle;
  }
  return angle;
}
