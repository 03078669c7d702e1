import type { Results } from './results';

/** The object `solve --json` prints: DESIGN's fixed keys, SI. */
export function solveSummary({ gap, coils, emf, cutIn, curve, match, rated, year, controller, cautions }: Results) {
  const plain = cautions.map(({ severity, where, message }) => ({ severity, where, message }));
  return { gap, coils, emf, cutIn, curve, match, rated, year, controller, cautions: plain };
}
