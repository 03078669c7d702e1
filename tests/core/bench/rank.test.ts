import { describe, expect, test } from 'vitest';
import { hypothesesOf, type FamilyName } from '../../../core/bench/hypotheses';
import { diagnosis } from '../../../core/bench/rank';
import { headline } from '../../../core/bench/verdict';
import { demo, demoMachine, everyPlace, questionsAs } from './fixture';

const { design } = demo('hill-cabin');
const planned = demoMachine('hill-cabin');
const hypotheses = hypothesesOf(planned);
const fault = (family: FamilyName, subject = '') => {
  const found = hypotheses.find((h) => h.family === family && (subject === '' || h.subject === subject));
  if (!found) throw new Error(`no ${family} ${subject}`);
  return found;
};
const said = (family: FamilyName, subject = '', amount = 0, bench = everyPlace(design)) =>
  diagnosis(planned, questionsAs(fault(family, subject).build(amount), planned, design, bench));

test('belief before any reading adds up to one', () => {
  expect(hypotheses.reduce((sum, { prior }) => sum + prior, 0)).toBeCloseTo(1, 12);
});

test('with nothing read nothing is said', () => {
  expect(diagnosis(planned, []).verdict).toBe('nothing-read');
});

test('a machine read as planned is as planned, and what no reading looked at is named', () => {
  const healthy = said('healthy');
  expect(healthy.verdict).toBe('as-planned');
  expect(healthy.untested).toContain('dead-diode');
  expect(headline(healthy)).toContain('dead diode');
});

test.each<[FamilyName, string, number]>([
  ['open', '4', 0],
  ['shorted', '7', 0.25],
  ['swapped', 'B', 0],
  ['like-to-like', '', 0],
  ['thinner-wire', '', 0.85],
])('read exactly, %s %s leads alone', (family, subject, amount) => {
  const { verdict, suspects } = said(family, subject, amount);
  const [head] = suspects[0].explanations;
  expect(verdict).toBe('fault');
  expect(head.hypothesis.family).toBe(family);
  expect(head.hypothesis.subject).toBe(subject);
  if (amount) expect(head.amount).toBeCloseTo(amount, 2);
});

test('which of a phase’s coils is reversed no terminal tells: all three are named, and nothing is called sure', () => {
  const { verdict, suspects } = said('reversed', '4');
  expect(verdict).toBe('cannot-tell');
  expect(suspects[0].explanations.map(({ hypothesis }) => hypothesis.subject).sort()).toEqual(['1', '4', '7']);
  expect(suspects[0].weight).toBeGreaterThan(0.99);
});

test('a coil in the wrong phase is told, and its two likely neighbours with it', () => {
  const { suspects } = said('wrong-phase', '2 in A');
  expect(suspects[0].weight).toBeGreaterThan(0.99);
  expect(suspects[0].explanations.map(({ hypothesis }) => `${hypothesis.family} ${hypothesis.subject}`)).toContain('wrong-phase 2 in A');
  expect(suspects[0].explanations.every(({ hypothesis }) => hypothesis.family === 'wrong-phase')).toBe(true);
});

test('weak magnets, a wide gap and turned discs look alike to an AC meter', () => {
  const { verdict, suspects } = said('weaker-magnets', '', 0.75);
  expect(verdict).toBe('cannot-tell');
  const kinds = suspects.flatMap(({ explanations }) => explanations.map(({ hypothesis }) => hypothesis.family));
  expect(kinds).toEqual(expect.arrayContaining(['weaker-magnets', 'wider-gap', 'misaligned']));
});

test('readings that no single fault gives are said to be unexplained', () => {
  const two = questionsAs(planned, planned, design, everyPlace(design)).map((question, i) => ({
    ...question,
    value: question.value * (i % 2 ? 1.25 : 0.8),
  }));
  const { verdict } = diagnosis(planned, two);
  expect(verdict).toBe('unexplained');
});

describe('a machine of one phase', () => {
  test('has no phases to swap and no coil to put into another', () => {
    const families = new Set(hypothesesOf(demoMachine('shed-light')).map(({ family }) => family));
    expect([...families].filter((name) => ['swapped', 'wrong-phase', 'exchanged'].includes(name))).toEqual([]);
  });
});
