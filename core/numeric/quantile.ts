/** A quantile of a sample, and between which values that of the whole lies, 19 times in 20. */
export interface Quantile {
  value: number;
  low: number;
  high: number;
}

/** Half-width of a 95 % interval of the normal law, in standard deviations. */
const NINETEEN_IN_TWENTY = 1.959964;

/**
 * A quantile of a sample with its sampling error.
 *
 * @param sorted  Sample, rising, at least one value. [-]
 * @param share   Share of the whole that lies below, 0 … 1. [-]
 * @returns       Quantile in the sample's unit. [-]
 *
 *   between the values of rank n·p ± 1.96 √(n p (1 − p))
 *
 * Valid     n p and n (1 − p) of ten and more; below, the interval runs to the sample's ends.
 * Source    order statistics are binomially placed: Conover 1999, *Practical Nonparametric Statistics*, §3.2 (from memory).
 * Checked   tests/core/numeric/quantile.test.ts
 */
export function quantileOf(sorted: ArrayLike<number>, share: number): Quantile {
  const n = sorted.length;
  const at = (rank: number) => {
    const place = Math.min(n - 1, Math.max(0, rank));
    const low = Math.floor(place);
    const high = Math.ceil(place);
    // Not by differences alone: ∞ − ∞ is no number.
    return sorted[low] === sorted[high] ? sorted[low] : sorted[low] + (place - low) * (sorted[high] - sorted[low]);
  };
  const rank = share * (n - 1);
  const room = NINETEEN_IN_TWENTY * Math.sqrt(n * share * (1 - share));
  return { value: at(rank), low: at(Math.floor(rank - room)), high: at(Math.ceil(rank + room)) };
}
