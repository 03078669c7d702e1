import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { drawingOf } from './bounds';
import { centred, line, rectangle, text } from './dimensions';
import type { Drawing, Point, Stroke } from './drawing';
import { effectiveConnection, entryEnd, exitEnd, type Path, pathsOf, phaseEnds } from './joins';
import { phaseLayer } from './plan-drawing';
import { PAPER_LETTER } from './text-size';

/** Sizes on paper: this drawing has no scale. [mm] */
const LETTER = PAPER_LETTER;
const BOX = { width: 17, height: 7 };
const COIL_STEP = 21;
const ROW_STEP = 11;
const COILS_PER_ROW = 6;
const ROWS_PER_DRAWING = 18;
const LEFT = 26;
const RIGHT = LEFT + COILS_PER_ROW * COIL_STEP;

interface Row {
  path: Path;
  from: number;
  first: boolean;
  last: boolean;
}

/** Every coil as a box between the terminals, in as many drawings as the page's height asks for. */
export function connectionDrawings(design: Design, results: Results): Drawing[] {
  const rows = pathsOf(results.stages.winding.coils).flatMap(rowsOf);
  const sheets = Math.ceil(rows.length / ROWS_PER_DRAWING);
  const each = Math.ceil(rows.length / sheets);
  return Array.from({ length: sheets }, (_, i) =>
    connection(rows.slice(i * each, (i + 1) * each), design, sheets === 1 ? 'Connections' : `Connections, part ${i + 1} of ${sheets}`),
  );
}

/** The same in one drawing, however tall. */
export function connectionDrawing(design: Design, results: Results): Drawing {
  return connection(pathsOf(results.stages.winding.coils).flatMap(rowsOf), design, 'Connections');
}

function rowsOf(path: Path): Row[] {
  const count = Math.ceil(path.coils.length / COILS_PER_ROW);
  return Array.from({ length: count }, (_, i) => ({ path, from: i * COILS_PER_ROW, first: i === 0, last: i === count - 1 }));
}

function connection(rows: Row[], design: Design, title: string): Drawing {
  const { phases, connection: kind } = design.winding;
  const yOf = (row: number) => -row * ROW_STEP;
  const ends = (row: Row) => phaseEnds(row.path.phase, phases, kind);
  return drawingOf(title, [
    ...rows.flatMap((row, i) => [...coils(row, yOf(i)), ...carry(row, yOf(i), rows[i + 1] !== undefined)]),
    ...buses(rows, (row) => (row.first ? ends(row).begin : undefined), LEFT - 8, yOf, 'end'),
    ...buses(
      rows,
      (row) => (row.last ? `${effectiveConnection(kind, phases) === 'delta' ? 'to ' : ''}${ends(row).end}` : undefined),
      RIGHT + 6,
      yOf,
      'start',
      effectiveConnection(kind, phases) === 'star',
    ),
  ]);
}

function coils({ path, from, first, last }: Row, y: number): Stroke[] {
  const here = path.coils.slice(from, from + COILS_PER_ROW);
  return here.flatMap((coil, i): Stroke[] => {
    const x = LEFT + i * COIL_STEP;
    const ends = [entryEnd(coil), exitEnd(coil)].map((end) => (end === 'start' ? 'S' : 'F'));
    const wire = i > 0 || !first ? x - (COIL_STEP - BOX.width) : LEFT - 8;
    const lastHere = i === here.length - 1;
    return [
      rectangle(phaseLayer(coil.phase), x, y - BOX.height / 2, x + BOX.width, y + BOX.height / 2, { name: `coil ${coil.coil}` }),
      centred([x + 2.2, y], ends[0], LETTER),
      centred([x + BOX.width / 2, y], String(coil.coil), LETTER),
      centred([x + BOX.width - 2.2, y], ends[1], LETTER),
      line('outline', [wire, y], [x, y]),
      ...(lastHere && last ? [line('outline', [x + BOX.width, y], [RIGHT + 6, y])] : []),
      ...(lastHere && !last ? [line('outline', [x + BOX.width, y], [x + COIL_STEP, y])] : []),
    ];
  });
}

/** The wire from the end of a full row to the beginning of the next. */
function carry({ last }: Row, y: number, goesOn: boolean): Stroke[] {
  if (last) return [];
  const [right, left] = [RIGHT, LEFT - (COIL_STEP - BOX.width)];
  if (!goesOn) return [text([right + 1, y - LETTER / 2], 'next part', LETTER, 'start')];
  const between = y - ROW_STEP / 2;
  return [line('outline', [right, y], [right, between], [left, between], [left, y - ROW_STEP])];
}

/** Wires that gather the rows which end at the same terminal, and the terminal's name. */
function buses(
  rows: Row[],
  nameOf: (row: Row) => string | undefined,
  x: number,
  yOf: (row: number) => number,
  anchor: 'start' | 'end',
  oneBus = false,
): Stroke[] {
  const groups = new Map<string, number[]>();
  rows.forEach((row, i) => {
    const name = nameOf(row);
    if (name === undefined) return;
    // The ends of different phases meet at the star point only.
    const key = oneBus ? name : `${name}/${row.path.phase}`;
    groups.set(key, [...(groups.get(key) ?? []), yOf(i)]);
  });
  const outwards = anchor === 'start' ? 1 : -1;
  return [...groups].flatMap(([key, ys]) => {
    const name = key.split('/')[0];
    const middle = (ys[0] + ys[ys.length - 1]) / 2;
    const tip: Point = [x + outwards * 3, middle];
    const star = oneBus;
    return [
      ...(ys.length > 1 ? [line('outline', [x, ys[0]], [x, ys[ys.length - 1]])] : []),
      ...ys.map((y): Stroke => ({ kind: 'circle', layer: 'outline', centre: [x, y], radius: 0.6, filled: true })),
      line('outline', [x, middle], tip),
      ...(star
        ? [
            text([tip[0] + 1, middle - LETTER / 2], 'star', LETTER, anchor),
            text([tip[0] + 1, middle - LETTER / 2 - 1.6 * LETTER], 'point', LETTER, anchor),
          ]
        : [
            { kind: 'circle', layer: 'outline', centre: [tip[0] + outwards, middle], radius: 1 } satisfies Stroke,
            text([tip[0] + outwards * 3, middle - LETTER / 2], name, 1.2 * LETTER, anchor),
          ]),
    ];
  });
}
