import { describe, expect, test, vi } from 'vitest';
import { solve } from '../../../core/chain/solve';
import type { Results } from '../../../core/chain/results';
import type { Design } from '../../../core/design/schema';
import { createBuilder, placeFactors } from '../../../core/explore/built';
import { readings } from '../../../core/explore/readings';
import { varianceShares } from '../../../core/explore/sensitivity';
import { bandsOf, batchesOf, createSpread, spreadOf } from '../../../core/explore/spread';
import {
  BELL_LIMIT,
  drawn,
  noDepartures,
  tolerances,
  usualTolerances,
  type ToleranceId,
  type Tolerances,
} from '../../../core/explore/tolerances';
import { createRandom } from '../../../core/numeric/random';
import { demo } from '../../demo';
import { size } from '../../electron/size';

/** A machine that is busy with other things may take long. */
vi.setConfig({ testTimeout: size(60_000, 3_600_000) });

const shed = demo('shed-light');
const none: Tolerances = { ...usualTolerances(), ...Object.fromEntries(tolerances.map(({ id }) => [id, 0])) };
const only = (id: ToleranceId, limit: number): Tolerances => ({ ...none, [id]: limit });
const column = (id: string) => readings.findIndex((reading) => reading.id === id);
const bandOf = (design: Design, limits: Tolerances, id: string, samples = SAMPLES) => {
  const { bands } = spreadOf(design, limits, samples, 7);
  return bands[column(id)];
};
/** The normal law's 95th percentile, in standard deviations. */
const Z95 = 1.644854;

const SAMPLES = size(300, 10_000);

test('a machine built just as drawn is the design itself, as near as the field’s table follows the stages', () => {
  const { build, error } = createBuilder(shed, usualTolerances());
  const { results, coilShare, clearance } = build(noDepartures(shed));
  const plain = solve(shed);
  expect(error).toBeLessThan(1e-3);
  expect(coilShare).toBe(1);
  expect(clearance).toBe(shed.discs.runningClearance);
  const off = (of: (of: Results) => number) => Math.abs(of(results) / of(plain) - 1);
  expect(off(({ emf }) => emf.lineRmsPer1000rpm)).toBeLessThan(error);
  expect(off(({ stages }) => stages.rated.eddyLoss)).toBeLessThan(2e-3);
  expect(off(({ rated }) => rated.dcAmps)).toBeLessThan(1e-3);
  expect(off(({ year }) => year.energy)).toBeLessThan(1e-3);
  expect(results.coils.phaseResistance20).toBe(plain.coils.phaseResistance20);
});

describe('cases worked by hand', () => {
  const bare: Design = { ...shed, discs: { ...shed.discs, backing: { kind: 'none' } } };

  test('without steel the volts go with the remanence, and so do their 5 % and 95 %: nominal · (1 ± 1.645 · limit / 1.960)', () => {
    const { nominal, low, high } = bandOf(bare, only('remanence', 0.06), 'lineVolts');
    const at = (deviations: number) => nominal * (1 + (deviations * 0.06) / BELL_LIMIT);
    expect(low.low).toBeLessThan(at(-Z95));
    expect(low.high).toBeGreaterThan(at(-Z95));
    expect(high.low).toBeLessThan(at(Z95));
    expect(high.high).toBeGreaterThan(at(Z95));
  });

  test('ohms of a wire that is evenly up to 1 % off go as 1/d²', () => {
    const { nominal, low, high } = bandOf(shed, only('wire', 0.01), 'phaseOhms');
    const at = (share: number) => nominal / (1 + share * 0.01) ** 2;
    expect(low.low).toBeLessThan(at(0.9));
    expect(low.high).toBeGreaterThan(at(0.9));
    expect(high.low).toBeLessThan(at(-0.9));
    expect(high.high).toBeGreaterThan(at(-0.9));
  });

  test('a turn too few in one coil shows on that coil alone', () => {
    const { build } = createBuilder(shed, none);
    const built = build({ ...noDepartures(shed), turns: noDepartures(shed).turns.map((_, coil) => (coil === 0 ? -1 : 0)) });
    const [coils, turns] = [noDepartures(shed).turns.length, shed.winding.turns];
    expect(built.coilShare).toBeCloseTo((turns - 1) / (turns - 1 / coils), 12);
  });

  test('magnets out of place weaken a harmonic by the mean of their phasors', () => {
    // Two magnets a quarter turn apart, electrically: half of |1 + i|.
    expect(placeFactors([0, Math.PI / 2], [1, 2], 1)[0]).toBeCloseTo(Math.SQRT1_2, 12);
    expect(placeFactors([0, Math.PI / 2], [1, 2], 1)[1]).toBeCloseTo(0, 12);
  });

  test('the shares of bell, even and upward departures lie where their laws say', () => {
    const random = createRandom(3);
    const n = 20_000;
    const within = (law: 'bell' | 'even' | 'upward', isInside: (d: number) => boolean) =>
      Array.from({ length: n }, () => drawn({ law }, 2, random)).filter(isInside).length / n;
    const room = 3 * Math.sqrt(0.25 / n);
    expect(Math.abs(within('bell', (d) => Math.abs(d) <= 2) - 0.95)).toBeLessThan(room);
    expect(Math.abs(within('even', (d) => d <= 1) - 0.75)).toBeLessThan(room);
    expect(Math.abs(within('upward', (d) => d <= 0.5) - 0.25)).toBeLessThan(room);
    expect(within('upward', (d) => d < 0)).toBe(0);
  });
});

test('without departures there is no spread', () => {
  const { bands, rubbing } = spreadOf(shed, none, 20, 1);
  for (const { nominal, low, high } of bands) expect([low.value, high.value]).toEqual([nominal, nominal]);
  expect(rubbing).toBe(0);
});

test('what a small sample says of its own uncertainty holds in a larger one', () => {
  const spread = createSpread(shed, usualTolerances(), 5);
  const drawnTo = (from: number, samples: number) =>
    bandsOf(
      spread.nominal,
      batchesOf(samples).map((count, k) => spread.run(from + k, count)),
    ).bands;
  const [small, large] = [drawnTo(0, 100), drawnTo(1000, 2 * SAMPLES)];
  // Each interval holds 19 times in 20, and two samples are compared: of 36 a few may miss.
  const misses = small.flatMap((band, k) =>
    (['low', 'middle', 'high'] as const).filter((of) => large[k][of].high < band[of].low || large[k][of].low > band[of].high),
  );
  console.log(`of ${3 * small.length} ends and middles of bands by 100 samples ${misses.length} miss those by ${2 * SAMPLES}`);
  expect(misses.length).toBeLessThanOrEqual(3);
});

test('the same seed gives the same bands, in whatever order the batches come', () => {
  const [here, there] = [createSpread(shed, usualTolerances(), 9), createSpread(structuredClone(shed), usualTolerances(), 9)];
  const forth = [here.run(0, 20), here.run(1, 20)];
  const back = [there.run(1, 20), there.run(0, 20)];
  expect(bandsOf(here.nominal, forth)).toEqual(bandsOf(there.nominal, back));
  expect(bandsOf(here.nominal, forth)).not.toEqual(bandsOf(here.nominal, [here.run(2, 20), here.run(3, 20)]));
});

test('discs run out by more than the clearance rub', () => {
  const wide = shed.discs.runningClearance * 2;
  const { rubbing } = spreadOf(shed, only('runOut', wide), 100, 2);
  // Evenly from 0 to twice the clearance: half of them; ± 4 standard deviations of 100 throws.
  expect(Math.abs(rubbing - 0.5)).toBeLessThan(0.2);
});

describe('which tolerance to spend care on', () => {
  test('alone, a tolerance makes all of it, of the size its law says', () => {
    const [share] = varianceShares(shed, only('wire', 0.01), 1)[column('phaseOhms')];
    expect(share).toMatchObject({ tolerance: { id: 'wire' }, share: 1 });
    // d(1/d²) = −2 · 1 % / √3 of it.
    const nominal = solve(shed).coils.phaseResistance20;
    expect(share.deviation / nominal).toBeCloseTo((2 * 0.01) / Math.sqrt(3), 4);
  });

  test('shares fall, add up to one, and name the wind for the year’s energy', () => {
    const [year] = [varianceShares(shed, usualTolerances(), 1)[column('yearEnergy')]];
    expect(year.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(year.map(({ share }) => share)).toEqual([...year.map(({ share }) => share)].sort((a, b) => b - a));
    expect(year[0].tolerance.id).toBe('wind');
  });
});
