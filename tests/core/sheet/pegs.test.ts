import { describe, expect, it } from 'vitest';
import type { Design } from '../../../core/design/schema';
import { dxfText } from '../../../core/print/dxf';
import { svgText } from '../../../core/print/svg';
import { cuttingDrawings } from '../../../core/sheet/cutting-drawings';
import { planDrawing } from '../../../core/sheet/plan-drawing';
import { windingSheet } from '../../../core/sheet/build';
import { type Point, readDxf, readSvg, type Shape } from '../print/read-shapes';
import { generatedDesigns } from './generated';

type Line = Extract<Shape, { kind: 'line' }>;

const lengthOf = ({ points, closed }: Line) =>
  points.reduce((sum, p, i) => {
    const next = points[i + 1] ?? (closed ? points[0] : p);
    return sum + Math.hypot(next[0] - p[0], next[1] - p[1]);
  }, 0);

/** Times the path crosses the circle of that radius. */
const timesAcross = ({ points }: Line, radius: number) =>
  points.filter((p, i) => {
    const next: Point = points[(i + 1) % points.length];
    return Math.hypot(...p) < radius !== Math.hypot(...next) < radius;
  }).length;

const rings = generatedDesigns.filter(([, { winding }]) => winding.layout.kind === 'serpentine');

const printed = (design: Design, results: Parameters<typeof windingSheet>[1]) =>
  windingSheet(design, results)
    .blocks.flatMap((b) => (b.kind === 'steps' ? b.steps : []))
    .join(' ')
    .replaceAll('\u00a0', ' ');

describe.each(rings)('the pegs of %s', (_, design, results) => {
  const { layout } = design.winding;
  if (layout.kind !== 'serpentine') throw new Error('a ring is a serpentine');
  const [, diameter, distance] = /Set two pegs of ([\d.]+) mm diameter on a board, ([\d.]+) mm from centre to centre/
    .exec(printed(design, results))!
    .map(Number);

  // Rings that lie across each other are drawn by their middle turn on the plan.
  const drawn = readSvg(svgText(planDrawing(design, results))).filter((s): s is Line => s.kind === 'line' && s.layer!.startsWith('phase-'));
  const layoutDrawn = cuttingDrawings(design, results).find(({ name }) => name === 'winding-layout')!.drawing;
  // Outermost and innermost turn of each ring.
  const edges = readDxf(dxfText(layoutDrawn)).shapes.filter((s): s is Line => s.kind === 'line' && s.closed);
  /** Length of a belt once round both pegs, in the middle of the skein. */
  const skein = 2 * distance + Math.PI * (diameter + layout.legWidth * 1000);

  it('stand as far apart as the ring drawn is long, the mean over its width', () => {
    expect([drawn.length, edges.length]).toEqual([design.winding.phases, 2 * design.winding.phases]);
    drawn.forEach((middle, i) => {
      for (const turn of [middle, edges[2 * i], edges[2 * i + 1]]) {
        expect(turn.closed).toBe(true);
        expect(timesAcross(turn, (layout.innerRadius + layout.outerRadius) * 500)).toBe(design.discs.poles);
      }
      // Simpson's rule across the width.
      const mean = (lengthOf(edges[2 * i]) + 4 * lengthOf(middle) + lengthOf(edges[2 * i + 1])) / 6;
      // The distance is printed to a tenth of a millimetre, and a chord 0.004 mm inside its arc is shorter by a third of that for each radian.
      expect(Math.abs(mean - skein)).toBeLessThan(2 * 0.05 + (design.discs.poles * Math.PI * 0.004) / 3);
    });
  });

  it('give a skein that the marks of the fold divide without a rest', () => {
    const [, legOut, inner, legIn, outer, times] = /leg ([\d.]+), inner arc ([\d.]+), leg ([\d.]+), outer arc ([\d.]+) mm, (\d+) times/
      .exec(printed(design, results))!
      .map(Number);
    // Each length is printed to a tenth; legs that move aside between two radii grow by less than a hundredth.
    const rounding = 4 * times * 0.05;
    expect(Math.abs(times * (legOut + inner + legIn + outer) - skein)).toBeLessThan(rounding + 0.01 * skein);
    expect(2 * times).toBe(design.discs.poles);
  });

  it('give rings that are turned in the plan by as many degrees as are printed there and in the steps', () => {
    if (design.winding.phases === 1) return;
    const [, degrees] = /turned by ([\d.]+)°/.exec(printed(design, results))!;
    const words = planDrawing(design, results).strokes.flatMap((s) => (s.kind === 'text' ? [s.text] : []));
    expect(words).toContain(`A to B ${degrees}°`);
    const cornerAngle = (i: number) => Math.atan2(drawn[i].points[0][1], drawn[i].points[0][0]);
    const turned = (((cornerAngle(1) - cornerAngle(0)) * 180) / Math.PI + 360) % 360;
    // An SVG has its points to a thousandth of a millimetre.
    expect(turned).toBeCloseTo(Number(degrees), 1);
    // Star of slots of m phases: 360°/m electrical, and a phase that points the other way is the same turned by half a turn.
    const electrical = (Number(degrees) * design.discs.poles) / 2;
    const step = 360 / design.winding.phases;
    expect([step, step / 2, step + 180].some((one) => Math.abs(((electrical - one) % 360) / one) < 0.01)).toBe(true);
  });

  it('give a skein that closes in the channel of the jig, as much longer than one wall as it is shorter than the other', () => {
    const jig = cuttingDrawings(design, results).find(({ name }) => name === 'folding-jig');
    if (!jig) return;
    const walls = readDxf(dxfText(jig.drawing)).shapes.filter((s): s is Line => s.kind === 'line' && s.layer === 'outline');
    expect(walls).toHaveLength(2);
    const [longest, shortest] = walls.map(lengthOf).sort((a, b) => b - a);
    expect((skein - shortest) / (longest - shortest)).toBeCloseTo(0.5, 1);
  });
});

it('rings of every placement are among them, and most have room for a jig', () => {
  const jigs = rings.filter(([, design, results]) => cuttingDrawings(design, results).some(({ name }) => name === 'folding-jig'));
  expect(rings.length).toBeGreaterThan(3);
  expect(jigs.length).toBeGreaterThan(2);
});
