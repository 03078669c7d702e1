import { beforeAll, describe, expect, it } from 'vitest';
import { solve } from '../../../core/chain/solve';
import { workingsOf } from '../../../core/chain/workings';
import { blankDesign } from '../../../core/design/form';
import type { Design } from '../../../core/design/schema';
import type { Notation } from '../../../core/notation';
import { reportPdf, type SheetPaper } from '../../../core/print/pdf';
import { quantityAt } from '../../../core/quantities';
import type { WorkingBlock } from '../../../core/sheet/document';
import { calculationReport } from '../../../core/sheet/report';
import { overlapping } from '../sheet/boxes';
import { fontBase64, type Page, readPdf, squeezed } from './sheet-pdf';
import { demo } from '../../demo';

const cabin = demo('hill-cabin');
const sixPhases: Design = {
  ...cabin,
  title:
    'The machine for the upper meadow behind the second barn, third attempt, with six phases and a good deal of hope, Losundbreitflächigunteilbarweitergehendesmaschinenwortdasnichtaufhörenwill',
  discs: { ...cabin.discs, poles: 14, pitchRadius: 0.2 },
  winding: {
    ...cabin.winding,
    phases: 6,
    layout: {
      kind: 'concentrated',
      coils: 12,
      holeInnerRadius: 0.177,
      holeOuterRadius: 0.223,
      holeInnerWidth: 0.03,
      holeOuterWidth: 0.04,
      legWidth: 0.02,
    },
  },
};
const lost: Design = {
  ...blankDesign(),
  title: '',
  load: { kind: 'open' },
  discs: { ...blankDesign().discs, arrangement: 'single', backing: { kind: 'none' } },
};

const cases: [string, Design, SheetPaper['paper']][] = [
  ['hill-cabin on A4', cabin, 'a4'],
  ['hill-cabin on Letter', cabin, 'letter'],
  ['shed-light on A4', demo('shed-light'), 'a4'],
  ['farm-tracker on Letter', demo('farm-tracker'), 'letter'],
  ['six phases under a very long title', sixPhases, 'a4'],
  ['an untitled machine that feeds nothing', lost, 'letter'],
];

/** Letters of a line of mathematics in the order in which they are set; roots and brackets are drawn. */
function letters(line: Notation): string {
  switch (line.kind) {
    case 'symbol':
      return line.text.replace('_', '');
    case 'upright':
    case 'sign':
      return line.text;
    case 'row':
      return line.parts.map(letters).join('');
    case 'fraction':
      return letters(line.over) + letters(line.under);
    case 'raised':
      return letters(line.of) + letters(line.exponent);
    case 'root':
    case 'bracket':
      return letters(line.of);
    case 'large':
      return [line.sign, ...[line.below, line.above].flatMap((end) => (end ? [letters(end)] : []))].join('');
  }
}

/** What one of each unit is, SI; speeds by name in rpm. */
const SI: Record<string, number> = {
  '': 1,
  mm: 1e-3,
  'mm²': 1e-6,
  m: 1,
  '%': 1e-2,
  '°C': 1,
  K: 1,
  T: 1,
  V: 1,
  A: 1,
  Ω: 1,
  mH: 1e-3,
  W: 1,
  kWh: 3.6e6,
  kg: 1,
  rpm: 1,
  'm/s': 1,
  Hz: 1,
  'A/mm²': 1e6,
  'V per 1000 rpm': 60 / (2000 * Math.PI),
  'mWb/m': 1e-3,
  'kA/m': 1e3,
  '°': Math.PI / 180,
  mWb: 1e-3,
  h: 3600,
  s: 1,
  'J/K': 1,
};

const valueAt = (root: unknown, path: string) =>
  path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], root);

/** Points from the foot of the page under which only its footer stands. */
const FOOT = (29 / 25.4) * 72;

describe.each(cases)('%s', (_, design, paper) => {
  const results = solve(design);
  const report = calculationReport(design, results);
  const workings = report.blocks.filter((block): block is WorkingBlock => block.kind === 'working');
  let pages: Page[];
  beforeAll(async () => {
    pages = await readPdf(
      reportPdf(design, results, { paper, fileName: 'hill-top.gapwright', date: '2026-03-14', fontBase64, version: '0.1.0' }),
    );
  });

  it('holds every working there is: value, lines of mathematics, names of the symbols, method, limits and source', () => {
    const expected = workingsOf(design, results).flatMap((group) => group.workings);
    expect(workings.map(({ label }) => label)).toEqual(expected.map(({ result }) => quantityAt(result).label));
    const text = squeezed(
      pages.flatMap(({ words }) => words.filter(({ corners }) => corners[0][1] > FOOT).map((word) => word.words)).join(''),
    );
    const said = workings.flatMap(({ label, value, lines, where, notes }) => [
      label,
      value,
      ...lines.map(({ line }) => letters(line)),
      ...(where ? [letters(where)] : []),
      ...notes,
    ]);
    expect(said.filter((words) => !text.includes(squeezed(words)))).toEqual([]);
    expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  it('a value is the solver’s own, rounded to the four figures printed', () => {
    const printed = workingsOf(design, results).flatMap((group) => group.workings);
    const numbers = printed.flatMap(({ result }, i) => {
      const value = valueAt(results, result);
      const [, digits, unit] = /^(−?[\d.]+)\s?(.*)$/.exec(workings[i].value) ?? [];
      return typeof value === 'number' ? [{ result, value, digits, unit }] : [];
    });
    expect(numbers.length).toBeGreaterThan(40);
    for (const { result, value, digits, unit } of numbers) {
      const [, decimals = ''] = digits.split('.');
      const off = Math.abs(Number(digits.replace('−', '-')) * SI[unit] - value);
      expect([result, off <= 0.5001 * 10 ** -decimals.length * SI[unit]]).toEqual([result, true]);
      expect([result, digits.replace(/[^\d]|^−?0\.0*/g, '').length >= 4 || /^\d{1,3}$|\.\d{6}$/.test(digits)]).toEqual([result, true]);
    }
  });

  it('no words lie on each other or leave the page', () => {
    for (const { width, height, words } of pages) {
      expect(overlapping(words)).toEqual([]);
      const margin = 40;
      const outside = words.filter(({ corners }) =>
        corners.some(([x, y]) => x < margin || x > width - margin || y < margin || y > height - margin),
      );
      expect(outside.map((w) => w.words)).toEqual([]);
    }
  });

  it('nothing is set too small to read: five points for what is raised or lowered, nine for words', () => {
    const sizes = pages.flatMap(({ words }) => words.map(({ size }) => size));
    expect(Math.min(...sizes)).toBeGreaterThan(4.9);
    const prose = pages.flatMap(({ words }) => words.filter((word) => /^(Limits|Source|Law|Formula|Numbers|Check)/.test(word.words)));
    expect(prose.length).toBeGreaterThan(3 * workings.length);
    expect(prose.filter(({ size }) => size < 8.99)).toEqual([]);
  });

  it('a working’s formulas stand on the page of its heading, and no page is left without words', () => {
    expect(pages.filter(({ words }) => words.length < 20)).toEqual([]);
    const texts = pages.map(({ words }) => squeezed(words.map((w) => w.words).join('')));
    for (const { label, symbol, value, lines } of workings) {
      const heading = squeezed(`${label}${symbol ? `,${symbol.replace('_', '')}` : ''}=${value}`);
      const numbers = lines.filter(({ says }) => says === 'Numbers').map(({ line }) => squeezed(letters(line)));
      const together = texts.filter((text) => [heading, ...numbers].every((words) => text.includes(words)));
      expect([label, together.length]).not.toEqual([label, 0]);
    }
  });
});
