import { beforeAll, describe, expect, it } from 'vitest';
import { solve } from '../../../core/chain/solve';
import type { Results } from '../../../core/chain/results';
import { blankDesign } from '../../../core/design/form';
import type { Design } from '../../../core/design/schema';
import { sheetPdf, type SheetPaper } from '../../../core/print/pdf';
import { windingSheet } from '../../../core/sheet/build';
import type { Block } from '../../../core/sheet/document';
import { overlapping } from '../sheet/boxes';
import { concentrated, designWith, resultsFor, serpentine } from '../sheet/fixture';
import { fontBase64, type Page, readPdf, squeezed } from './sheet-pdf';

const paper: SheetPaper = { paper: 'a4', fileName: 'hill-top.gapwright', date: '2026-03-14', fontBase64, version: '0.1.0' };
const printed = (design: Design, change: Partial<SheetPaper> = {}, results = resultsFor(design)) =>
  sheetPdf(design, results, { ...paper, ...change });

const sixPhases: Design = (() => {
  const design = designWith(
    {
      layout: {
        kind: 'concentrated',
        coils: 60,
        holeInnerRadius: 0.327,
        holeOuterRadius: 0.373,
        holeInnerWidth: 0.019,
        holeOuterWidth: 0.022,
        legWidth: 0.007,
      },
      phases: 6,
      parallelPaths: 2,
    },
    40,
    'The machine for the upper meadow behind the second barn, third attempt, with six phases on forty poles and a good deal of hope, for whoever comes after us',
  );
  return {
    ...design,
    discs: { ...design.discs, pitchRadius: 0.35 },
    notes:
      'Keep the first coil for comparison.\nLosundbreitflächigunteilbaresWortdasnichtaufhörenwillundimmerweitergehtbisüberdenRandhinausundnochweiter.',
  };
})();

const blank = blankDesign();
const solvedSerpentine: Design = { ...blank, winding: { ...blank.winding, layout: serpentine, thickness: 0.006, turns: 20 } };

const roundMagnets: Design = {
  ...designWith({ layout: concentrated(8), phases: 2, wire: { ...blank.winding.wire, inHand: 3 } }, 10, 'Round magnets'),
  load: { kind: 'open' },
};
roundMagnets.magnets = { ...roundMagnets.magnets, shape: { kind: 'cylinder', diameter: 0.04, axial: 0.008 } };
roundMagnets.discs = { ...roundMagnets.discs, arrangement: 'single-with-return' };

const unbalanced: Design = {
  ...designWith({ layout: concentrated(10), connection: 'delta' }, 12, 'Ten coils for three phases'),
  load: { kind: 'tracker' },
  controller: { maxInputVoltage: 100, minInputVoltage: 20, maxInputCurrent: 40, maxPower: 1500, batteryVoltage: 24, maxChargeCurrent: 50 },
};
unbalanced.magnets = {
  ...unbalanced.magnets,
  shape: { kind: 'sector', innerRadius: 0.1, outerRadius: 0.15, span: 0.4, axial: 0.01 },
};
unbalanced.discs = { ...unbalanced.discs, arrangement: 'single', backing: { kind: 'none' } };

const cases: [string, Design, Partial<SheetPaper>, Results?][] = [
  ['a blank design, worked out', blank, {}, solve(blank)],
  ['a serpentine, worked out', solvedSerpentine, { paper: 'letter' }, solve(solvedSerpentine)],
  ['two phases under round magnets and a return plate, worked out', roundMagnets, {}, solve(roundMagnets)],
  ['ten coils for three phases under sectors, worked out', unbalanced, {}, solve(unbalanced)],
  ['nine coils on A4', designWith({}), {}],
  ['a serpentine on Letter', designWith({ layout: serpentine }), { paper: 'letter' }],
  ['a single phase on bridges in series', designWith({ layout: concentrated(6), phases: 1, connection: 'separate' }, 8), {}],
  [
    'six phases on forty poles under a long title and a long file name',
    sixPhases,
    { fileName: `${'a-very-long-name-'.repeat(12)}.gapwright` },
  ],
  ['the same on Letter', sixPhases, { paper: 'letter' }],
  ['a hundred and twenty coils in delta', designWith({ layout: concentrated(120), parallelPaths: 40, connection: 'delta' }, 40), {}],
];

const wordsOf = (block: Block): string[] => {
  switch (block.kind) {
    case 'facts':
    case 'table':
      return block.rows.flat();
    case 'steps':
      return block.steps;
    case 'cautions':
      return block.cautions.map((c) => c.message);
    case 'drawing':
      return [block.drawing.title, ...block.drawing.strokes.flatMap((s) => (s.kind === 'text' ? [s.text] : []))];
    default:
      return [block.text];
  }
};

describe.each(cases)('%s', (_, design, change, results = resultsFor(design)) => {
  let pages: Page[];
  beforeAll(async () => {
    pages = await readPdf(printed(design, change, results));
  });

  it('prints every word and number of every block', () => {
    const text = squeezed(pages.flatMap((p) => p.words.map((w) => w.words)).join(''));
    const missing = windingSheet(design, results)
      .blocks.flatMap(wordsOf)
      .filter((words) => !text.includes(squeezed(words)));
    expect(missing).toEqual([]);
    expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  it('no words lie on each other or leave the page', () => {
    for (const { width, height, words } of pages) {
      expect(overlapping(words)).toEqual([]);
      const margin = 25;
      const outside = words.filter(({ corners }) =>
        corners.some(([x, y]) => x < margin || x > width - margin || y < margin || y > height - margin),
      );
      expect(outside.map((w) => w.words)).toEqual([]);
    }
  });

  it('is written in type of ten points and more', () => {
    const small = pages.flatMap((p) => p.words.filter((w) => w.size < 9.99));
    expect(small.map((w) => `${w.words} at ${w.size.toFixed(1)}`)).toEqual([]);
  });

  it('says on every page which file, which day, which design and which page', () => {
    const { trace } = windingSheet(design, results);
    pages.forEach(({ words }, i) => {
      const foot = words.map((w) => w.words).join(' ');
      expect(foot).toContain(`page ${i + 1} of ${pages.length}`);
      expect(foot).toContain(`2026-03-14 · Gapwright 0.1.0 · trace ${trace}`);
      expect(foot).toContain('.gapwright');
    });
  });
});

it('the bench record begins a page, and what stands before it is not drawn overleaf', async () => {
  const notes = 'Keep the first coil for comparison.';
  const pages = await readPdf(printed({ ...designWith({}), notes }));
  const starts = pages.map(({ words }) => words[0].words);
  expect(starts.filter((first) => first === 'Bench record')).toHaveLength(1);
  const text = pages.map(({ words }) => words.map((w) => w.words).join(' '));
  expect(text.findIndex((page) => page.includes('Notes'))).toBe(text.findIndex((page) => page.includes(notes)));
});

it('the same design, paper, name and day give the same bytes', () => {
  const [once, again] = [printed(designWith({})), printed(designWith({}))];
  expect(Buffer.from(once).equals(Buffer.from(again))).toBe(true);
  expect(Buffer.from(once).equals(Buffer.from(printed(designWith({ turns: 61 }))))).toBe(false);
});

it('A4 is 210 by 297 mm, Letter 8½ by 11 inches', async () => {
  const sizes = await Promise.all((['a4', 'letter'] as const).map((name) => readPdf(printed(designWith({}), { paper: name }))));
  expect(sizes.map(([page]) => [Math.round((page.width * 25.4) / 72), Math.round((page.height * 25.4) / 72)])).toEqual([
    [210, 297],
    [216, 279],
  ]);
});

it('a title in letters the font lacks still prints', async () => {
  const pages = await readPdf(printed(designWith({}, 12, 'Windrad 風車 🌀')));
  expect(pages[0].words.map((w) => w.words).join('')).toContain('Windrad');
});

it('carries its font, so that Ω, ° and ∅ print anywhere', () => {
  const text = Buffer.from(printed(designWith({}))).toString('latin1');
  expect(text).toContain('/FontFile2');
});
