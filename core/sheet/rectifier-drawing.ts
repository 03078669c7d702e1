import type { Design } from '../design/schema';
import { drawingOf } from './bounds';
import { centred, line, rectangle, text } from './dimensions';
import type { Drawing, Point, Stroke } from './drawing';
import { effectiveConnection, phaseEnds, phaseLetter } from './joins';
import { PAPER_LETTER } from './text-size';

/** Sizes on paper: this drawing has no scale. [mm] */
const LEG_STEP = 15;
const RAIL = 13;
const ROW_STEP = 15;
const PIN = 3;

const wire = (...points: Point[]) => line('outline', ...points);
const terminal = (centre: Point): Stroke => ({ kind: 'circle', layer: 'outline', centre, radius: 1 });
const joint = (centre: Point): Stroke => ({ kind: 'circle', layer: 'outline', centre, radius: 0.6, filled: true });
const label = ([x, y]: Point, words: string, anchor: 'start' | 'end') => text([x, y - PAPER_LETTER / 2], words, PAPER_LETTER, anchor);

/** From the winding's terminals to the DC side: one bridge with a leg for each terminal, or a bridge for each phase. */
export function rectifierDrawing(design: Design): Drawing {
  const { phases, connection } = design.winding;
  const separate = effectiveConnection(connection, phases) === 'separate';
  return drawingOf('Rectifier', separate && phases > 1 ? bridges(design) : legs(design));
}

function legs(design: Design): Stroke[] {
  const { phases, connection } = design.winding;
  const ends = phaseEnds(1, phases, connection);
  const names = phases === 1 ? [ends.begin, ends.end] : Array.from({ length: phases }, (_, i) => phaseLetter(i + 1));
  const right = names.length * LEG_STEP;
  return [
    ...names.flatMap((name, i) => leg(i * LEG_STEP, name)),
    ...[RAIL, -RAIL].map((y) => wire([0, y], [right, y])),
    ...output([right, RAIL], [right, -RAIL], design),
  ];
}

/** Two diodes one above the other, the terminal between them. */
function leg(x: number, name: string): Stroke[] {
  return [
    wire([x, -RAIL], [x, RAIL]),
    ...[6.5, -6.5].flatMap((y): Stroke[] => [
      {
        kind: 'polyline',
        layer: 'outline',
        closed: true,
        filled: true,
        points: [
          [x - 1.8, y - 1.6],
          [x + 1.8, y - 1.6],
          [x, y + 1.6],
        ],
      },
      wire([x - 1.8, y + 1.6], [x + 1.8, y + 1.6]),
    ]),
    wire([x - 2, 0], [x, 0]),
    terminal([x - 3, 0]),
    label([x - 5, 0], name, 'end'),
  ];
}

/** The bridges one below the other, their DC sides side by side or one after the other. */
function bridges(design: Design): Stroke[] {
  const { phases, connection } = design.winding;
  const inSeries = design.rectifier.arrangement === 'bridges-in-series';
  const yOf = (i: number) => -i * ROW_STEP;
  const [box, plus, minus] = [30, 40, 48];
  const last = yOf(phases - 1);
  const rows = Array.from({ length: phases }, (_, i): Stroke[] => {
    const { begin, end } = phaseEnds(i + 1, phases, connection);
    const y = yOf(i);
    return [
      rectangle('outline', 0, y - 5.5, box, y + 5.5),
      centred([box / 2, y], 'bridge', PAPER_LETTER),
      ...[begin, end].flatMap((name, k): Stroke[] => {
        const pin = y + (k === 0 ? PIN : -PIN);
        return [wire([-4, pin], [0, pin]), terminal([-5, pin]), label([-7, pin], name, 'end')];
      }),
      label([box - 1, y + PIN], '+', 'end'),
      label([box - 1, y - PIN], '−', 'end'),
    ];
  }).flat();
  if (inSeries)
    return [
      ...rows,
      ...Array.from({ length: phases - 1 }, (_, i) =>
        wire([box, yOf(i) - PIN], [plus, yOf(i) - PIN], [plus, yOf(i + 1) + PIN], [box, yOf(i + 1) + PIN]),
      ),
      wire([box, PIN], [minus, PIN]),
      wire([box, last - PIN], [minus, last - PIN]),
      ...output([minus, PIN], [minus, last - PIN], design),
    ];
  return [
    ...rows,
    ...Array.from({ length: phases }, (_, i): Stroke[] => [
      wire([box, yOf(i) + PIN], [plus, yOf(i) + PIN]),
      wire([box, yOf(i) - PIN], [minus, yOf(i) - PIN]),
      joint([plus, yOf(i) + PIN]),
      joint([minus, yOf(i) - PIN]),
    ]).flat(),
    wire([plus, PIN], [plus, last + PIN]),
    wire([minus, -PIN], [minus, last - PIN]),
    wire([plus, PIN], [minus + 8, PIN]),
    wire([minus, last - PIN], [minus + 8, last - PIN]),
    ...output([minus + 8, PIN], [minus + 8, last - PIN], design),
  ];
}

function output(plus: Point, minus: Point, { load }: Design): Stroke[] {
  const words = load.kind === 'battery' ? 'to the battery' : load.kind === 'tracker' ? 'to the controller' : 'to the load';
  return [
    ...[plus, minus].map(([x, y]) => terminal([x + 1, y])),
    label([plus[0] + 4, plus[1]], '+', 'start'),
    label([minus[0] + 4, minus[1]], '−', 'start'),
    label([plus[0] + 4, (plus[1] + minus[1]) / 2], words, 'start'),
  ];
}
