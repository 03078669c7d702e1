import { describe, expect, it } from 'vitest';
import { dxfText } from '../../../core/print/dxf';
import { svgText } from '../../../core/print/svg';
import { onPaper, templatePdf } from '../../../core/print/templates';
import { cuttingDrawings } from '../../../core/sheet/cutting-drawings';
import { generatedDesigns } from '../sheet/generated';
import { crossings, farthest, readDxf, readPdfPaths, readSvg, type Shape, strokesOf } from './read-shapes';
import { fontBase64, readPdf } from './sheet-pdf';

const paper = { paper: 'a4', fileName: 'x.gapwright', date: '2026-03-14', fontBase64 } as const;

const cut = (shapes: Shape[]) => shapes.filter((s) => s.layer === 'outline');
const circlesOf = (shapes: Shape[], diameter: number) =>
  cut(shapes).flatMap((s) => (s.kind === 'circle' && Math.abs(2 * s.radius - diameter) < 1e-4 ? [s.centre] : []));

describe.each(generatedDesigns)('parts to cut, %s', (_, design, results) => {
  const parts = Object.fromEntries(cuttingDrawings(design, results).map(({ name, drawing }) => [name, drawing]));
  const read = Object.fromEntries(Object.entries(parts).map(([name, drawing]) => [name, readDxf(dxfText(drawing)).shapes]));
  const workshop = design.workshop!;

  it('everything cut is a closed contour that crosses neither itself nor another', () => {
    for (const [name, shapes] of Object.entries(read)) {
      expect([name, cut(shapes).every((s) => s.kind === 'circle' || (s.closed && s.points.length > 2))]).toEqual([name, true]);
      expect([name, crossings(cut(shapes))]).toEqual([name, 0]);
    }
  });

  it('shaft, hub and mounting holes have their diameters, numbers and circles', () => {
    const ring = (name: string, holes: number, diameter: number) => {
      const found = circlesOf(read[name], diameter * 1000);
      expect([name, found.length]).toEqual([name, holes]);
      const radii = found.map(([x, y]) => Math.hypot(x, y));
      expect(Math.max(...radii) - Math.min(...radii)).toBeLessThan(1e-4);
      return radii[0];
    };
    for (const name of ['disc', 'magnet-holder', 'drill-template']) {
      expect(ring(name, workshop.bolts, workshop.boltHole)).toBeCloseTo(workshop.boltCircle * 500, 3);
      expect(ring(name, 1, workshop.shaftHole)).toBeCloseTo(0, 6);
    }
    const mounting = ring('winding-mould', workshop.mountingBolts, workshop.mountingHole);
    expect(ring('drill-template', workshop.mountingBolts, workshop.mountingHole)).toBe(mounting);
    // The bolts stand outside the copper.
    expect(mounting - workshop.mountingHole * 500).toBeGreaterThan(results.stages.winding.outerRadius * 1000);
  });

  it('every pocket is larger than its magnet by the fit on each side, and there is one for each magnet', () => {
    const { shape } = design.magnets;
    const atHub = workshop.boltCircle * 500 + 1;
    const [edge] = cut(read['magnet-holder']);
    const pockets = cut(read['magnet-holder']).filter((s) => s !== edge && (s.kind === 'line' || Math.hypot(...s.centre) > atHub));
    expect(pockets).toHaveLength(design.discs.poles);
    const fit = workshop.magnetFit * 1000;
    for (const pocket of pockets) {
      if (shape.kind === 'cylinder') expect(pocket.kind === 'circle' && 2 * pocket.radius).toBeCloseTo(shape.diameter * 1000 + 2 * fit, 4);
      if (pocket.kind === 'line' && shape.kind === 'block') {
        const [a, b, c] = pocket.points;
        expect(Math.hypot(b[0] - a[0], b[1] - a[1])).toBeCloseTo(shape.radial * 1000 + 2 * fit, 4);
        expect(Math.hypot(c[0] - b[0], c[1] - b[1])).toBeCloseTo(shape.tangential * 1000 + 2 * fit, 4);
      }
      if (pocket.kind === 'line' && shape.kind === 'sector') {
        const radii = pocket.points.map((p) => Math.hypot(...p));
        expect(Math.max(...radii)).toBeCloseTo(shape.outerRadius * 1000 + fit, 4);
        expect(Math.min(...radii)).toBeCloseTo(shape.innerRadius * 1000 - fit, 4);
      }
    }
  });

  it('discs that face something have spacers as long as gap and magnets together, one for each stud', () => {
    const { arrangement } = design.discs;
    if (arrangement === 'single') {
      expect(parts.spacer).toBeUndefined();
      return;
    }
    const length = (results.gap.length + (arrangement === 'facing-pair' ? 2 : 1) * design.magnets.shape.axial) * 1000;
    expect(parts.spacer.title).toBe(`Spacer, ${workshop.bolts} of them, ${Number(length.toFixed(1))} mm long from disc to disc`);
    expect(circlesOf(read.spacer, workshop.boltHole * 1000)).toHaveLength(1);
  });

  it('what the winding needs is there, and the coils lie inside the mould’s opening', () => {
    const formers = design.winding.layout.kind === 'concentrated' ? ['former-cheek', 'former-core'] : ['peg-board', 'folding-jig'];
    expect(Object.keys(parts)).toEqual(expect.arrayContaining([...formers, 'winding-mould', 'winding-layout']));
    const [, opening, island] = cut(read['winding-mould']).flatMap((s) => (s.kind === 'circle' ? [s.radius] : []));
    const coils = read['winding-layout'].flatMap((s) => (s.kind === 'line' && s.closed ? s.points : [])).map((p) => Math.hypot(...p));
    expect(Math.max(...coils)).toBeLessThan(opening);
    expect(Math.min(...coils)).toBeGreaterThan(island);
  });

  it('SVG and DXF put every point where the drawing has it, to a hundredth of a millimetre', () => {
    for (const [name, drawing] of Object.entries(parts)) {
      const svg = svgText(drawing);
      const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!.map(Number);
      const { minX, maxX, minY, maxY } = drawing.bounds;
      expect([name, Math.abs(width - (maxX - minX)) < 0.01, Math.abs(height - (maxY - minY)) < 0.01]).toEqual([name, true, true]);
      expect(svg).toContain(`viewBox="${Number(minX.toFixed(3))} ${Number((-maxY).toFixed(3))} ${width} ${height}"`);
      expect(farthest(strokesOf(drawing), readSvg(svg))).toBeLessThan(0.01);
      expect(farthest(strokesOf(drawing), read[name])).toBeLessThan(0.01);
    }
  });
});

/** The largest fill fifty pages and say nothing new. */
const small = generatedDesigns.filter(([, { discs }]) => discs.poles < 20);

describe.each(small)('parts on paper, %s', (_, design, results) => {
  it('every point stands where the drawing has it, to a hundredth of a millimetre', async () => {
    const pdf = templatePdf(design, results, paper);
    const titles = (await readPdf(pdf)).map(({ words }) =>
      words
        .map((w) => w.words)
        .join(' ')
        .replace(/\s+/g, ' '),
    );
    for (const { drawing: whole } of cuttingDrawings(design, results)) {
      const drawing = onPaper(whole);
      // All but the rule, three lines and words, which stands at the foot of every page.
      expect(drawing.strokes).toEqual(whole.strokes.slice(0, -4));
      const page = titles.findIndex((words) => words.includes(drawing.title.slice(0, 60)));
      const paths = await readPdfPaths(pdf, page + 1);
      const { minX, maxY } = drawing.bounds;
      // The first page of a part begins at its upper left corner, 12 mm inside the paper. The window comes first, marks come last.
      const place = ([x, y]: [number, number]): [number, number] => [12 + x - minX, 12 + maxY - y];
      const expected = strokesOf(drawing).map(
        (s): Shape => (s.kind === 'circle' ? { ...s, centre: place(s.centre) } : { ...s, points: s.points.map(place) }),
      );
      expect([drawing.title, farthest(expected, paths.slice(1, 1 + expected.length))]).toEqual([drawing.title, expect.closeTo(0, 2)]);
    }
  });
});

it('a contour that crosses itself or another is seen', () => {
  const square = (x: number): Shape => ({
    kind: 'line',
    closed: true,
    points: [
      [x, 0],
      [x + 10, 0],
      [x + 10, 10],
      [x, 10],
    ],
  });
  const bow: Shape = {
    kind: 'line',
    closed: true,
    points: [
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 9],
    ],
  };
  expect(crossings([square(0), square(20)])).toBe(0);
  expect(crossings([bow])).toBe(1);
  expect(crossings([square(0), { kind: 'circle', centre: [10.1, 5], radius: 2 }])).toBe(2);
});

it('without the hub known there is a pilot hole and nothing to guess', () => {
  const [, design, results] = generatedDesigns[0];
  const parts = cuttingDrawings({ ...design, workshop: undefined }, results);
  expect(parts.map(({ name }) => name)).toEqual([
    'disc',
    'magnet-holder',
    'winding-mould',
    'winding-layout',
    'former-cheek',
    'former-core',
  ]);
  expect(circlesOf(strokesOf(parts[0].drawing), 3)).toEqual([[0, 0]]);
});

it('magnets that all but touch leave no wall for a holder', () => {
  const [, design, results] = generatedDesigns[3];
  const { shape } = design.magnets;
  if (shape.kind !== 'sector') throw new Error('the fourth design has sectors');
  const tight = { ...design, magnets: { ...design.magnets, shape: { ...shape, span: (2 * Math.PI) / design.discs.poles - 0.01 } } };
  expect(cuttingDrawings(tight, results).map(({ name }) => name)).not.toContain('magnet-holder');
});
