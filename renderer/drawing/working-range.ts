import type { CurvePoint, Results } from '../../core';

/** Beyond what the wind drives the loaded machine to, for a look at what would come. */
const ROOM = 1.15;

/** The generator's curve over the speeds that the wheel turns it at under load; all of it where the wheel does not turn. */
export function workingRange({ curve, match, rated, cutIn }: Results): CurvePoint[] {
  const fastest = ROOM * Math.max(rated.rpm, cutIn.rpm ?? 0, ...match.map((p) => p.rpm));
  const within = curve.filter((p) => p.rpm <= fastest);
  return within.length > 1 ? within : curve;
}
