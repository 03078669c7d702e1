import { expect, test } from 'vitest';
import { batteryPresets, chargeCautions, chargeLimits } from '../../../core/charging/battery';
import { dcSideOf, loads } from '../../../core/charging/loads';

const battery = { kind: 'battery', chemistry: 'flooded', voltage: 24, resistance: 0.03, capacity: 200 } as const;

// Common practice, no source: flooded lead takes at most a fifth of its capacity in amperes; 200 A·h → 40 A.
const warnings = (capacityAmps: number) => chargeCautions(battery, capacityAmps).filter(({ severity }) => severity === 'warning');

test('a charge above the greatest rate is cautioned with the capacity that would do', () => {
  expect(warnings(39)).toEqual([]);
  expect(warnings(50)[0].where).toBe('load.capacity');
  expect(warnings(50)[0].message).toContain('250 A·h');
});

test('an unknown chemistry is not judged, but still wants its fuse', () => {
  const unknown = { ...battery, chemistry: 'salt water' };
  expect(chargeLimits(unknown, 25)).toBeUndefined();
  expect(chargeCautions(unknown, 300).map(({ severity, where }) => [severity, where])).toEqual([['note', 'load']]);
});

// 24 V are two of 12 V: absorb 2 · 14.6 V at 25 °C; at 5 °C 20 K · 2 · 30 mV more.
test('a cold lead battery is charged at more volts', () => {
  expect(chargeLimits(battery, 25)?.absorb).toBeCloseTo(29.2);
  expect(chargeLimits(battery, 5)?.absorb).toBeCloseTo(30.4);
  expect(chargeLimits(battery, 5)?.cutOff).toBeCloseTo(23.6);
});

test.each([
  [6.3, 6],
  [12.8, 12],
  [24, 24],
  [25.4, 24],
  [48, 48],
  [51, 48],
])('%f V while charging are a battery of %i V', (voltage, nominal) => {
  expect(chargeLimits({ ...battery, voltage }, 25)?.nominal).toBe(nominal);
});

// 30 A · 1.25 = 37.5 A → 40 A; 30 A · 24 V · 1.25 = 900 W; (29.2 V)² / 900 W = 0.947 Ω.
test('it names settings, fuse and diversion load', () => {
  const said = chargeCautions(battery, 30).map(({ message }) => message);
  expect(said).toHaveLength(2);
  expect(said[0]).toContain('absorb at 29.2 V, float at 26.8 V, cut off at 23.6 V, and 60 mV less for each degree warmer');
  expect(said[1]).toContain('fuse of 40 A');
  expect(said[1]).toContain('900 W and at most 0.947 Ω');
});

// 30 A want a fuse of 40 A; 20 A at 8 m/s and 50 A at 11 m/s: 40 A at 8 + 3 · 20/30 = 10 m/s.
test('it names the wind above which the fuse blows and leaves the wheel without load', () => {
  const winds = [
    { wind: 8, dcAmps: 20 },
    { wind: 11, dcAmps: 50 },
  ];
  expect(chargeCautions(battery, 30, winds).at(-1)!.message).toContain('Above 10.0 m/s more comes');
  expect(chargeCautions(battery, 30, winds.slice(0, 1)).at(-1)!.message).not.toContain('more comes');
});

test('a machine that never charges wants no fuse', () => expect(chargeCautions(battery, 0)).toHaveLength(1));

test('presets stand in order: cut-off below float below absorb', () => {
  for (const { cutOff, float, absorb, usualRate, greatestRate } of batteryPresets) {
    expect(cutOff).toBeLessThan(float);
    expect(float).toBeLessThan(absorb);
    expect(usualRate).toBeLessThan(greatestRate);
  }
});

test('every load says what the rectifier sees', () => {
  expect(dcSideOf(battery)).toEqual({ emf: 24, resistance: 0.03 });
  expect(dcSideOf({ kind: 'resistor', resistance: 5 })).toEqual({ emf: 0, resistance: 5 });
  expect(dcSideOf({ kind: 'threshold', turnOn: 25, slope: 20 })).toEqual({ emf: 25, resistance: 20 });
  expect(dcSideOf({ kind: 'open' })).toBeNull();
  expect(dcSideOf({ kind: 'tracker' })).toBeNull();
  expect(Object.keys(loads).sort()).toEqual(['battery', 'open', 'resistor', 'threshold', 'tracker']);
});
