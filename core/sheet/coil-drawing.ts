import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Layout } from '../winding/section';
import { drawingOf } from './bounds';
import { arrowHead, centred, dimension, leader, line, turningArrow } from './dimensions';
import type { Drawing, Point, Stroke } from './drawing';
import { bareMm } from './figures';
import { outline, turnOutline } from './outlines';
import { letterSize, textWidth } from './text-size';

type Concentrated = Extract<Layout, { kind: 'concentrated' }>;
type Serpentine = Extract<Layout, { kind: 'serpentine' }>;

/** One coil, or one lobe of a serpentine ring, with its sizes, its sense, its start and its finish. Seen from above, the axle below the drawing. */
export function coilDrawing(design: Design, _results: Results): Drawing {
  const { layout } = design.winding;
  return layout.kind === 'concentrated' ? coil(layout, design.discs.poles) : lobe(layout, design.discs.poles);
}

/** Turned so that the coil's axis points up. */
const upwards = Math.PI / 2;

function coil(layout: Concentrated, poles: number): Drawing {
  const mm = (metres: number) => metres * 1000;
  const { holeInnerRadius, holeOuterRadius, holeInnerWidth, holeOuterWidth, legWidth } = layout;
  const [low, high, leg] = [mm(holeInnerRadius), mm(holeOuterRadius), mm(legWidth)];
  const [narrow, wide] = [mm(holeInnerWidth) / 2, mm(holeOuterWidth) / 2];
  const side = Math.max(narrow, wide) + leg;
  const size = letterSize(2 * side + 0.4 * (high - low), 1.7 * (high - low + 2 * leg));
  const middle: Point = [0, (low + high) / 2];
  const turn = 0.32 * Math.min(narrow + wide, high - low);
  return drawingOf('One coil, seen from above', [
    outline(turnOutline(layout, poles, 0), upwards, 'former', 'hole'),
    outline(turnOutline(layout, poles, legWidth), upwards, 'copper', 'coil'),
    line('construction', [0, low - leg], [0, high + leg]),
    ...turningArrow(middle, turn, -0.35 * Math.PI, 1.7 * Math.PI, 1.2 * size, 'outline'),
    ...lead([-0.4 * wide, high], [-0.4 * wide, high + leg + 2 * size], 'S', size),
    ...lead([0.4 * wide, high + leg], [0.4 * wide, high + leg + 2 * size], 'F', size),
    ...dimension([-wide, high], [wide, high], leg + 5.5 * size, bareMm(holeOuterWidth), size),
    ...dimension([-narrow, low], [narrow, low], -(leg + 2.5 * size), bareMm(holeInnerWidth), size),
    ...dimension([-side, low - leg], [side, low - leg], -5.5 * size, `over all ${bareMm((side * 2) / 1000)}`, size),
    ...dimension([side, high], [side, low], 2.5 * size, bareMm(holeOuterRadius - holeInnerRadius), size),
    ...dimension(
      [side, high + leg],
      [side, low - leg],
      5.5 * size,
      `over all ${bareMm(holeOuterRadius - holeInnerRadius + 2 * legWidth)}`,
      size,
    ),
    ...legDimension([-wide - leg, high], [-wide, high], `leg ${bareMm(legWidth)}`, size),
    ...toAxle([0, low - leg - 8.2 * size], `hole begins ${bareMm(holeInnerRadius)} from the axle`, size),
  ]);
}

/** The width of a leg is shown across it, the words beside it. */
function legDimension(outer: Point, inner: Point, words: string, size: number): Stroke[] {
  return [
    line('dimension', [outer[0] - 2 * size, outer[1]], outer),
    arrowHead(outer, 0, size),
    line('dimension', [inner[0] + 1.6 * size, inner[1]], inner),
    arrowHead(inner, Math.PI, size),
    { kind: 'text', layer: 'text', at: [outer[0] - 2.4 * size, outer[1] - size / 2], text: words, size, anchor: 'end' },
  ];
}

function lead(from: Point, to: Point, letter: string, size: number): Stroke[] {
  return [
    line('outline', from, to),
    { kind: 'circle', layer: 'outline', centre: from, radius: 0.25 * size, filled: true },
    centred([to[0], to[1] + size], letter, 1.3 * size),
  ];
}

function toAxle(at: Point, words: string, size: number): Stroke[] {
  const x = -textWidth(words, size) / 2 - 1.2 * size;
  return [
    line('dimension', [x, at[1] + size], [x, at[1] - size]),
    arrowHead([x, at[1] - size], -Math.PI / 2, size),
    centred(at, words, size),
  ];
}

/** Two legs with the arcs on both sides of them. */
function lobe(layout: Serpentine, poles: number): Drawing {
  const pitch = (2 * Math.PI) / poles;
  const [inner, outer, leg] = [layout.innerRadius, layout.outerRadius, layout.legWidth].map((v) => v * 1000);
  const spread = Math.min(2 * outer, 3.2 * outer * Math.sin(Math.min(pitch, Math.PI / 2)));
  const size = letterSize(1.9 * spread, 1.8 * (outer - inner + leg));
  // The outer arc from leg 2 to leg 3 stands at the top.
  const place = upwards - 2 * pitch;
  const span = [0, layout.legWidth].map((offset) => turnOutline(layout, poles, offset).slice(1, 8));
  const at = (radius: number, angle: number): Point => [radius * Math.sin(angle), radius * Math.cos(angle)];
  const middle = (inner + outer) / 2;
  const [left, right] = [at(middle, -pitch / 2), at(middle, pitch / 2)];
  const along = (half: number, angle: number, up: 1 | -1) => {
    const [foot, tip] = [at(middle - up * half, angle), at(middle + up * half, angle)];
    return [line('outline', foot, tip), arrowHead(tip, Math.atan2(tip[1] - foot[1], tip[0] - foot[0]), 1.2 * size, 'outline')];
  };
  const reach = 0.3 * (outer - inner);
  const top = outer + leg / 2;
  return drawingOf('One lobe of a ring, seen from above', [
    ...span.map(
      (pieces, i): Stroke => ({
        ...(outline(pieces, place, 'copper', i === 1 ? 'outermost turn' : 'innermost turn') as Stroke & { kind: 'polyline' }),
        closed: false,
      }),
    ),
    { kind: 'arc', layer: 'construction', centre: [0, 0], radius: inner, start: upwards - 1.4 * pitch, sweep: 2.8 * pitch },
    { kind: 'arc', layer: 'construction', centre: [0, 0], radius: outer, start: upwards - 1.4 * pitch, sweep: 2.8 * pitch },
    ...along(reach, -pitch / 2, -1),
    ...along(reach, pitch / 2, 1),
    ...dimension(
      at(outer, -pitch / 2),
      at(outer, pitch / 2),
      top - outer + 3 * size,
      `${bareMm(2 * layout.outerRadius * Math.sin(pitch / 2))} leg to leg`,
      size,
    ),
    ...dimension(
      [right[0] + leg, outer],
      [right[0] + leg, inner],
      spread / 2,
      `legs ${bareMm(layout.outerRadius - layout.innerRadius)}`,
      size,
    ),
    ...leader(
      [left[0] - leg / 2, left[1]],
      [left[0] - leg / 2 - 3 * size, left[1] + 1.5 * size],
      `leg width ${bareMm(layout.legWidth)}`,
      size,
    ),
    ...toAxle(
      [0, inner - leg / 2 - 2.2 * size - inner * (1 - Math.cos(pitch))],
      `arcs ${bareMm(layout.innerRadius)} and ${bareMm(layout.outerRadius)} from the axle`,
      size,
    ),
  ]);
}
