import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Layout } from '../winding/section';
import { letteredDrawing } from './bounds';
import { arrowHead, centred, dimension, leader, line, turningArrow } from './dimensions';
import type { Drawing, Point, Stroke } from './drawing';
import { bareMm, type LengthText, many } from './figures';
import { outline, turnOutline } from './outlines';
import { textWidth } from './text-size';

type Concentrated = Extract<Layout, { kind: 'concentrated' }>;
type Serpentine = Extract<Layout, { kind: 'serpentine' }>;

/** One coil, or one lobe of a serpentine ring, with its sizes, its sense, its start and its finish. Seen from above, the axle below the drawing. */
export function coilDrawing({ winding, discs }: Design, { stages }: Results, length: LengthText = bareMm): Drawing {
  const { layout, turns } = winding;
  const words = `${many(turns, 'turn')}, the middle one ${length(stages.winding.meanTurn)} long`;
  return layout.kind === 'concentrated' ? coil(layout, discs.poles, words, length) : lobe(layout, discs.poles, words, length);
}

const PAPER = { width: 178, height: 112 };

/** Turned so that the coil's axis points up. */
const upwards = Math.PI / 2;

function coil(layout: Concentrated, poles: number, words: string, length: LengthText): Drawing {
  const mm = (metres: number) => metres * 1000;
  const { holeInnerRadius, holeOuterRadius, holeInnerWidth, holeOuterWidth, legWidth } = layout;
  const [low, high, leg] = [mm(holeInnerRadius), mm(holeOuterRadius), mm(legWidth)];
  const [narrow, wide] = [mm(holeInnerWidth) / 2, mm(holeOuterWidth) / 2];
  const side = Math.max(narrow, wide) + leg;
  const middle: Point = [0, (low + high) / 2];
  const turn = 0.32 * Math.min(narrow + wide, high - low);
  return letteredDrawing('One coil, seen from above', PAPER, (size) => [
    outline(turnOutline(layout, poles, 0), upwards, 'former', `hole ${length(holeOuterRadius - holeInnerRadius)} long`),
    outline(turnOutline(layout, poles, legWidth), upwards, 'copper', `coil, leg ${length(legWidth)} wide`),
    line('construction', [0, low - leg], [0, high + leg]),
    ...turningArrow(middle, turn, -0.35 * Math.PI, 1.7 * Math.PI, Math.min(1.2 * size, 0.8 * turn), 'outline'),
    ...lead([-0.4 * wide, high], [-Math.max(0.4 * wide, size), high + leg + 2 * size], 'S', size),
    ...lead([0.4 * wide, high + leg], [Math.max(0.4 * wide, size), high + leg + 2 * size], 'F', size),
    ...dimension([-wide, high], [wide, high], leg + 5.5 * size, length(holeOuterWidth), size),
    ...dimension([-narrow, low], [narrow, low], -(leg + 2.5 * size), length(holeInnerWidth), size),
    ...dimension([-side, low - leg], [side, low - leg], -5.5 * size, `over all ${length((side * 2) / 1000)}`, size),
    ...dimension([side, high], [side, low], 2.5 * size, length(holeOuterRadius - holeInnerRadius), size),
    ...dimension(
      [side, high + leg],
      [side, low - leg],
      5.5 * size,
      `over all ${length(holeOuterRadius - holeInnerRadius + 2 * legWidth)}`,
      size,
    ),
    ...dimension([-wide, high], [-wide, high + leg], leg + 2.5 * size, `leg ${length(legWidth)}`, size),
    ...toAxle([0, low - leg - 7.8 * size], `hole begins ${length(holeInnerRadius)} from the axle`, size),
    centred([0, low - leg - 10.2 * size], words, size),
  ]);
}

function lead(from: Point, to: Point, letter: string, size: number): Stroke[] {
  return [
    line('outline', from, to),
    { kind: 'circle', layer: 'outline', centre: from, radius: 0.25 * size, filled: true },
    centred([to[0], to[1] + size], letter, 1.3 * size),
  ];
}

function toAxle(at: Point, words: string, size: number): Stroke[] {
  const x = -textWidth(words, size) / 2 - size;
  return [
    line('dimension', [x, at[1] + size], [x, at[1] - size]),
    arrowHead([x, at[1] - size], -Math.PI / 2, size),
    centred(at, words, size),
  ];
}

/** Two legs of a ring with the arcs on both sides of them. */
function lobe(layout: Serpentine, poles: number, words: string, length: LengthText): Drawing {
  const pitch = (2 * Math.PI) / poles;
  const [inner, outer, leg] = [layout.innerRadius, layout.outerRadius, layout.legWidth].map((v) => v * 1000);
  const at = (radius: number, angle: number): Point => [radius * Math.sin(angle), radius * Math.cos(angle)];
  const middle = (inner + outer) / 2;
  const half = pitch / 2;
  const run = (angle: number, from: number, to: number, size: number) => {
    const [foot, tip] = [at(from, angle), at(to, angle)];
    return [line('outline', foot, tip), arrowHead(tip, Math.atan2(tip[1] - foot[1], tip[0] - foot[0]), 1.2 * size, 'outline')];
  };
  const reach = 0.3 * (outer - inner);
  const lowest = (inner - leg) * Math.cos(Math.min(1.5 * pitch, Math.PI));
  const [start, finish] = [-0.2 * pitch, 0.2 * pitch];
  return letteredDrawing('One lobe of a ring, seen from above', PAPER, (size) => [
    ...[layout.legWidth, 0].map((offset) => lobeTurn(layout, poles, offset)),
    { kind: 'arc', layer: 'construction', centre: [0, 0], radius: outer, start: upwards - 1.5 * pitch, sweep: 3 * pitch },
    { kind: 'arc', layer: 'construction', centre: [0, 0], radius: inner, start: upwards - half, sweep: pitch },
    ...run(-half, middle + reach, middle - reach, size),
    ...run(half, middle - reach, middle + reach, size),
    ...lead(at(outer, start), [at(outer, start)[0], outer + leg / 2 + 1.5 * size], 'S', size),
    ...lead(at(outer, finish), [at(outer, finish)[0], outer + leg / 2 + 1.5 * size], 'F', size),
    ...dimension(
      at(outer, -half),
      at(outer, half),
      outer * (1 - Math.cos(half)) + leg / 2 + 5 * size,
      `leg to leg ${length(2 * layout.outerRadius * Math.sin(half))}`,
      size,
    ),
    ...dimension(at(outer, half), at(inner, half), leg / 2 + 2.5 * size, length(layout.outerRadius - layout.innerRadius), size),
    ...legWidthWords(at(middle, -half), leg, half, `leg width ${length(layout.legWidth)}`, size),
    centred([0, lowest - 4.4 * size], words, size),
    ...toAxle(
      [0, lowest - 2 * size],
      `middle of the arcs ${length(layout.innerRadius)} and ${length(layout.outerRadius)} from the axle`,
      size,
    ),
  ]);
}

/** Turned so that the outer arc between the second and the third leg stands at the top. */
function lobeTurn(layout: Serpentine, poles: number, offset: number): Stroke {
  const pieces = turnOutline(layout, poles, offset).slice(1, 6);
  return { ...outline(pieces, upwards - (4 * Math.PI) / poles, 'copper'), closed: false };
}

function legWidthWords(at: Point, leg: number, lean: number, words: string, size: number): Stroke[] {
  const edge: Point = [at[0] - (leg / 2) * Math.cos(lean), at[1] + (leg / 2) * Math.sin(lean)];
  return leader(edge, [edge[0] - 3 * size, edge[1] + 1.2 * size], words, size);
}
