import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { shapeModel } from '../magnets/shapes';
import type { Layout } from '../winding/section';
import { drawingOf } from './bounds';
import { line, rectangle, text } from './dimensions';
import type { Drawing, Point, Stroke } from './drawing';
import { bareMm } from './figures';
import { outline, turnOutline } from './outlines';

type Concentrated = Extract<Layout, { kind: 'concentrated' }>;

/** A part to cut or drill at natural size. What is cut is on the layer `outline`, what is only marked on `construction` and `text`. */
export interface CuttingDrawing {
  /** Good for a file name. */
  name: string;
  drawing: Drawing;
}

/** Lettering on a template. [mm] */
const LETTER = 4;
/** Disc left outside the magnets, cheek left outside the copper. Common practice. [mm] */
const RIM = 5;
const PILOT = 3;

/** Discs, former and peg board, one drawing a part. */
export function cuttingDrawings(design: Design, results: Results): CuttingDrawing[] {
  const { layout } = design.winding;
  const lower = { name: 'disc', drawing: disc(design) };
  if (layout.kind === 'concentrated')
    return [
      lower,
      { name: 'former-cheek', drawing: cheek(layout, design.discs.poles) },
      { name: 'former-core', drawing: core(layout, design) },
      { name: 'winding-layout', drawing: placing(design, results) },
    ];
  const { pegs } = results.stages.winding;
  return [
    lower,
    { name: 'winding-layout', drawing: placing(design, results) },
    ...(pegs ? [{ name: 'peg-board', drawing: pegBoard(pegs) }] : []),
  ];
}

const circle = (layer: 'outline' | 'construction', radius: number, name: string, centre: Point = [0, 0]): Stroke => ({
  kind: 'circle',
  layer,
  centre,
  radius,
  name,
});

/** A line of known length, so that a print or a cutter's scale is checked before the material is. */
function checkRule([x, y]: Point): Stroke[] {
  return [
    line('construction', [x, y], [x + 100, y]),
    ...[0, 100].map((at) => line('construction', [x + at, y - 2], [x + at, y + 2])),
    text([x + 50, y + 2], 'must measure 100 mm', LETTER),
  ];
}

const cross = ([x, y]: Point, reach: number) => [
  line('construction', [x - reach, y], [x + reach, y]),
  line('construction', [x, y - reach], [x, y + reach]),
];

/** Magnets on the disc, their poles as they face the winding on the lower disc; the upper disc is cut alike. */
function disc({ magnets: { shape }, discs }: Design): Drawing {
  const model = shapeModel(shape);
  const print = model.footprint(shape);
  const shift = model.onAxle ? 0 : discs.pitchRadius * 1000;
  const edge = model.radii(shape, discs.pitchRadius).outer * 1000 + RIM;
  const magnets = Array.from({ length: discs.poles }, (_, k): Stroke[] => {
    const angle = (2 * Math.PI * k) / discs.poles;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const place = (x: number, y: number): Point => [x * cos - y * sin, x * sin + y * cos];
    const name = `magnet ${k + 1}`;
    const at = place(discs.pitchRadius * 1000, 0);
    return [
      print.kind === 'circle'
        ? circle('construction', print.radius * 1000, name, place(shift, 0))
        : {
            kind: 'polyline',
            layer: 'construction',
            closed: true,
            name,
            points: print.points.map(([x, y]) => place(x * 1000 + shift, y * 1000)),
          },
      text([at[0], at[1] - LETTER / 2], k % 2 === 0 ? 'N' : 'S', LETTER),
    ];
  }).flat();
  return drawingOf(`Disc, ${discs.poles} magnets`, [
    circle('outline', edge, 'disc edge'),
    circle('outline', PILOT / 2, 'pilot hole'),
    circle('construction', discs.pitchRadius * 1000, 'pitch circle'),
    ...magnets,
    ...cross([0, 0], 10),
    ...checkRule([-50, -edge - 12]),
  ]);
}

function cheek(layout: Concentrated, poles: number): Drawing {
  const leg = layout.legWidth * 1000;
  const [bottom, top] = [layout.holeInnerRadius * 1000 - leg - RIM, layout.holeOuterRadius * 1000 + leg + RIM];
  const side = Math.max(layout.holeInnerWidth, layout.holeOuterWidth) * 500 + leg + RIM;
  return drawingOf('Cheek of the former, cut two', [
    rectangle('outline', -side, bottom, side, top, { name: 'cheek' }),
    outline(turnOutline(layout, poles, 0), Math.PI / 2, 'construction', 'core'),
    outline(turnOutline(layout, poles, layout.legWidth), Math.PI / 2, 'construction', 'copper'),
    circle('outline', PILOT / 2, 'spindle, pilot hole', [0, (bottom + top) / 2]),
    ...checkRule([-50, bottom - 12]),
  ]);
}

function core(layout: Concentrated, { winding, discs }: Design): Drawing {
  const [low, high] = [layout.holeInnerRadius * 1000, layout.holeOuterRadius * 1000];
  return drawingOf(`Core of the former, ${bareMm(winding.thickness)} mm thick`, [
    outline(turnOutline(layout, discs.poles, 0), Math.PI / 2, 'outline', 'core'),
    circle('outline', PILOT / 2, 'spindle, pilot hole', [0, (low + high) / 2]),
    ...checkRule([-50, low - 12]),
  ]);
}

/** Where each coil lies on the casting mould. */
function placing({ winding: { layout }, discs }: Design, { stages }: Results): Drawing {
  const turns = [layout.legWidth, 0].map((offset) => turnOutline(layout, discs.poles, offset));
  const { coils, outerRadius } = stages.winding;
  return drawingOf('Coils in place, seen from above', [
    circle('construction', discs.pitchRadius * 1000, 'pitch circle'),
    circle('outline', PILOT / 2, 'pilot hole'),
    ...coils.flatMap(({ coil, angle }) =>
      turns.map((turn, i) => outline(turn, angle, 'construction', i === 0 ? `coil ${coil}` : undefined)),
    ),
    ...cross([0, 0], 10),
    ...checkRule([-50, -outerRadius * 1000 - 12]),
  ]);
}

function pegBoard({ distance, diameter, bundleDepth }: { distance: number; diameter: number; bundleDepth: number }): Drawing {
  const half = distance * 500;
  const reach = (diameter / 2 + bundleDepth) * 1000 + 15;
  return drawingOf('Peg board', [
    rectangle('outline', -half - reach, -reach, half + reach, reach, { name: 'board' }),
    ...[-half, half].flatMap((x) => [circle('outline', diameter * 500, 'peg', [x, 0]), ...cross([x, 0], diameter * 500 + 5)]),
    line('construction', [-half, 0], [half, 0]),
    text([0, 4], `${bareMm(distance)} between centres`, LETTER),
    ...checkRule([-50, -reach - 12]),
  ]);
}
