import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Layout } from '../winding/section';
import { drawingOf } from './bounds';
import { centred, dimension, line, rectangle, text } from './dimensions';
import type { Drawing, Point, Stroke } from './drawing';
import { bareMm } from './figures';
import { outline, turnOutline } from './outlines';
import { letterSize } from './text-size';

type Concentrated = Extract<Layout, { kind: 'concentrated' }>;

/** What the coil is wound on: two pegs for the skein of a serpentine, a core between two cheeks for a coil. */
export function boardDrawing(design: Design, results: Results): Drawing {
  const { layout } = design.winding;
  return layout.kind === 'concentrated' ? former(layout, design) : pegs(results);
}

/** The middle of the board is left out: the pegs stand much farther apart than they are thick. */
function pegs({ stages }: Results): Drawing {
  const { distance, diameter, bundleDepth } = stages.winding.pegs ?? { distance: 0, diameter: 0, bundleDepth: 0 };
  const [peg, bundle] = [diameter * 1000, bundleDepth * 1000];
  const shown = Math.max(6 * peg, 9 * bundle);
  const x = shown / 2;
  const size = letterSize(shown * 1.3, shown * 0.5);
  const outside = peg / 2 + bundle;
  const end = (sign: 1 | -1): Stroke[] => [
    { kind: 'circle', layer: 'former', centre: [sign * x, 0], radius: peg / 2, name: 'peg' },
    { kind: 'arc', layer: 'copper', centre: [sign * x, 0], radius: peg / 2, start: (-sign * Math.PI) / 2, sweep: sign * Math.PI },
    { kind: 'arc', layer: 'copper', centre: [sign * x, 0], radius: outside, start: (-sign * Math.PI) / 2, sweep: sign * Math.PI },
    line('construction', [sign * x, -outside - size], [sign * x, outside + size]),
  ];
  const gap = 0.6 * size;
  const runs = [peg / 2, outside, -peg / 2, -outside].flatMap((y) => [
    line('copper', [-x, y], [-gap, y]),
    line('copper', [gap, y], [x, y]),
  ]);
  const breakLine = (at: number): Stroke => {
    const y = outside + 0.8 * size;
    const zigzag: Point[] = [
      [at, -y],
      [at, -0.4 * size],
      [at - 0.5 * size, -0.15 * size],
      [at + 0.5 * size, 0.15 * size],
      [at, 0.4 * size],
      [at, y],
    ];
    return line('outline', ...zigzag);
  };
  return drawingOf('Peg board (middle left out)', [
    ...end(-1),
    ...end(1),
    ...runs,
    breakLine(-gap),
    breakLine(gap),
    ...dimension([-x, outside], [x, outside], 4 * size, `${bareMm(distance)} between the pegs’ centres`, size),
    ...dimension([x + outside, peg / 2], [x + outside, -peg / 2], 3 * size, `peg ∅ ${bareMm(diameter)}`, size),
    ...dimension([-x - outside, peg / 2], [-x - outside, outside], 2.5 * size, `bundle ${bareMm(bundleDepth)}`, size),
  ]);
}

/** Plate of cheeks and core, and beside it the three in section. */
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
  const size = letterSize(2.6 * side + 6 * core, 1.4 * (top - bottom));
  const x0 = side + 7 * size;
  const bore = Math.min(8, 0.5 * Math.min(narrow + wide, high - low));
  const middle: Point = [0, (low + high) / 2];
  return drawingOf('Winding former', [
    rectangle('former', -side, bottom, side, top, { name: 'cheek' }),
    outline(turnOutline(layout, design.discs.poles, 0), Math.PI / 2, 'former', 'core'),
    outline(turnOutline(layout, design.discs.poles, layout.legWidth), Math.PI / 2, 'copper', 'copper'),
    { kind: 'circle', layer: 'former', centre: middle, radius: bore / 2, name: 'spindle' },
    ...dimension([-side, bottom], [side, bottom], -4 * size, `cheek ${bareMm((2 * side) / 1000)}`, size),
    ...dimension([-side, bottom], [-side, top], 3 * size, `cheek ${bareMm((top - bottom) / 1000)}`, size),
    ...dimension([-wide, high], [wide, high], top - high + 2 * size, `core ${bareMm(layout.holeOuterWidth)} wide`, size),
    ...dimension([-narrow, low], [narrow, low], bottom - low - size, bareMm(layout.holeInnerWidth), size),
    ...dimension([side, high], [side, low], 2.5 * size, `core ${bareMm(layout.holeOuterRadius - layout.holeInnerRadius)}`, size),
    rectangle('former', x0, bottom, x0 + cheek, top, { name: 'cheek, section' }),
    rectangle('former', x0 + cheek, low, x0 + cheek + core, high, { name: 'core, section' }),
    rectangle('former', x0 + cheek + core, bottom, x0 + 2 * cheek + core, top, { name: 'cheek, section' }),
    ...[low - leg, high].map((y) => rectangle('copper', x0 + cheek, y, x0 + cheek + core, y + leg)),
    ...dimension([x0 + cheek, top], [x0 + cheek + core, top], 2 * size, bareMm(design.winding.thickness), size),
    centred([x0 + cheek + core / 2, bottom - 1.5 * size], 'section', size),
    text([0, bottom - 8 * size], `Copper stands ${bareMm(layout.legWidth)} deep on the core`, size),
  ]);
}
