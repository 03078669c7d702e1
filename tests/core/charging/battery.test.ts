import { expect, test } from 'vitest';
import { batteryPresets, chargeCautions } from '../../../core/charging/battery';
import { dcSideOf, loads } from '../../../core/charging/loads';

const battery = { kind: 'battery', chemistry: 'flooded', voltage: 24, resistance: 0.03, capacity: 200 } as const;

// Common practice, no source: flooded lead takes at most a fifth of its capacity in amperes; 200 A·h → 40 A.
test('a charge above the greatest rate is cautioned with the capacity that would do', () => {
  expect(chargeCautions(battery, 39)).toEqual([]);
  expect(chargeCautions(battery, 50)[0]).toMatchObject({ severity: 'warning', where: 'load.capacity' });
  expect(chargeCautions(battery, 50)[0].message).toContain('250 A·h');
});

test('an unknown chemistry is not judged', () => expect(chargeCautions({ ...battery, chemistry: 'salt water' }, 500)).toEqual([]));

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
