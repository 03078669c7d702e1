import { expect, test } from 'vitest';
import { operatingPoint, runsAway, type Electrical, type Plant } from '../../../core/chain/operating-point';
import type { Source } from '../../../core/rectifier/steady-state';

const COPPER = 0.00393;
const MELTS = 1084.62;

/** Air of 20 °C, so many watts carried away for each kelvin, and a current that does not change. */
const plant = (perKelvin: number): Plant => ({
  sourceAt: (temperature) => ({ resistance: 1 + COPPER * (temperature - 20) }) as Source,
  bridge: { arrangement: 'bridge', threshold: 0, slope: 0 },
  openPeak: 1,
  dcCableResistance: 0,
  eddyLoss: () => 0,
  bearingLoss: () => 0,
  settle: (loss) => Math.min(MELTS, 20 + loss / perKelvin),
  airTemperature: 20,
  melts: MELTS,
});
const steady =
  (watts: number) =>
  (source: Source): Electrical =>
    ({
      state: {
        dcAmps: 0,
        dcAmpsRms: 0,
        dcWatts: 0,
        phaseAmps: [0],
        diodeLoss: 0,
        lineLoss: 0,
        emfWatts: 0,
        copperLoss: watts * source.resistance,
      },
      load: { emf: 0, resistance: 0 },
    }) as unknown as Electrical;

test('100 W at 20 °C with 2 W/K settle at 82.2 °C', () => {
  // 100 (1 + 0.00393 x) = 2 x → x = 100 / (2 − 0.393) = 62.23 K
  const { point } = operatingPoint(plant(2), 10, steady(100));
  expect(Math.abs(point.coilTemperature - 82.23)).toBeLessThan(0.3);
  expect(runsAway(plant(2), point.coilTemperature)).toBe(false);
});

test('when each kelvin brings more loss than it carries away it runs away, to where the metal melts', () => {
  // 600 · 0.00393 = 2.36 W/K of loss against 2 W/K carried away.
  const { point } = operatingPoint(plant(2), 10, steady(600));
  expect(point.coilTemperature).toBe(MELTS);
  expect(runsAway(plant(2), point.coilTemperature)).toBe(true);
});

test('hot, but with a balance, is no runaway', () => {
  // 440 (1 + 0.00393 x) = 2 x → x = 440 / (2 − 1.7292) = 1625 K would melt it; 350: 350 / (2 − 1.3755) = 560.4 K, 580.4 °C.
  const { point } = operatingPoint(plant(2), 10, steady(350));
  expect(Math.abs(point.coilTemperature - 580.4)).toBeLessThan(1);
  expect(runsAway(plant(2), point.coilTemperature)).toBe(false);
  expect(runsAway(plant(2), operatingPoint(plant(2), 10, steady(440)).point.coilTemperature)).toBe(true);
});
