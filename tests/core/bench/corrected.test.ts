import { describe, expect, test } from 'vitest';
import { correctedEntries } from '../../../core/bench/corrected';
import { solve } from '../../../core/chain/solve';
import { demo, demoMachine, withEntries } from './fixture';

const { design, results } = demo('hill-cabin');
const machine = demoMachine('hill-cabin');
const about = (value: number) => ({ value, low: value - 0.02, high: value + 0.02 });

const changed = (entries: Record<string, unknown>) => withEntries(design, entries);

describe('a field of 92 % and a resistance of 106 %', () => {
  test('put down to the magnets, give those volts and ohms when worked out anew', () => {
    const again = solve(changed(correctedEntries(design, machine, { field: about(0.92), resistance: about(1.06) }, 'magnets')));
    expect(again.emf.phaseRmsPer1000rpm / results.emf.phaseRmsPer1000rpm).toBeCloseTo(0.92, 2);
    expect(again.coils.phaseResistance20 / results.coils.phaseResistance20).toBeCloseTo(1.06, 4);
  });

  test('put down to the gap, give them within a per cent', () => {
    const entries = correctedEntries(design, machine, { field: about(0.92) }, 'gap');
    expect(entries['discs.runningClearance']).toBeGreaterThan(design.discs.runningClearance);
    expect(solve(changed(entries)).emf.phaseRmsPer1000rpm / results.emf.phaseRmsPer1000rpm).toBeCloseTo(0.92, 1.7);
  });

  test('leave their history in the notes, before what stood there', () => {
    const { notes } = correctedEntries(design, machine, { field: about(0.92) }, 'magnets');
    expect(notes).toMatch(
      /^Measured on the bench: field 92\.0 % of plan \(95 % between 90\.0 and 94\.0\): remanence 1\.290 → 1\.187 T\.\n/,
    );
    expect(notes).toContain(design.notes);
  });
});

test('with nothing measured nothing changes', () => {
  expect(correctedEntries(design, machine, {}, 'magnets')).toEqual({});
});

test('entries stay in their ranges, however far off the measurement', () => {
  expect(() =>
    changed(correctedEntries(design, machine, { field: about(3), resistance: about(0.1), coefficient: about(4) }, 'magnets')),
  ).not.toThrow();
  expect(() => changed(correctedEntries(design, machine, { field: about(0.03) }, 'gap'))).not.toThrow();
});
