import { solve } from '../../../core/chain/solve';
import type { Results } from '../../../core/chain/results';
import { readDesign } from '../../../core/design/parse';
import type { Reading } from '../../../core/design/readings';
import type { Design } from '../../../core/design/schema';
import { benchMachine, type BenchMachine } from '../../../core/bench/machine';
import { predicted, questionOf, type Question } from '../../../core/bench/predict';
import { measurementsOf } from '../../../core/bench/readings';
import { demo as opened } from '../../demo';

const demos = new Map<string, { design: Design; results: Results }>();

/** A demo of assets/, worked out once. */
export function demo(name: string): { design: Design; results: Results } {
  const known = demos.get(name);
  if (known) return known;
  const design = opened(name);
  const made = { design, results: solve(design) };
  demos.set(name, made);
  return made;
}

/** Readings of every place on a design's winding: ohms and volts of coils, phases and lines, at one speed. */
export function everyPlace(design: Design, speed = 15): Reading[] {
  const { layout, phases } = design.winding;
  const coils = layout.kind === 'concentrated' ? layout.coils : phases;
  const list = (on: Reading['on'], count: number): Reading[] =>
    Array.from({ length: count }, (_, k) => ({ label: '', on, number: k + 1, ohms: 1, volts: 1, speed, speedBy: 'tachometer' as const }));
  return [...list('coil', coils), ...list('phase', phases), ...(phases > 1 ? list('line', phases) : [])];
}

/** Readings as questions, with what a machine would answer in place of what was read. */
export function questionsAs(truth: BenchMachine, planned: BenchMachine, design: Design, bench: Reading[]): Question[] {
  const { measurements } = measurementsOf({ ...design, bench });
  return measurements.map((m) => questionOf(planned, { ...m, value: predicted(truth, m, undefined, questionOf(planned, m).inductive) }));
}

export const demoMachine = (name: string): BenchMachine => {
  const { design, results } = demo(name);
  return benchMachine(design, results);
};

/** A design with entries changed, by path. */
export function withEntries(design: Design, entries: Record<string, unknown>): Design {
  const made = structuredClone(design) as unknown as Record<string, unknown>;
  for (const [path, value] of Object.entries(entries)) {
    const keys = path.split('.');
    const last = keys.pop() ?? '';
    const at = keys.reduce((object, key) => object[key] as Record<string, unknown>, made);
    at[last] = value;
  }
  const read = readDesign(made);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.design;
}
