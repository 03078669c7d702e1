import { fixed, minus, notBelowZero, plus, times } from '../formula';
import type { Given, Working } from '../working';

/** How the magnets' results come about. Source of each beside it. */
export function magnetsWorkings({ entry }: Given): Working[] {
  const warming = minus(entry('surroundings.magnetTemperature'), fixed(20, 'temperature'));
  return [
    {
      result: 'stages.magnets.remanence',
      formula: notBelowZero(times(entry('magnets.remanence'), plus(1, times(entry('magnets.remanenceTempCoefficient'), warming)))),
      limits: 'Within the reversible range: what a magnet loses for good above its knee is left out.',
      source: 'IEC 60404-8-1 (from memory).',
    },
  ];
}
