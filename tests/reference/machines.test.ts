import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parseDesign, solve, type Results } from '../../core/index';

// Machines that others built, measured and published; what each number is and from where: machines/<name>.source.md.
interface Row {
  quantity: string;
  of: keyof typeof ours;
  at: { rpm?: number; amps?: number };
  /** Read with the stator out of the machine: no steel near. */
  bare?: boolean;
  value: number;
  unit: string;
  /** The paper's own uncertainty, relative. */
  within: number;
  /** Ours over theirs, less one: as stated in DEVELOPERS.md, tuned by nobody. */
  difference: number;
  by: string;
}
/** What the paper left out: another guess, and by how much each row's difference moves with it. */
interface Guess {
  what: string;
  set: Record<string, unknown>;
  moves: number[];
}
const here = (name: string) => readFileSync(new URL(name, import.meta.url), 'utf8');
const machines = JSON.parse(here('machines/machines.json')) as Record<string, { measured: Row[]; assumed: Guess[] }>;
const engineers = here('../../DEVELOPERS.md');

type At = Row['at'];
const shaft = ({ rpm = 0 }: At) => (rpm * 2 * Math.PI) / 60;
const highest = (wave: readonly number[]) => Math.max(...wave.map(Math.abs));
const ours = {
  phasePeakToPeak: ({ stages }: Results, { rpm = 0 }: At) =>
    ((Math.max(...stages.emf.waveform.phase) - Math.min(...stages.emf.waveform.phase)) * rpm) / 1000,
  phasePeak: ({ stages }: Results, { rpm = 0 }: At) => (highest(stages.emf.waveform.phase) * rpm) / 1000,
  lineRms: ({ emf }: Results, { rpm = 0 }: At) => (emf.lineRmsPer1000rpm * rpm) / 1000,
  lineCrest: ({ stages, emf }: Results) => highest(stages.emf.waveform.line) / emf.lineRmsPer1000rpm,
  /** Three phases carry sines in step with their EMF. */
  torque: ({ emf }: Results, { amps = 0 }: At) => 1.5 * emf.peakPerRadPerSecond * Math.SQRT2 * amps,
  reactance: ({ stages }: Results, at: At) =>
    shaft(at) * stages.emf.polePairs * (stages.emf.inductance[0][0] - stages.emf.inductance[0][1]),
  resistance: ({ coils }: Results) => coils.phaseResistance20,
  inductance: ({ coils }: Results) => coils.phaseInductance * 1e6,
  fundamental: ({ gap }: Results) => gap.fundamental,
  peak: ({ gap }: Results) => gap.peak,
} satisfies Record<string, (results: Results, at: At) => number>;

function resultsOf(name: string, set: Record<string, unknown>): Results {
  const file = JSON.parse(here(`machines/${name}.gapwright`)) as Record<string, unknown>;
  for (const [path, value] of Object.entries(set)) {
    const keys = path.split('.');
    const last = keys.pop() ?? '';
    const section = keys.reduce((inside, key) => inside[key] as Record<string, unknown>, file);
    section[last] = value;
  }
  const parsed = parseDesign(JSON.stringify(file));
  if (!parsed.ok) throw new Error(`${name}: ${JSON.stringify(parsed.problems)}`);
  return solve(parsed.design);
}

/** Each row's difference, of the machine as entered or with another guess in place. */
function differences(name: string, rows: readonly Row[], set: Record<string, unknown> = {}): number[] {
  const whole = resultsOf(name, set);
  const bare = rows.some((row) => row.bare) ? resultsOf(name, { ...set, 'discs.backing': { kind: 'none' } }) : whole;
  return rows.map(({ of, at, bare: alone, value }) => ours[of](alone ? bare : whole, at) / value - 1);
}

for (const [name, { measured, assumed }] of Object.entries(machines)) {
  const found = differences(name, measured);
  measured.forEach(({ quantity, difference, within }, i) => {
    test(`${name}: ${quantity} differs from the paper's as stated`, () => {
      expect(Math.abs(found[i] - difference)).toBeLessThanOrEqual(within);
    });
  });
  for (const { what, set, moves } of assumed) {
    test(`${name}: with ${what} the differences move as stated`, () => {
      const other = differences(name, measured, set);
      other.forEach((value, i) => expect(Math.abs(value - found[i] - moves[i])).toBeLessThanOrEqual(0.006));
    });
  }
}

test('DEVELOPERS.md states every difference', () => {
  const percent = (d: number) => `${d < 0 ? '−' : '+'}${(Math.abs(d) * 100).toFixed(1)} %`;
  for (const [name, { measured }] of Object.entries(machines)) {
    for (const { quantity, value, unit, by, difference, within } of measured) {
      const printed = `${value} ${unit}`.trim() + (by === 'measured' ? '' : `, ${by}`);
      expect(engineers).toContain(`| ${name} | ${quantity} | ${printed} | ${percent(difference)} | ±${(within * 100).toFixed(1)} % |`);
    }
  }
});
