import DxfParser from 'dxf-parser';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Drawing } from '../../../core/sheet/drawing';

export type Point = [x: number, y: number];

/** What a reader program finds in a file, in millimetres, y up: everything drawn, lettering left out. */
export type Shape =
  | { kind: 'line'; layer?: string; closed: boolean; points: Point[] }
  | { kind: 'circle'; layer?: string; centre: Point; radius: number };

interface Entity {
  type: string;
  layer: string;
  vertices?: { x: number; y: number }[];
  shape?: boolean;
  center?: { x: number; y: number };
  radius?: number;
}

export function readDxf(text: string) {
  const dxf = new DxfParser().parseSync(text);
  if (!dxf) throw new Error('not a DXF file');
  const entities = dxf.entities as unknown as Entity[];
  const shapes = entities.flatMap((e): Shape[] => {
    const layer = e.layer.toLowerCase();
    if (e.type === 'LWPOLYLINE')
      return [{ kind: 'line', layer, closed: e.shape === true, points: (e.vertices ?? []).map(({ x, y }) => [x, y]) }];
    if (e.type === 'CIRCLE' && e.center) return [{ kind: 'circle', layer, centre: [e.center.x, e.center.y], radius: e.radius ?? NaN }];
    return [];
  });
  return { header: dxf.header, entities, shapes };
}

const attribute = (element: string, name: string) => Number(new RegExp(` ${name}="([-\\d.]+)`).exec(element)![1]);

export function readSvg(text: string): Shape[] {
  return [...text.matchAll(/<(path|circle) [^>]*>/g)].map(([element, tag]): Shape => {
    const layer = /data-layer="([^"]+)"/.exec(element)![1];
    if (tag === 'circle')
      return { kind: 'circle', layer, centre: [attribute(element, 'cx'), -attribute(element, 'cy')], radius: attribute(element, 'r') };
    const d = / d="([^"]+)"/.exec(element)![1];
    const points = [...d.matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map(([, x, y]): Point => [Number(x), -Number(y)]);
    return { kind: 'line', layer, closed: d.endsWith('Z'), points };
  });
}

/** Codes of a path's parts as the reader gives them. */
const [MOVE, LINE, CURVE] = [0, 1, 2];
const LENGTHS: Record<number, number> = { [MOVE]: 2, [LINE]: 2, [CURVE]: 6 };

/** Paths of one page, in millimetres from its upper left corner, y down. */
export async function readPdfPaths(bytes: Uint8Array, number: number): Promise<Shape[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const page = await document.getPage(number);
  const { height } = page.getViewport({ scale: 1 });
  const mm = (x: number, y: number): Point => [(x * 25.4) / 72, ((height - y) * 25.4) / 72];
  const list = await page.getOperatorList();
  const shapes = list.argsArray.flatMap((args: unknown, i): Shape[] => {
    if (list.fnArray[i] !== OPS.constructPath) return [];
    const data = [...((args as [number, [Float32Array]])[1][0] ?? [])];
    const points: Point[] = [];
    let [curved, closed] = [false, false];
    for (let at = 0; at < data.length; ) {
      const code = data[at];
      const length = LENGTHS[code] ?? 0;
      if (length === 0) closed = true;
      else points.push(mm(data[at + length - 1], data[at + length]));
      curved ||= code === CURVE;
      at += 1 + length;
    }
    if (!curved) return [{ kind: 'line', closed, points }];
    const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
    const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    return [{ kind: 'circle', centre: [(left + right) / 2, (top + bottom) / 2], radius: (right - left) / 2 }];
  });
  await document.destroy();
  return shapes;
}

/** The strokes themselves, to hold the files against. */
export const strokesOf = ({ strokes }: Drawing): Shape[] =>
  strokes.flatMap((s): Shape[] => {
    if (s.kind === 'polyline') return [{ kind: 'line', layer: s.layer, closed: s.closed, points: s.points }];
    if (s.kind === 'circle') return [{ kind: 'circle', layer: s.layer, centre: s.centre, radius: s.radius }];
    return [];
  });

const distance = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Greatest distance between what stands at the same place of two lists; infinite where the lists are not of the same things. */
export function farthest(a: readonly Shape[], b: readonly Shape[]): number {
  if (a.length !== b.length) return Infinity;
  return Math.max(
    0,
    ...a.map((one, i) => {
      const other = b[i];
      if (one.kind === 'circle' && other.kind === 'circle')
        return Math.max(distance(one.centre, other.centre), Math.abs(one.radius - other.radius));
      if (one.kind === 'line' && other.kind === 'line' && one.points.length === other.points.length && one.closed === other.closed)
        return Math.max(0, ...one.points.map((p, k) => distance(p, other.points[k])));
      return Infinity;
    }),
  );
}

const cross = (o: Point, a: Point, b: Point) => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
const crossing = ([a, b]: Point[], [c, d]: Point[]) => cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0;

/** Sides of a contour; a circle counts as a polygon of many sides. */
function sides(shape: Shape): Point[][] {
  const points =
    shape.kind === 'line'
      ? shape.points
      : Array.from({ length: 180 }, (_, i): Point => {
          const angle = (i * Math.PI) / 90;
          return [shape.centre[0] + shape.radius * Math.cos(angle), shape.centre[1] + shape.radius * Math.sin(angle)];
        });
  return points.map((p, i) => [p, points[(i + 1) % points.length]]);
}

interface Side {
  of: number;
  ends: Point[];
  box: [minX: number, maxX: number, minY: number, maxY: number];
}

/** How many pairs of sides of closed contours cross, within one contour or between two. */
export function crossings(shapes: readonly Shape[]): number {
  const all = shapes.flatMap((shape, of) =>
    sides(shape).map((ends): Side => {
      const [[x1, y1], [x2, y2]] = ends;
      return { of, ends, box: [Math.min(x1, x2), Math.max(x1, x2), Math.min(y1, y2), Math.max(y1, y2)] };
    }),
  );
  all.sort((a, b) => a.box[0] - b.box[0]);
  let found = 0;
  all.forEach((a, i) => {
    for (let k = i + 1; k < all.length && all[k].box[0] <= a.box[1]; k++) {
      const b = all[k];
      if (b.box[2] <= a.box[3] && a.box[2] <= b.box[3] && crossing(a.ends, b.ends)) found++;
    }
  });
  return found;
}
