import { line, text } from './dimensions';
import type { Point, Stroke } from './drawing';

/** Lettering on a template. [mm] */
export const LETTER = 4;
/** Disc left outside the magnets, cheek left outside the copper. Common practice, no source. [mm] */
export const RIM = 5;
/** Hole for the drill's point where the real hole is not known. Common practice, no source. [mm] */
const PILOT = 3;

export const circle = (layer: 'outline' | 'construction', radius: number, name: string, centre: Point = [0, 0]): Stroke => ({
  kind: 'circle',
  layer,
  centre,
  radius,
  name,
});

export const pilot = (name: string, centre: Point = [0, 0]) => circle('outline', PILOT / 2, name, centre);

export const cross = ([x, y]: Point, reach: number): Stroke[] => [
  line('construction', [x - reach, y], [x + reach, y]),
  line('construction', [x, y - reach], [x, y + reach]),
];

export const CHECK_RULE = 'check rule';

/** A line of known length, so that a print or a cutter's scale is checked before the material is. */
export function checkRule([x, y]: Point): Stroke[] {
  return [
    line('construction', [x, y], [x + 100, y]),
    ...[0, 100].map((at) => line('construction', [x + at, y - 2], [x + at, y + 2])),
    text([x + 50, y + 2], 'must measure 100 mm', LETTER),
  ].map((stroke) => ({ ...stroke, name: CHECK_RULE }));
}

/** Points evenly round the axle, the first on +x. [mm] */
export const ring = (count: number, radius: number): Point[] =>
  Array.from({ length: count }, (_, k): Point => {
    const angle = (2 * Math.PI * k) / count;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });

/** Holes with their centres marked. [mm] */
export const holes = (places: Point[], diameter: number, name: string): Stroke[] =>
  places.flatMap((at, k) => [circle('outline', diameter / 2, `${name} ${k + 1}`, at), ...cross(at, 0.8 * diameter)]);
