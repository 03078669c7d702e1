import type { Layer, Point, Stroke } from './drawing';
import { textWidth } from './text-size';

export const line = (layer: Layer, ...points: Point[]): Stroke => ({ kind: 'polyline', layer, points, closed: false });

export const area = (layer: Layer, points: Point[], options: { filled?: boolean; name?: string } = {}): Stroke => ({
  kind: 'polyline',
  layer,
  points,
  closed: true,
  ...options,
});

export const rectangle = (layer: Layer, minX: number, minY: number, maxX: number, maxY: number, options = {}): Stroke =>
  area(
    layer,
    [
      [minX, minY],
      [maxX, minY],
      [maxX, maxY],
      [minX, maxY],
    ],
    options,
  );

export const text = (
  at: Point,
  words: string,
  size: number,
  anchor: 'start' | 'middle' | 'end' = 'middle',
  angle = 0,
  layer: Layer = 'text',
): Stroke => ({ kind: 'text', layer, at, text: words, size, anchor, ...(angle !== 0 && { angle }) });

/** Text whose middle, not base line, is at a point. */
export const centred = (at: Point, words: string, size: number, angle = 0): Stroke =>
  text([at[0] + (Math.sin(angle) * size) / 2, at[1] - (Math.cos(angle) * size) / 2], words, size, 'middle', angle);

/** A solid arrow head with its tip at a point, flying in direction `angle`. [rad] */
export function arrowHead(tip: Point, angle: number, size: number, layer: Layer = 'dimension'): Stroke {
  const corner = (turn: number): Point => [tip[0] - size * Math.cos(angle + turn), tip[1] - size * Math.sin(angle + turn)];
  return area(layer, [tip, corner(0.2), corner(-0.2)], { filled: true });
}

const along = ([x, y]: Point, angle: number, distance: number): Point => [x + distance * Math.cos(angle), y + distance * Math.sin(angle)];

/** The angle at which text along a line is read from below or from the right. [rad] */
const readable = (angle: number) => {
  const turned = Math.atan2(Math.sin(angle), Math.cos(angle));
  return turned > Math.PI / 2 + 1e-9 || turned <= -Math.PI / 2 + 1e-9 ? turned + (turned > 0 ? -Math.PI : Math.PI) : turned;
};

/**
 * A dimension between two points: extension lines, a dimension line moved to the left of from → to by `offset` (negative: to the right), arrows and the words.
 * Where the words do not fit between the arrows they stand past `to`. [mm]
 */
export function dimension(from: Point, to: Point, offset: number, words: string, size: number): Stroke[] {
  const angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const side = angle + Math.PI / 2;
  const [a, b] = [along(from, side, offset), along(to, side, offset)];
  const past = Math.sign(offset) * 0.6 * size;
  const extensions = offset === 0 ? [] : [from, to].map((p) => line('dimension', along(p, side, past), along(p, side, offset + past)));
  const arrow = 1.1 * size;
  const fits = length >= textWidth(words, size) + 2 * arrow;
  const lettering = readable(angle);
  const up = lettering + Math.PI / 2;
  if (fits)
    return [
      ...extensions,
      line('dimension', a, b),
      arrowHead(a, angle + Math.PI, arrow),
      arrowHead(b, angle, arrow),
      text(along(along(a, angle, length / 2), up, 0.5 * size), words, size, 'middle', lettering),
    ];
  const tail = along(b, angle, 2.2 * arrow);
  const forwards = Math.cos(angle - lettering) > 0;
  return [
    ...extensions,
    line('dimension', along(a, angle, -2.2 * arrow), tail),
    arrowHead(a, angle, arrow),
    arrowHead(b, angle + Math.PI, arrow),
    text(along(along(tail, angle, 0.5 * size), up, -size / 2), words, size, forwards ? 'start' : 'end', lettering),
  ];
}

/** An angle about the origin between two radii, which are drawn on from `edge`; arrows from outside where they find no room within, the words past it. [mm, rad] */
export function angleDimension(from: number, to: number, edge: number, radius: number, words: string, size: number): Stroke[] {
  const at = (distance: number, angle: number): Point => along([0, 0], angle, distance);
  const arrow = 1.1 * size;
  const within = (to - from) * radius > 2.5 * arrow;
  const beyond = within ? 0 : (2.2 * arrow) / radius;
  const tip = (angle: number, turn: 1 | -1) => arrowHead(at(radius, angle), angle + turn * (Math.PI / 2 - arrow / (2 * radius)), arrow);
  return [
    ...[from, to].map((angle) => line('dimension', at(edge, angle), at(radius + 0.6 * size, angle))),
    { kind: 'arc', layer: 'dimension', centre: [0, 0], radius, start: from - beyond, sweep: to - from + 2 * beyond },
    tip(from, within ? -1 : 1),
    tip(to, within ? 1 : -1),
    text(at(radius + 1.2 * size, (from + to) / 2), words, size, Math.cos((from + to) / 2) > 0 ? 'start' : 'end'),
  ];
}

/** Words with a line from them to what they name, an arrow at its tip. [mm] */
export function leader(tip: Point, at: Point, words: string, size: number): Stroke[] {
  const right = at[0] >= tip[0];
  const angle = Math.atan2(tip[1] - at[1], tip[0] - at[0]);
  return [
    line('dimension', at, tip),
    arrowHead(tip, angle, 0.9 * size),
    text([at[0] + (right ? 0.4 : -0.4) * size, at[1] - size / 2], words, size, right ? 'start' : 'end'),
  ];
}

/** An arc with an arrow at its end. Angles in rad, radius in mm. */
export function turningArrow(
  centre: Point,
  radius: number,
  start: number,
  sweep: number,
  size: number,
  layer: Layer = 'dimension',
): Stroke[] {
  const end = start + sweep;
  const tip: Point = [centre[0] + radius * Math.cos(end), centre[1] + radius * Math.sin(end)];
  const turn = Math.sign(sweep);
  return [
    { kind: 'arc', layer, centre, radius, start, sweep },
    arrowHead(tip, end + (turn * Math.PI) / 2 - (turn * size) / (2 * radius), size, layer),
  ];
}
