import { expect, it } from 'vitest';
import type { Design } from '../../../core/design/schema';
import type { SheetPaper } from '../../../core/print/pdf';
import { templatePdf } from '../../../core/print/templates';
import { designWith, resultsFor, serpentine } from '../sheet/fixture';
import { fontBase64, readPdf } from './sheet-pdf';

const paper: SheetPaper = { paper: 'a4', fileName: 'hill-top.gapwright', date: '2026-03-14', fontBase64 };
const printed = (design: Design) => templatePdf(design, resultsFor(design), paper);

it('a disc of 311 mm takes four pages of A4, the smaller parts one each', async () => {
  const pages = await readPdf(printed(designWith({})));
  const titles = pages.map(({ words }) => words.map((w) => w.words).join(' '));
  expect(titles.filter((t) => t.includes('Disc, 12 magnets'))).toHaveLength(4);
  expect(titles.filter((t) => t.includes('Cheek of the former'))).toHaveLength(1);
  expect(titles.filter((t) => t.includes('Core of the former'))).toHaveLength(1);
});

it('a board longer than a page is spread over as many as it needs', async () => {
  const pages = await readPdf(printed(designWith({ layout: serpentine })));
  const boards = pages.map(({ words }) => words.map((w) => w.words).join(' ')).filter((t) => t.includes('Peg board'));
  // 743.5 mm between the pegs and 56 mm of board beyond them, on windows of 186 mm that share 10 mm.
  expect(boards).toHaveLength(5);
});

it('the same input gives the same bytes', () => {
  expect(Buffer.from(printed(designWith({}))).equals(Buffer.from(printed(designWith({}))))).toBe(true);
});
