import { expect, test } from 'vitest';
import { hypothesesOf } from '../../../core/bench/hypotheses';
import { nextMeasurement } from '../../../core/bench/next-measurement';
import { diagnosis } from '../../../core/bench/rank';
import { demo, demoMachine, everyPlace, questionsAs } from './fixture';

const { design } = demo('hill-cabin');
const planned = demoMachine('hill-cabin');
const hypotheses = hypothesesOf(planned);

const after = (family: string, subject: string, amount = 0, bench = everyPlace(design)) => {
  const fault = hypotheses.find((h) => h.family === family && h.subject === subject);
  const questions = questionsAs(fault?.build(amount) ?? planned, planned, design, bench);
  return nextMeasurement(planned, diagnosis(planned, questions), questions[1].measurement);
};

test('one of three reversed coils is found by the volts of two joined ones', () => {
  const next = after('reversed', '1');
  expect(next?.words).toMatch(/^AC volts from coil \d to coil \d/);
  const [a, b] = next?.expected.map(([, value]) => value) ?? [];
  expect(Math.abs(a - b)).toBeGreaterThan(0.9 * Math.max(a, b));
});

test('an open phase read at its terminals alone is found coil by coil', () => {
  const terminals = everyPlace(design).filter(({ on }) => on !== 'coil');
  expect(after('open', '2', 0, terminals)?.words).toMatch(/coil \d/);
});

test('a magnet upside down against a wider gap is told by the peak on a scope', () => {
  const next = after('flipped-magnet', '');
  expect(next?.words).toContain('peak on a scope');
});

test('where the fault is sure nothing more is asked', () => {
  expect(after('open', '4')).toBeUndefined();
});
