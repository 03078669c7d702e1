import type { Reading } from '../design/readings';
import { stillSpeedAt, stillSpeeds } from '../turbine/strobe';
import { HERTZ_ACCURACY, METER_ACCURACY, TACHOMETER_ACCURACY } from './readings';
import { ALLOWANCES } from './predict';

/** A speed the shaft may have had. */
export interface SpeedCandidate {
  /** [rad/s] */
  speed: number;
  /** What names it. */
  by: 'hertz' | 'film' | 'written' | 'volts';
  /** On film: spacings of like blades turned from picture to picture. */
  steps?: number;
  /** Against the other candidates, adding up to 1. */
  plausibility: number;
  tipSpeedRatio?: number;
  /** What speaks for it and what against, in words. */
  agrees: string[];
  disagrees: string[];
}

/** What a speed is held against. */
export interface SpeedWitness {
  polePairs: number;
  /** Volts read over those per rad/s of the planned machine: the speed they ask for. [rad/s] */
  byVolts?: number;
  radius: number;
  tipSpeedRatio: number;
  runawayRatio: number;
  /** Greatest speed of interest. [rad/s] */
  top: number;
}

/** A film looks still within such a share of a spacing; a ratio beyond run-away is told as good as never, one below working range seldom. Common practice, no source. */
const STILL = 0.01;
const NEVER = 1e-3;
const SELDOM = 0.2;
const LEAST_WORKING = 0.4;
const MOST_FILMED = 60;

const rpm = (speed: number) => `${((speed * 60) / (2 * Math.PI)).toFixed(0)} rpm`;

/** One piece of evidence: how likely a speed makes it, and its words. */
interface Evidence {
  likelihood: (speed: number) => number;
  words: string;
}

const about = (centre: number, share: number, words: string): Evidence => ({
  likelihood: (speed) => Math.exp(-(((speed / centre - 1) / share) ** 2) / 2),
  words,
});

/**
 * Every speed the shaft may have had, by all that was read at the time.
 *
 * @param reading  Hertz, film, volts, wind, written speed: whichever there are. [-]
 * @param witness  Machine and wheel. [-]
 * @returns        Candidates, the most plausible first; none where nothing tells. [-]
 *
 * Omits     a rolling shutter; the wheel's own dynamics in a gust.
 * Source    ω = 2πf/p; film by turbine/strobe.ts; e = k ω; λ = ωR/v between its working range and run-away (common practice, no source).
 * Checked   tests/core/bench/speed.test.ts
 */
export function speedCandidates(reading: Reading, witness: SpeedWitness): SpeedCandidate[] {
  const { hertz, speed, speedBy, frameRate, alike = 3, wind } = reading;
  const { polePairs, byVolts, radius, tipSpeedRatio, runawayRatio, top } = witness;
  const evidence: Evidence[] = [];
  const named: { by: SpeedCandidate['by']; speed: number; steps?: number }[] = [];
  if (hertz) {
    const value = (2 * Math.PI * hertz) / polePairs;
    named.push({ by: 'hertz', speed: value });
    evidence.push(about(value, Math.hypot(HERTZ_ACCURACY, STILL), `${hertz.toPrecision(3)} Hz, which is ${rpm(value)}`));
  }
  if (speed) {
    named.push({ by: 'written', speed });
    const share = speedBy === 'drill' ? ALLOWANCES.drill : Math.hypot(TACHOMETER_ACCURACY, STILL);
    evidence.push(about(speed, share, `the ${speedBy ?? 'written'} speed of ${rpm(speed)}`));
  }
  if (byVolts) {
    named.push({ by: 'volts', speed: byVolts });
    evidence.push(
      about(byVolts, Math.hypot(ALLOWANCES.field, reading.accuracy ?? METER_ACCURACY, STILL), `the volts, which ask for ${rpm(byVolts)}`),
    );
  }
  if (wind) {
    evidence.push({
      likelihood: (at) => {
        const ratio = (at * radius) / wind;
        return ratio > 1.1 * runawayRatio ? NEVER : ratio < LEAST_WORKING * tipSpeedRatio ? SELDOM : 1;
      },
      words: `a tip-speed ratio between ${(LEAST_WORKING * tipSpeedRatio).toFixed(1)} and run-away at ${runawayRatio.toFixed(1)}`,
    });
  }
  const filmed = frameRate ? stillSpeeds(frameRate, alike, top).slice(0, MOST_FILMED) : [];
  // A film names the speeds; without one every other witness names its own.
  const all = filmed.length ? filmed.map(({ speed: at, steps }) => ({ by: 'film' as const, speed: at, steps })) : named;
  const offBy = frameRate && hertz ? stillSpeedAt(frameRate, alike, hertz, polePairs) : undefined;
  const rated = all.map(({ by, speed: at, steps }) => {
    const likelihoods = evidence.map(({ likelihood }) => likelihood(at));
    const agrees = evidence.filter((_, i) => likelihoods[i] > 0.1).map(({ words }) => words);
    const disagrees = evidence.filter((_, i) => likelihoods[i] <= 0.1).map(({ words }) => words);
    if (offBy && steps === offBy.steps && Math.abs(offBy.off) > 2 * STILL)
      disagrees.push(`by the hertz the blades creep ${(Math.abs(offBy.off) * 100).toFixed(0)} % of a spacing from picture to picture`);
    return {
      by,
      speed: at,
      ...(steps !== undefined && { steps }),
      ...(wind && { tipSpeedRatio: (at * radius) / wind }),
      plausibility: likelihoods.reduce((product, l) => product * l, 1),
      agrees,
      disagrees,
    };
  });
  const total = rated.reduce((sum, { plausibility }) => sum + plausibility, 0);
  return rated
    .map((candidate) => ({ ...candidate, plausibility: total > 0 ? candidate.plausibility / total : 1 / rated.length }))
    .sort((a, b) => b.plausibility - a.plausibility || a.speed - b.speed);
}
