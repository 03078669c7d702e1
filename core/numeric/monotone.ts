/**
 * Smooth curve through points that never swings past them: between two points it only rises or only falls.
 *
 * @param x  Rising, at least two. [unit of x]
 * @param y  Values there. [any]
 * @returns  Curve; beyond the ends it goes on along the end slopes. [unit of x → any]
 *
 * Source    piecewise cubic Hermite polynomial with Fritsch & Butland's slopes (1984, SIAM J. Sci. Stat. Comput. 5, 300), end slopes one-sided and held to
 *           the nearest secant (from memory).
 * Checked   tests/core/numeric/monotone.test.ts
 */
export function monotoneCurve(x: readonly number[], y: readonly number[]): (at: number) => number {
  const last = x.length - 1;
  if (last < 1) throw new RangeError(`a curve needs at least two points; received ${x.length}`);
  const width = x.slice(1).map((right, i) => right - x[i]);
  const secant = y.slice(1).map((right, i) => (right - y[i]) / width[i]);
  const slopes = x.map((_, i) => {
    if (last === 1) return secant[0];
    if (i === 0) return endSlope(width[0], width[1], secant[0], secant[1]);
    if (i === last) return endSlope(width[last - 1], width[last - 2], secant[last - 1], secant[last - 2]);
    const [before, after] = [secant[i - 1], secant[i]];
    if (before * after <= 0) return 0;
    const [a, b] = [2 * width[i] + width[i - 1], width[i] + 2 * width[i - 1]];
    return (a + b) / (a / before + b / after);
  });
  return (at) => {
    if (at <= x[0]) return y[0] + slopes[0] * (at - x[0]);
    if (at >= x[last]) return y[last] + slopes[last] * (at - x[last]);
    let i = 0;
    while (x[i + 1] < at) i++;
    const t = (at - x[i]) / width[i];
    const curve = slopes[i] + slopes[i + 1] - 2 * secant[i];
    const bend = 3 * secant[i] - 2 * slopes[i] - slopes[i + 1];
    return y[i] + width[i] * t * (slopes[i] + t * (bend + t * curve));
  };
}

function endSlope(width: number, next: number, secant: number, nextSecant: number): number {
  const slope = ((2 * width + next) * secant - width * nextSecant) / (width + next);
  if (slope * secant <= 0) return 0;
  return secant * nextSecant < 0 && Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope;
}
