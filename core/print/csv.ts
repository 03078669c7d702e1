import type { CurvePoint, MatchPoint, Results } from '../chain/results';
import type { Design } from '../design/schema';
import { entryEnd, exitEnd, joinWords, junctions, phaseLetter } from '../sheet/joins';
import { shoppingRows } from '../sheet/shopping';

type Cell = string | number;

/** Head with its unit, and the key it stands for. */
type Columns<Row> = [head: string, key: keyof Row & string][];

const curveColumns: Columns<CurvePoint> = [
  ['shaft speed in rpm', 'rpm'],
  ['DC in V', 'dcVolts'],
  ['DC in A', 'dcAmps'],
  ['DC in W', 'dcWatts'],
  ['phase in A RMS', 'phaseAmps'],
  ['copper loss in W', 'copperLoss'],
  ['diode loss in W', 'diodeLoss'],
  ['cable loss in W', 'cableLoss'],
  ['eddy loss in W', 'eddyLoss'],
  ['bearing loss in W', 'bearingLoss'],
  ['shaft in W', 'shaftWatts'],
  ['coil in °C', 'coilTemperature'],
];

const matchColumns: Columns<MatchPoint> = [
  ['wind in m/s', 'wind'],
  ['shaft speed in rpm', 'rpm'],
  ['tip speed ratio', 'tipSpeedRatio'],
  ['DC in V', 'dcVolts'],
  ['DC in A', 'dcAmps'],
  ['DC in W', 'dcWatts'],
  ['shaft in W', 'shaftWatts'],
  ['coil in °C', 'coilTemperature'],
  ['state', 'state'],
];

/** Tables that go to a spreadsheet, by what a file of theirs is called. To add one: one entry here. */
const tables = {
  'coil table': coilRows,
  'generator curve': (_: Design, { curve }: Results) => columned(curve, curveColumns),
  'wind match': (_: Design, { match }: Results) => columned(match, matchColumns),
  'shopping list': (design: Design, results: Results): Cell[][] => [['item', 'what'], ...shoppingRows(design, results)],
} satisfies Record<string, (design: Design, results: Results) => Cell[][]>;

export type TableName = keyof typeof tables;
export const tableNames = Object.keys(tables) as TableName[];

/** A table as CSV (RFC 4180): commas, points as decimal signs, seven figures, the unit of each column in its head. */
export function tableCsv(name: TableName, design: Design, results: Results): string {
  return tables[name](design, results)
    .map((row) => `${row.map(field).join(',')}\r\n`)
    .join('');
}

const columned = <Row>(rows: readonly Row[], columns: Columns<Row>): Cell[][] => [
  columns.map(([head]) => head),
  ...rows.map((row) => columns.map(([, key]) => row[key] as Cell)),
];

function coilRows({ winding }: Design, { stages }: Results): Cell[][] {
  const { coils } = stages.winding;
  const nodes = junctions(coils, winding.phases, winding.connection);
  const heads = [
    'coil',
    'phase',
    'path',
    'angle in °',
    'height in mm',
    'turns',
    'wire in m',
    'current enters',
    'leaves',
    'start joins',
    'finish joins',
  ];
  return [
    heads,
    ...coils.map((coil): Cell[] => [
      coil.coil,
      phaseLetter(coil.phase),
      coil.path,
      (coil.angle * 180) / Math.PI,
      coil.height * 1000,
      winding.turns,
      stages.wire.coilLength,
      entryEnd(coil),
      exitEnd(coil),
      joinWords({ coil: coil.coil, end: 'start' }, nodes),
      joinWords({ coil: coil.coil, end: 'finish' }, nodes),
    ]),
  ];
}

function field(cell: Cell): string {
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(Number(cell.toPrecision(7))) : '';
  const text = cell.replaceAll('\u00a0', ' ');
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
