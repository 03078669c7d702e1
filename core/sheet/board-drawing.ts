import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Layout } from '../winding/section';
import { drawingOf, letteredDrawing } from './bounds';
import { dimension, leader, line, rectangle, text } from './dimensions';
import type { Drawing, Point, Stroke } from './drawing';
import { bareMm } from './figures';
import { outline, turnOutline } from './outlines';
import { PAPER_LETTER } from './text-size';

const PAPER = { width: 178, height: 95 };

type Concentrated = Extract<Layout, { kind: 'concentrated' }>;

/** What the coil is wound on: two pegs for the skein of a serpentine, a core between two cheeks for a coil. */
export function boardDrawing(design: Design, results: Results): Drawing {
  const { layout } = design.winding;
  return layout.kind === 'concentrated' ? former(layout, design) : pegs(results);
}

/** The middle of the board is left out: the pegs stand much farther apart than they are thick. */
function pegs({ stages }: Results): Drawing {
  if (!stages.winding.pegs) return drawingOf('Peg board', [text([0, 0], 'The ring is too short to be wound on two pegs.', PAPER_LETTER)]);
  const { distance, diameter, bundleDepth } = stages.winding.pegs;
  const [peg, bundle] = [diameter * 1000, bundleDepth * 1000];
  const outside = peg / 2 + bundle;
  const half = (size: number) => Math.max(1.5 * outside, 20 * size);
  const end = (sign: 1 | -1, size: number): Stroke[] => {
    const x = sign * half(size);
    return [
      { kind: 'circle', layer: 'former', centre: [x, 0], radius: peg / 2, filled: true, name: 'peg' },
      ...[peg / 2, outside].map(
        (radius): Stroke => ({ kind: 'arc', layer: 'copper', centre: [x, 0], radius, start: (-sign * Math.PI) / 2, sweep: Math.PI }),
      ),
      ...[outside, peg / 2, -peg / 2, -outside].map((y) => line('copper', [sign * 0.6 * size, y], [x, y])),
      breakLine(sign * 0.6 * size, outside, size),
    ];
  };
  return letteredDrawing('Peg board, its middle left out', { width: 178, height: 60 }, (size) => {
    const x = half(size);
    const below = -outside - 2.5 * size;
    return [
      ...end(-1, size),
      ...end(1, size),
      ...dimension([-x, 0], [x, 0], outside + 3 * size, `${bareMm(distance)} between the pegs’ centres`, size),
      ...leader([x - peg / 4, -peg / 4], [x - 3 * size, below], `peg ∅ ${bareMm(diameter)}`, size),
      ...leader([-x + 2 * size, -peg / 2 - bundle / 2], [-x + 4 * size, below], `bundle ${bareMm(bundleDepth)} deep`, size),
    ];
  });
}

function breakLine(at: number, outside: number, size: number): Stroke {
  const y = outside + 0.8 * size;
  const points: Point[] = [
    [at, -y],
    [at, -0.4 * size],
    [at - 0.5 * size, -0.15 * size],
    [at + 0.5 * size, 0.15 * size],
    [at, 0.4 * size],
    [at, y],
  ];
  return line('outline', ...points);
}

/** Cheeks and core from above, and beside them the three in section. */
function former(layout: Concentrated, design: Design): Drawing {
  const mm = (metres: number) => metres * 1000;
  const leg = mm(layout.legWidth);
  const [low, high] = [mm(layout.holeInnerRadius), mm(layout.holeOuterRadius)];
  const [narrow, wide] = [mm(layout.holeInnerWidth) / 2, mm(layout.holeOuterWidth) / 2];
  const margin = Math.max(3, 0.25 * leg);
  const side = Math.max(narrow, wide) + leg + margin;
  const [bottom, top] = [low - leg - margin, high + leg + margin];
  const core = mm(design.winding.thickness);
  const cheek = Math.max(3, 0.5 * core);
  const bore = Math.min(8, 0.5 * Math.min(narrow + wide, high - low));
  const outer = turnOutline(layout, design.discs.poles, layout.legWidth);
  return letteredDrawing('Winding former', PAPER, (size) => {
    const x = side + 7 * size;
    return [
      rectangle('former', -side, bottom, side, top, { name: 'cheek' }),
      outline(outer, Math.PI / 2, 'copper', 'copper'),
      { ...outline(turnOutline(layout, design.discs.poles, 0), Math.PI / 2, 'former', 'core'), filled: true },
      { kind: 'circle', layer: 'former', centre: [0, (low + high) / 2], radius: bore / 2, name: 'spindle' },
      ...dimension([-wide, high], [wide, high], top - high + 1.5 * size, bareMm(layout.holeOuterWidth), size),
      ...dimension([-narrow, low], [narrow, low], bottom - low - 2.5 * size, bareMm(layout.holeInnerWidth), size),
      ...dimension([-side, bottom], [side, bottom], -5.5 * size, `cheek ${bareMm((2 * side) / 1000)}`, size),
      ...dimension([-side, bottom], [-side, top], 2 * size, `cheek ${bareMm((top - bottom) / 1000)}`, size),
      ...dimension([side, high], [side, low], 2.5 * size, `core ${bareMm(layout.holeOuterRadius - layout.holeInnerRadius)}`, size),
      ...[x, x + cheek + core].map((at) => rectangle('former', at, bottom, at + cheek, top, { filled: true, name: 'cheek, section' })),
      rectangle('former', x + cheek, low, x + cheek + core, high, { filled: true, name: 'core, section' }),
      ...[low - leg, high].map((y) => rectangle('copper', x + cheek, y, x + cheek + core, y + leg, { filled: true })),
      ...dimension([x + cheek, bottom], [x + cheek + core, bottom], -1.5 * size, bareMm(design.winding.thickness), size),
      ...dimension(
        [x + 2 * cheek + core, high],
        [x + 2 * cheek + core, high + leg],
        -2.5 * size,
        `copper ${bareMm(layout.legWidth)}`,
        size,
      ),
      text([x + 2 * cheek + core, top + size], 'section', size, 'end'),
    ];
  });
}
