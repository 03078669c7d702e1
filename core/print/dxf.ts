import type { Drawing, Layer, Point, Stroke } from '../sheet/drawing';

type Group = [code: number, value: string | number];

const degrees = (angle: number) => (((angle * 180) / Math.PI) % 360) + (angle < 0 ? 360 : 0);
const layerName = (layer: Layer) => layer.toUpperCase();
const n = (value: number) => Number(value.toFixed(6)) || 0;
const point = ([x, y]: Point, code = 10): Group[] => [
  [code, n(x)],
  [code + 10, n(y)],
  [code + 20, 0],
];

/** The format's own spellings for what seven bits cannot hold. */
const seven = (words: string) =>
  words
    .replaceAll('∅', '%%c')
    .replaceAll('°', '%%d')
    .replace(/[\r\n]+/g, ' ')
    .replace(/[^\x20-\x7e]/g, (char) => `\\U+${char.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`);

/** A drawing as a DXF file of release 12, which every cutter reads: millimetres, natural size, the drawing's own layers. */
export function dxfText({ bounds, strokes }: Drawing): string {
  const layers = [...new Set(strokes.map((s) => s.layer))];
  const groups: Group[] = [
    ...section('HEADER', [
      [9, '$ACADVER'],
      [1, 'AC1009'],
      [9, '$INSUNITS'],
      [70, 4],
      [9, '$EXTMIN'],
      ...point([bounds.minX, bounds.minY]),
      [9, '$EXTMAX'],
      ...point([bounds.maxX, bounds.maxY]),
    ]),
    ...section('TABLES', [
      [0, 'TABLE'],
      [2, 'LAYER'],
      [70, layers.length],
      ...layers.flatMap((layer, i): Group[] => [
        [0, 'LAYER'],
        [2, layerName(layer)],
        [70, 0],
        [62, (i % 7) + 1],
        [6, 'CONTINUOUS'],
      ]),
      [0, 'ENDTAB'],
    ]),
    ...section('ENTITIES', strokes.flatMap(entity)),
    [0, 'EOF'],
  ];
  return groups.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join('');
}

const section = (name: string, groups: Group[]): Group[] => [[0, 'SECTION'], [2, name], ...groups, [0, 'ENDSEC']];

function entity(stroke: Stroke): Group[] {
  const layer: Group = [8, layerName(stroke.layer)];
  switch (stroke.kind) {
    case 'polyline':
      return [
        [0, 'POLYLINE'],
        layer,
        [66, 1],
        ...point([0, 0]),
        [70, stroke.closed ? 1 : 0],
        ...stroke.points.flatMap((p): Group[] => [[0, 'VERTEX'], layer, ...point(p)]),
        [0, 'SEQEND'],
        layer,
      ];
    case 'circle':
      return [[0, 'CIRCLE'], layer, ...point(stroke.centre), [40, n(stroke.radius)]];
    case 'arc': {
      // The format's arcs run counter-clockwise only.
      const [from, to] = stroke.sweep >= 0 ? [stroke.start, stroke.start + stroke.sweep] : [stroke.start + stroke.sweep, stroke.start];
      return [[0, 'ARC'], layer, ...point(stroke.centre), [40, n(stroke.radius)], [50, n(degrees(from))], [51, n(degrees(to))]];
    }
    case 'text':
      return [
        [0, 'TEXT'],
        layer,
        ...point(stroke.at),
        [40, n(stroke.size)],
        [1, seven(stroke.text)],
        [50, n(degrees(stroke.angle ?? 0))],
        [72, { start: 0, middle: 1, end: 2 }[stroke.anchor]],
        ...point(stroke.at, 11),
      ];
  }
}
