import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { benchReport } from '../../core/bench/report';
import { parseDesign, solve, type Design, type Reading } from '../../core/index';
import { withEntries } from '../core/bench/fixture';

// Readings that others published, through the bench: it must come to their authors' conclusions. What was read and how: machines/<name>.source.md.
function published(name: string): Design {
  const parsed = parseDesign(readFileSync(new URL(`machines/${name}.gapwright`, import.meta.url), 'utf8'));
  if (!parsed.ok) throw new Error(`${name}: ${JSON.stringify(parsed.problems)}`);
  return parsed.design;
}
const said = (design: Design) => benchReport(design, solve(design));

describe('kohler-2021', () => {
  // Line volts by oscilloscope, RMS, brought to 31 Hz by the author.
  const sound29 = [28.464, 28.475, 28.462, 28.458, 28.42, 28.421];
  const tilted = [28.065, 28.011, 27.965, 27.953, 27.973];
  const at31 = (list: readonly number[]): Reading[] =>
    list.map((volts) => ({ label: '', on: 'line', number: 1, hertz: 31, volts, meter: 'rms' }));

  const asBuilt = said(published('kohler-2021'));
  // Turns and magnets are not printed: what the sound machine gave is made the plan, as a builder would.
  const measured = withEntries(published('kohler-2021'), asBuilt.corrections.magnets);
  const fieldOf = (volts: readonly number[]) => {
    const { field } = said({ ...measured, bench: at31(volts) }).fit;
    if (!field) throw new Error('no field');
    return field;
  };

  test('five runs of the sound machine lie together within the author’s 0.2 %', () => {
    const { field } = asBuilt.fit;
    expect(field && (field.high - field.low) / 2 / field.value).toBeLessThan(0.002);
    for (const { row, figure, fitted, measured: read } of asBuilt.fit.residuals) {
      expect([row, figure, Math.abs(read / fitted - 1) < 0.002]).toEqual([row, figure, true]);
    }
  });

  test('two days later it is the same machine, to 0.3 %', () => {
    expect(Math.abs(fieldOf(sound29).value - 1)).toBeLessThan(0.003);
  });

  test('a rotor tilted about 1° shows as 0.4 V, 1.4 %, less at the same speed, and surely so', () => {
    const { value, high } = fieldOf(tilted);
    expect(value - 1).toBeCloseTo(-0.014, 3);
    expect(high).toBeLessThan(fieldOf(sound29).low);
    const report = said({ ...measured, bench: at31(tilted) });
    expect(report.headline).toContain('field 1.4 % under the plan’s');
    expect(report.verdict).toBe('as-planned'); // 1.4 % alone is within what careful builds stray by: no fault is named for it
  });
});

test('price-2008: the machine built gives the volts of its authors’ model, within what careful builds stray by', () => {
  const { verdict, compared } = said(published('price-2008'));
  expect(verdict).toBe('as-planned');
  const [peak] = compared;
  expect(peak.measured).toBe(37);
  // 35.5 V by the authors' own model; ours for the grade assumed is within 2 % of it.
  expect(Math.abs(peak.planned / 35.5 - 1)).toBeLessThan(0.02);
});
