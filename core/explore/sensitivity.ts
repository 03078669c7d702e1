import type { Design } from '../design/schema';
import { gaussLegendre } from '../numeric/integrate';
import { createRandom } from '../numeric/random';
import { createBuilder } from './built';
import { readings } from './readings';
import { BELL_LIMIT, countOf, drawn, noDepartures, tolerances, type Tolerance, type ToleranceId, type Tolerances } from './tolerances';

/** How much of a reading's variance one tolerance makes, all others held. */
export interface Share {
  tolerance: Tolerance;
  /** Standard deviation of the reading under this tolerance alone, in the reading's unit. */
  deviation: number;
  /** Of the sum over all tolerances. [-] */
  share: number;
}

/** Tolerances of many small departures are drawn so often. */
const DRAWS = 40;

/**
 * On which tolerance care is best spent: shares of each reading's variance, greatest first, in the order of `readings`.
 *
 * One tolerance at a time: a single departure at three Gauss nodes of its own law, which is exact where the reading is a parabola in it; many small ones
 * by chance, seeded.
 *
 * Omits     what two tolerances do only together; the Monte Carlo of spread.ts has it.
 */
export function varianceShares(design: Design, limits: Tolerances, seed: number): Share[][] {
  const { build } = createBuilder(design, limits);
  const read = (id: ToleranceId, departures: number[]) => {
    const built = build({ ...noDepartures(design), [id]: departures });
    return readings.map((reading) => reading.of(built, design));
  };
  const variances = tolerances.map((tolerance) => {
    if (limits[tolerance.id] === 0) return readings.map(() => 0);
    const cases = casesOf(tolerance, limits[tolerance.id], countOf(tolerance, design), seed);
    const values = cases.map(({ departures }) => read(tolerance.id, departures));
    return readings.map((_, k) => {
      const mean = cases.reduce((sum, { weight }, c) => sum + weight * values[c][k], 0);
      return cases.reduce((sum, { weight }, c) => sum + weight * (values[c][k] - mean) ** 2, 0);
    });
  });
  return readings.map((_, k) => {
    const total = variances.reduce((sum, each) => sum + each[k], 0);
    return tolerances
      .map((tolerance, t) => ({ tolerance, deviation: Math.sqrt(variances[t][k]), share: total > 0 ? variances[t][k] / total : 0 }))
      .sort((a, b) => b.share - a.share);
  });
}

interface Case {
  departures: number[];
  weight: number;
}

function casesOf(tolerance: Tolerance, limit: number, count: number, seed: number): Case[] {
  if (count > 1) {
    const random = createRandom(seed);
    return Array.from({ length: DRAWS }, () => ({
      departures: Array.from({ length: count }, () => drawn(tolerance, limit, random)),
      weight: 1 / DRAWS,
    }));
  }
  if (tolerance.law === 'bell') {
    // Gauss–Hermite, three nodes.
    const far = (Math.sqrt(3) * limit) / BELL_LIMIT;
    return [
      { departures: [-far], weight: 1 / 6 },
      { departures: [0], weight: 2 / 3 },
      { departures: [far], weight: 1 / 6 },
    ];
  }
  const { nodes, weights } = gaussLegendre(3, tolerance.law === 'even' ? -limit : 0, limit);
  const width = tolerance.law === 'even' ? 2 * limit : limit;
  return nodes.map((node, i) => ({ departures: [node], weight: weights[i] / width }));
}
