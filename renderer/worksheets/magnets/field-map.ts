import { fieldProbe, planDrawing, type Design, type Drawing, type Point, type Results, type Stroke } from '../../../core';
import { contours } from '../../drawing/contours';

/** Grid over one pole pitch; the next pole has the same field the other way round. */
const RADII = 36;
const ANGLES = 24;

/** Flux density along the axle in the middle of the copper, over two poles from beside the first magnet to beside the second. */
export interface FieldMap {
  innerRadius: number;
  outerRadius: number;
  poles: number;
  /** Row after row, from within outwards. [T] */
  values: number[];
}

/** Works the map out: some tens of milliseconds, so off the page's own thread. */
export function fieldMap(design: Design, innerRadius: number, outerRadius: number): FieldMap {
  const { poles } = design.discs;
  const probe = fieldProbe(design);
  const values: number[] = [];
  for (let i = 0; i < RADII; i++) {
    const radius = innerRadius + (i / (RADII - 1)) * (outerRadius - innerRadius);
    const row = Array.from({ length: ANGLES + 1 }, (_, k) => {
      const angle = ((2 * k) / ANGLES - 1) * (Math.PI / poles);
      return probe(radius * Math.cos(angle), radius * Math.sin(angle), 0)[2];
    });
    values.push(...row, ...row.slice(1).map((bz) => -bz));
  }
  return { innerRadius, outerRadius, poles, values };
}

const STEPS = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5];
/** Lines up to the peak, about. */
const LINES = 8;

/** The map as level lines over the outlines of two magnets and of the coils above them, upright. */
export function fieldMapDrawing(map: FieldMap, design: Design, results: Results): Drawing & { step: number } {
  const { innerRadius, outerRadius, poles, values } = map;
  const peak = Math.max(...values.map(Math.abs));
  const step = STEPS.find((each) => peak / each <= LINES) ?? 1;
  const turn = Math.PI / 2 - Math.PI / poles;
  // Without the first and last column, which are as good as nothing and would be drawn as crumbs of a line.
  const [all, columns] = [2 * ANGLES + 1, 2 * ANGLES - 1];
  const inner = values.filter((_, i) => i % all > 0 && i % all < all - 1);
  const place = (row: number, column: number): Point => {
    const radius = 1000 * (innerRadius + (row / (RADII - 1)) * (outerRadius - innerRadius));
    const angle = ((2 * (column + 1)) / ANGLES - 1) * (Math.PI / poles) + turn;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  };
  const count = Math.floor(peak / step);
  const levels = Array.from({ length: 2 * count + 1 }, (_, i) => (i - count) * step);
  const lines = levels.flatMap((level) =>
    contours({ rows: RADII, columns, values: inner, place }, level).map((points): Stroke => {
      const layer = level > step / 2 ? 'magnet-north' : level < -step / 2 ? 'magnet-south' : 'construction';
      return { kind: 'polyline', layer, points, closed: false, name: `${Number(level.toFixed(2))} T` };
    }),
  );
  const outlines = planDrawing(design, results)
    .strokes.filter((stroke) => stroke.kind !== 'text' && /^magnet [12] /.test(stroke.name ?? ''))
    .map((stroke) => outlined(stroke, turn));
  const corners = [place(0, 0), place(RADII - 1, 0), place(RADII - 1, columns - 1), place(0, columns - 1), place(RADII - 1, ANGLES - 1)];
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const margin = 0.02 * 1000 * outerRadius;
  return {
    title: 'Field in the middle of the copper',
    bounds: {
      minX: Math.min(...xs) - margin,
      minY: Math.min(...ys) - margin,
      maxX: Math.max(...xs) + margin,
      maxY: Math.max(...ys) + margin,
    },
    strokes: [...outlines, ...lines],
    step,
  };
}

/** A magnet's outline, turned, unfilled and without a name: what is read here is the field. */
function outlined(stroke: Stroke, by: number): Stroke {
  const turned = ([x, y]: Point): Point => [x * Math.cos(by) - y * Math.sin(by), x * Math.sin(by) + y * Math.cos(by)];
  if (stroke.kind === 'circle') return { kind: 'circle', layer: 'outline', centre: turned(stroke.centre), radius: stroke.radius };
  if (stroke.kind === 'polyline') return { kind: 'polyline', layer: 'outline', closed: stroke.closed, points: stroke.points.map(turned) };
  return stroke;
}
