/** Rated currents of fuse-links. [A] IEC 60269-1 (from memory). */
export const FUSE_RATINGS = [
  2, 4, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250,
];

/** A fuse that carries its rated current for hours ages. Common practice, no source. */
const MARGIN = 1.25;

/**
 * The fuse that stands a current all day.
 *
 * @param amps  Greatest lasting current. [A]
 * @returns     Least rated current a quarter above it; undefined above the largest. [A]
 *
 * Omits     the cable: its own greatest current must not be less than the fuse.
 * Source    `FUSE_RATINGS`; the quarter is common practice, no source.
 * Checked   tests/core/charging/fuse.test.ts
 */
export function fuseRating(amps: number): number | undefined {
  return FUSE_RATINGS.find((rating) => rating >= MARGIN * amps);
}
