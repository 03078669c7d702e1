import { gapOf } from '../chain/gap-of';
import { solve } from '../chain/solve';
import type { StageCache } from '../chain/stage-cache';
import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { magnetsStage } from '../magnets/stage';
import { remanenceAt } from '../magnets/remanence';
import { windingStage } from '../winding/stage';
import { fieldTable } from './field-table';
import { BELL_LIMIT, type Departures, type Tolerances } from './tolerances';

/** A machine as it came out of the workshop, solved. */
export interface Built {
  results: Results;
  /** Turns of the first coil over the mean of all: what a meter on that coil sees. */
  coilShare: number;
  /** Free air left at the tightest place of a turn, each side; negative where a disc rubs. [m] */
  clearance: number;
}

/** So many standard deviations a bell is followed. */
const FOLLOWED = 4.5;
const LEAST_CLEARANCE = 0.05e-3;

/**
 * Solves machines as they come out of the workshop, by the pipeline itself. Only the field's stages are read off a table over gap and remanence that the
 * same stages have filled (field-table.ts); everything behind them is worked out anew for every machine.
 */
export function createBuilder(design: Design, limits: Tolerances): { build: (departures: Departures) => Built; error: number } {
  const { magnets, discs, winding, surroundings, site } = design;
  const placed = windingStage(winding, discs.poles);
  const gap = gapOf(design);
  const remanenceOf = (share: number, temperature: number) =>
    remanenceAt(magnets.remanence * (1 + share), magnets.remanenceTempCoefficient, temperature);
  const reach = (id: 'gap' | 'remanence' | 'magnetTemperature') => (FOLLOWED * limits[id]) / BELL_LIMIT;
  const closest = gap - 2 * (discs.runningClearance - LEAST_CLEARANCE);
  const warm = surroundings.magnetTemperature;
  const strengths = [-1, 1].flatMap((a) => [-1, 1].map((b) => remanenceOf(a * reach('remanence'), warm + b * reach('magnetTemperature'))));
  const room = 1e-6 * gap;
  const table = fieldTable(
    design,
    [Math.max(closest, gap - reach('gap') - limits.runOut) - room, gap + reach('gap') + limits.runOut + room],
    [Math.max(1e-3, Math.min(...strengths)) * (1 - 1e-6), Math.max(...strengths) * (1 + 1e-6)],
  );

  const build = (departures: Departures): Built => {
    const [[wider], [runOut], [stronger], [thicker], [warmer], [hotter], [windier]] = (
      ['gap', 'runOut', 'remanence', 'wire', 'airTemperature', 'magnetTemperature', 'wind'] as const
    ).map((id) => departures[id]);
    const counts = departures.turns.map((off) => Math.max(0, winding.turns + Math.round(off)));
    const turns = counts.reduce((sum, n) => sum + n, 0) / counts.length;
    const runningClearance = Math.max(LEAST_CLEARANCE, discs.runningClearance + wider / 2);
    const built: Design = {
      ...design,
      magnets: { ...magnets, remanence: magnets.remanence * (1 + stronger) },
      discs: { ...discs, runningClearance },
      winding: { ...winding, turns, wire: { ...winding.wire, conductorDiameter: winding.wire.conductorDiameter * (1 + thicker) } },
      surroundings: {
        ...surroundings,
        airTemperature: surroundings.airTemperature + warmer,
        magnetTemperature: surroundings.magnetTemperature + hotter,
      },
      site: { ...site, meanWind: site.meanWind * (1 + windier) },
    };
    const magnet = magnetsStage(built.magnets, built.surroundings.magnetTemperature);
    const answer = table.at(gapOf(built), magnet.remanence, runOut);
    const factors = placeFactors(departures.magnetPlace, answer.linkage.orders, discs.poles / 2 / discs.pitchRadius);
    const known: Record<string, unknown> = {
      magnets: magnet,
      winding: placed,
      field: answer.field,
      linkage: { ...answer.linkage, linkage: shared(answer.linkage.linkage, (row) => row.map((l, h) => l * factors[h])) },
      inductance: answer.inductance,
    };
    const stages: StageCache = Object.assign(
      <T>(stage: string, _: unknown, work: () => T): T => (Object.hasOwn(known, stage) ? (known[stage] as T) : work()),
      { worked: {} },
    );
    return {
      results: solve(built, stages),
      coilShare: turns > 0 ? counts[0] / turns : 1,
      clearance: discs.runningClearance + wider / 2 - runOut,
    };
  };
  return { build, error: table.error };
}

/**
 * By how much each harmonic of the linkage is weakened when magnets are out of place along the pitch circle: the mean of their phasors.
 *
 *   f_n = |Σ exp(i n p δ_k / r)| / K
 */
export function placeFactors(places: readonly number[], orders: readonly number[], electricalPerMetre: number): number[] {
  return orders.map((n) => {
    let [cos, sin] = [0, 0];
    for (const place of places) {
      cos += Math.cos(n * place * electricalPerMetre);
      sin += Math.sin(n * place * electricalPerMetre);
    }
    return Math.hypot(cos, sin) / places.length;
  });
}

/** Maps rows once each, however often they stand in the list. */
function shared<T>(rows: T[], map: (row: T) => T): T[] {
  const made = new Map<T, T>();
  return rows.map((row) => {
    const known = made.get(row) ?? map(row);
    made.set(row, known);
    return known;
  });
}
