/** How often a test repeats: few times in `npm test`, as many as it takes to be sure in `npm run nightly`. */
export const isNightly = process.env['GAPWRIGHT_NIGHTLY'] === '1';
export const size = (quick: number, nightly: number): number => (isNightly ? nightly : quick);

/** Numbers in [0, 1) that are the same in every run: mulberry32, public domain. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}
