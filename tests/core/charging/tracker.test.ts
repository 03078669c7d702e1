import { expect, test } from 'vitest';
import { trackerPoint } from '../../../core/charging/tracker';

// A plain source by hand: 100 V behind 2 Ω. At V volts it gives I = (100 − V)/2, the shaft 100·I, the load V·I.
const draw = (volts: number) => {
  const dcAmps = (100 - volts) / 2;
  return { dcAmps, dcWatts: volts * dcAmps, shaftWatts: 100 * dcAmps };
};
const wide = { minVolts: 0, maxVolts: 1000, maxAmps: 1000, maxWatts: 1e6 };

test('the volts are those at which the wanted shaft power is taken: 500 W is 5 A is 90 V', () => {
  const found = trackerPoint(draw, 100, 500, wide, 70);
  expect(found?.volts).toBeCloseTo(90, 0);
  expect(found?.limited).toBe(false);
});

test('it does not pull below half the open volts, where the winding eats more than the load', () => {
  const found = trackerPoint(draw, 100, 9000, wide, 70);
  expect(found?.volts).toBeGreaterThan(49.9);
  expect(found?.volts).toBeLessThan(51);
  expect(found?.limited).toBe(true);
});

// One phase of sine E behind a resistance, by hand: I ∝ √(1 − x²) − x·acos x at x = V/E, whose power x·I is greatest at x = 0.394, 5.8 % above x = ½.
test('its top is not always at half the open volts', () => {
  const sine = (volts: number) => {
    const x = volts / 100;
    const dcAmps = 10 * (Math.sqrt(1 - x * x) - x * Math.acos(x));
    return { dcAmps, dcWatts: volts * dcAmps, shaftWatts: 100 * dcAmps };
  };
  const found = trackerPoint(sine, 100, 1e6, wide, 70);
  expect(found?.volts).toBeGreaterThan(38);
  expect(found?.volts).toBeLessThan(41);
  expect((found?.drawn.dcWatts ?? 0) / sine(39.4).dcWatts).toBeCloseTo(1, 3);
});

test('a limit of amps holds it back: 4 A is 92 V', () => {
  const found = trackerPoint(draw, 100, 2000, { ...wide, maxAmps: 4 }, 70);
  expect(found?.volts).toBeCloseTo(92, 0);
  expect(found?.limited).toBe(true);
});

test('a limit of watts holds it back: 450 W is 5 A at 90 V', () => {
  expect(trackerPoint(draw, 100, 2000, { ...wide, maxWatts: 450 }, 70)?.volts).toBeCloseTo(90, 0);
});

test('below its window it takes nothing', () => {
  expect(trackerPoint(draw, 100, 500, { ...wide, minVolts: 120 }, 70)).toBeUndefined();
});
