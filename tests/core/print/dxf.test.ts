import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { dxfText } from '../../../core/print/dxf';
import { cuttingDrawings } from '../../../core/sheet/cutting-drawings';
import type { Drawing } from '../../../core/sheet/drawing';
import { designWith, resultsFor, serpentine } from '../sheet/fixture';

/** The fields of a reader program's entities that are looked at here. */
interface Entity {
  type: string;
  layer: string;
  vertices?: { x: number; y: number }[];
  shape?: boolean;
  center?: { x: number; y: number };
  radius?: number;
  startAngle?: number;
  endAngle?: number;
  text?: string;
  textHeight?: number;
}

const read = (drawing: Drawing) => {
  const dxf = new DxfParser().parseSync(dxfText(drawing));
  if (!dxf) throw new Error('not a DXF file');
  return { ...dxf, entities: dxf.entities as unknown as Entity[] };
};

const bounds = { minX: 0, minY: 0, maxX: 1, maxY: 1 };

describe('a drawing as DXF, read by another program', () => {
  it('keeps every stroke on its layer', () => {
    const design = designWith({});
    for (const { drawing } of cuttingDrawings(design, resultsFor(design))) {
      const { entities } = read(drawing);
      expect(entities.map((e) => e.layer.toLowerCase())).toEqual(drawing.strokes.map((s) => s.layer));
    }
  });

  it('says that its unit is the millimetre', () => {
    const { header } = read({ title: '', bounds, strokes: [] });
    expect(header.$INSUNITS).toBe(4);
  });

  it('keeps points, radii and closedness', () => {
    const { entities } = read({
      title: '',
      bounds,
      strokes: [
        {
          kind: 'polyline',
          layer: 'outline',
          closed: true,
          points: [
            [0, 0],
            [10.5, 0],
            [10.5, -4.25],
          ],
        },
        { kind: 'circle', layer: 'steel', centre: [3, 4], radius: 2.5 },
      ],
    });
    expect(entities[0].vertices?.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [10.5, 0],
      [10.5, -4.25],
    ]);
    expect(entities[0].shape).toBe(true);
    expect(entities[1]).toMatchObject({ type: 'CIRCLE', radius: 2.5, center: { x: 3, y: 4 } });
  });

  it('a clockwise arc covers the same angles counter-clockwise', () => {
    const { entities } = read({
      title: '',
      bounds,
      strokes: [{ kind: 'arc', layer: 'copper', centre: [0, 0], radius: 1, start: Math.PI / 2, sweep: -Math.PI }],
    });
    const [from, to] = [entities[0].startAngle ?? NaN, entities[0].endAngle ?? NaN];
    expect([Math.cos(from), Math.sin(from), Math.cos(to), Math.sin(to)].map((v) => Number(v.toFixed(6)) || 0)).toEqual([0, -1, 0, 1]);
  });

  it('keeps letters beyond seven bits, on one line', () => {
    const { entities } = read({
      title: '',
      bounds,
      strokes: [{ kind: 'text', layer: 'text', at: [0, 0], text: '∅ 12 at 30°\n· Ω', size: 4, anchor: 'start' }],
    });
    expect(entities[0]).toMatchObject({ type: 'TEXT', text: '∅ 12 at 30° · Ω', textHeight: 4 });
  });
});

describe('parts at natural size', () => {
  it('the magnets stand on the pitch circle, evenly', () => {
    const design = designWith({});
    const disc = cuttingDrawings(design, resultsFor(design))[0];
    const centres = read(disc.drawing)
      .entities.filter((e) => e.type === 'LWPOLYLINE' && e.vertices?.length === 4)
      .map(({ vertices = [] }) => vertices.reduce(([x, y], v) => [x + v.x / 4, y + v.y / 4], [0, 0]));
    expect(centres).toHaveLength(12);
    centres.forEach(([x, y], k) => {
      expect(Math.hypot(x, y)).toBeCloseTo(127, 4);
      expect(Math.cos(Math.atan2(y, x) - (k * Math.PI) / 6)).toBeCloseTo(1, 9);
    });
  });

  it('the pegs stand as far apart as the sheet says', () => {
    const design = designWith({ layout: serpentine });
    const board = cuttingDrawings(design, resultsFor(design)).find(({ name }) => name === 'peg-board');
    const pegs = board?.drawing.strokes.filter((s) => s.kind === 'circle' && s.name === 'peg') ?? [];
    const [left, right] = pegs.map((s) => (s.kind === 'circle' ? s.centre[0] : NaN));
    expect(right - left).toBeCloseTo(743.5, 6);
  });

  it('every part carries a line of 100 mm to check the scale by', () => {
    for (const design of [designWith({}), designWith({ layout: serpentine })])
      for (const { drawing } of cuttingDrawings(design, resultsFor(design))) {
        const rules = drawing.strokes.filter(
          (s) =>
            s.kind === 'polyline' &&
            s.points.length === 2 &&
            Math.abs(Math.hypot(s.points[1][0] - s.points[0][0], s.points[1][1] - s.points[0][1]) - 100) < 1e-9,
        );
        expect(rules).toHaveLength(1);
      }
  });
});
