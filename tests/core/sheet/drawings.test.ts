import { describe, expect, it } from 'vitest';
import type { Design } from '../../../core/design/schema';
import { arcPoints } from '../../../core/sheet/bounds';
import { boardDrawing } from '../../../core/sheet/board-drawing';
import { coilDrawing } from '../../../core/sheet/coil-drawing';
import { connectionDrawing, connectionDrawings } from '../../../core/sheet/connection-drawing';
import type { Drawing, Point, Stroke } from '../../../core/sheet/drawing';
import { planDrawing } from '../../../core/sheet/plan-drawing';
import { rectifierDrawing } from '../../../core/sheet/rectifier-drawing';
import { sectionDrawing } from '../../../core/sheet/section-drawing';
import { CAP_HEIGHT, textCorners } from '../../../core/sheet/text-size';
import { overlapping } from './boxes';
import { concentrated, designWith, resultsFor, serpentine } from './fixture';

type TextStroke = Extract<Stroke, { kind: 'text' }>;

const larger = (design: Design, radius: number): Design => ({ ...design, discs: { ...design.discs, pitchRadius: radius } });

const designs: [string, Design][] = [
  ['nine coils', designWith({})],
  ['a serpentine of three rings', designWith({ layout: serpentine })],
  [
    'a serpentine of one ring on a single disc',
    { ...designWith({ layout: serpentine, phases: 1 }, 8), discs: { ...designWith({}, 8).discs, arrangement: 'single' } },
  ],
  ['six phases on forty poles', larger(designWith({ layout: wide(60), phases: 6, parallelPaths: 2 }, 40), 0.35)],
  [
    'a hundred and twenty coils on eighty poles',
    larger(designWith({ layout: wide(120), phases: 3, parallelPaths: 40, connection: 'delta' }, 80), 0.35),
  ],
  ['one coil', designWith({ layout: concentrated(1), phases: 1 })],
  ['twelve coils on bridges of their own', designWith({ layout: concentrated(12), connection: 'separate', parallelPaths: 2 }, 16)],
];

function wide(coils: number): Design['winding']['layout'] {
  const room = (2 * Math.PI * 0.32) / coils;
  return {
    kind: 'concentrated',
    coils,
    holeInnerRadius: 0.327,
    holeOuterRadius: 0.373,
    holeInnerWidth: 0.5 * room,
    holeOuterWidth: 0.6 * room,
    legWidth: 0.2 * room,
  };
}

function drawingsOf(design: Design): Drawing[] {
  const results = resultsFor(design);
  return [
    planDrawing(design, results),
    sectionDrawing(design, results),
    coilDrawing(design, results),
    boardDrawing(design, results),
    connectionDrawing(design, results),
    ...connectionDrawings(design, results),
    rectifierDrawing(design),
  ];
}

function pointsOf(stroke: Stroke): Point[] {
  switch (stroke.kind) {
    case 'polyline':
      return stroke.points;
    case 'text':
      return textCorners(stroke);
    default:
      return arcPoints({ start: 0, sweep: 2 * Math.PI, ...stroke });
  }
}

const texts = (drawing: Drawing) => drawing.strokes.filter((s): s is TextStroke => s.kind === 'text');
const written = (drawing: Drawing) => texts(drawing).map((t) => t.text);

describe.each(designs)('%s', (_, design) => {
  const drawings = drawingsOf(design);

  it('no words lie on each other', () => {
    for (const drawing of drawings) {
      const boxes = texts(drawing).map((t) => ({ words: t.text, corners: textCorners(t) }));
      expect(overlapping(boxes).map((pair) => `${drawing.title}: ${pair.join(' and ')}`)).toEqual([]);
    }
  });

  it('everything lies within finite bounds', () => {
    for (const { title, bounds, strokes } of drawings) {
      const outside = strokes
        .flatMap(pointsOf)
        .filter(([x, y]) => !(x >= bounds.minX && x <= bounds.maxX && y >= bounds.minY && y <= bounds.maxY));
      expect(outside, title).toEqual([]);
    }
  });

  it('lettering sized for paper prints between 10 and 16 points there', () => {
    for (const drawing of drawings) {
      const { bounds, paper } = drawing;
      if (!paper) continue;
      const scale = Math.min(paper.width / (bounds.maxX - bounds.minX), paper.height / (bounds.maxY - bounds.minY));
      const sizes = texts(drawing).map((t) => t.size);
      const points = (Math.max(...sizes) * scale * 72) / 25.4 / CAP_HEIGHT;
      expect(points).toBeGreaterThan(10);
      expect(points).toBeLessThan(16);
    }
  });

  it('the parts of the connection diagram hold every coil once', () => {
    const boxes = connectionDrawings(design, resultsFor(design)).flatMap((d) =>
      d.strokes.flatMap((s) => (s.kind === 'polyline' && s.name ? [s.name] : [])),
    );
    const coils = resultsFor(design).coils.count;
    expect(boxes.toSorted()).toEqual(Array.from({ length: coils }, (_, i) => `coil ${i + 1}`).toSorted());
  });
});

it('the plan shows every magnet with its pole and every coil with its number and phase', () => {
  const plan = planDrawing(designWith({}), resultsFor(designWith({})));
  expect(written(plan).filter((t) => t === 'N')).toHaveLength(6);
  expect(written(plan).filter((t) => t === 'S')).toHaveLength(6);
  expect(written(plan)).toEqual(expect.arrayContaining(['1A', '2B', '3C', '4A', '9C', 'pitch circle ∅ 254']));
});

it('the section adds up to the gap', () => {
  const design = designWith({});
  const section = sectionDrawing(design, resultsFor(design));
  const inGap = written(section)
    .filter((t) => /^(skin|running clearance|copper) /.test(t))
    .map((t) => Number(t.split(' ').at(-1)));
  expect(inGap.reduce((a, b) => a + b, 0)).toBeCloseTo(14, 6);
  expect(written(section)).toContain('gap 14');
});

it('a single disc has nothing above its winding but skin', () => {
  const design = designs[2][1];
  const section = written(sectionDrawing(design, resultsFor(design)));
  expect(section.filter((t) => t.startsWith('magnet'))).toHaveLength(1);
  expect(section.filter((t) => t.startsWith('running clearance'))).toHaveLength(1);
  expect(section).toContain('to the middle 7');
});

it('a coil joined the other way round stands finish first in the diagram', () => {
  const design = designWith({});
  const words = written(connectionDrawing(design, resultsFor(design)));
  const at = words.indexOf('4');
  expect(words.slice(at - 1, at + 2)).toEqual(['F', '4', 'S']);
});
