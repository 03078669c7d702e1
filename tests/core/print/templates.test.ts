import { describe, expect, it } from 'vitest';
import type { Design } from '../../../core/design/schema';
import { cuttingDrawings } from '../../../core/sheet/cutting-drawings';
import type { SheetPaper } from '../../../core/print/pdf';
import { onPaper, templatePdf } from '../../../core/print/templates';
import { overlapping } from '../sheet/boxes';
import { designWith, resultsFor, serpentine } from '../sheet/fixture';
import { generatedDesigns } from '../sheet/generated';
import { type Point, readPdfPaths, strokesOf } from './read-shapes';
import { fontBase64, readPdf } from './sheet-pdf';

const paper: SheetPaper = { paper: 'a4', fileName: 'hill-top.gapwright', date: '2026-03-14', fontBase64 };
const level = ([a, b]: Point[]) => Math.abs(a[1] - b[1]) < 1e-6;
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
  // 743.5 mm between the pegs and 57 mm of board beyond them, on windows of 273 mm that share 10 mm, the paper laid across.
  expect(boards).toHaveLength(4);
});

it.each(['a4', 'letter'] as const)('neighbouring pages of %s have their crosses at the same places of the part', async (size) => {
  const design = designWith({});
  const pdf = templatePdf(design, resultsFor(design), { ...paper, paper: size });
  const drawing = onPaper(cuttingDrawings(design, resultsFor(design))[0].drawing);
  // The four pages of the disc: the first part, two across and two down.
  const pages = await Promise.all([1, 2, 3, 4].map((page) => readPdfPaths(pdf, page)));
  const expected = strokesOf(drawing);
  const crosses = pages.map((paths) => {
    const [first] = expected;
    const found = paths[1];
    if (first.kind !== 'circle' || found.kind !== 'circle') throw new Error('the disc begins with its edge');
    const [dx, dy] = [found.centre[0] - first.centre[0], found.centre[1] + first.centre[1]];
    const across = paths.flatMap((s) => (s.kind === 'line' && s.points.length === 2 && level(s.points) ? [s.points] : []));
    const centres = across.filter(([a, b]) => Math.abs(Math.abs(b[0] - a[0]) - 8) < 0.01).map(([a, b]) => [(a[0] + b[0]) / 2, a[1]]);
    return centres.map(([x, y]) => `${(x - dx).toFixed(2)} ${(y - dy).toFixed(2)}`);
  });
  const shared = (a: number, b: number) => crosses[a].filter((place) => crosses[b].includes(place)).length;
  expect(crosses.map((c) => c.length)).toEqual([4, 4, 4, 4]);
  expect([shared(0, 1), shared(2, 3), shared(0, 2), shared(1, 3), shared(0, 3)]).toEqual([2, 2, 2, 2, 1]);
});

describe.each([
  ['coils on A4', generatedDesigns[0], 'a4'],
  ['rings on Letter', generatedDesigns[6], 'letter'],
] as const)('templates of %s', (_, [, design, results], size) => {
  const pdf = templatePdf(design, results, { ...paper, paper: size });

  it('keep the foot of every page on its paper, its words apart', async () => {
    for (const { width, words } of await readPdf(pdf)) {
      // The lettering of the part itself, of another size, may be cut by the edge of its page.
      const foot = words.filter((w) => Math.abs(w.size - 10) < 0.01);
      expect(foot.length).toBeGreaterThanOrEqual(3);
      expect(overlapping(foot)).toEqual([]);
      expect(foot.filter(({ corners }) => corners.some(([x, y]) => x < 25 || x > width - 25 || y < 25)).map((w) => w.words)).toEqual([]);
    }
  });

  it('have a rule of 100 mm at the foot', async () => {
    for (const page of [1, 3, 8]) {
      const last = (await readPdfPaths(pdf, page)).at(-3);
      if (last?.kind !== 'line') throw new Error('no rule');
      expect(Math.abs(last.points[1][0] - last.points[0][0])).toBeCloseTo(100, 2);
    }
  });
});

it('the same input gives the same bytes', () => {
  expect(Buffer.from(printed(designWith({}))).equals(Buffer.from(printed(designWith({}))))).toBe(true);
});
