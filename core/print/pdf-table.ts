import type { Block, Column } from '../sheet/document';
import { type Flow, frame, lineHeight, MARGIN, rule, TYPE } from './page-flow';

type Table = Extract<Block, { kind: 'table' }>;

const PAD = 1.6;
/** Tall enough for figures written by hand. */
const WRITTEN = 8;
/** Tables and lists of facts that are shorter stay on one page. [mm] */
export const KEPT = 70;

interface Row {
  cells: string[][];
  height: number;
}

function rowOf(flow: Flow, columns: Column[], cells: string[], least: number): Row {
  const wrapped = cells.map((cell, i) => flow.wrap(cell, columns[i].share * flow.width - 2 * PAD, TYPE.body));
  const lines = Math.max(1, ...wrapped.map((c) => c.length));
  return { cells: wrapped, height: Math.max(least, lines * lineHeight(TYPE.body) + PAD) };
}

function rowsOf(flow: Flow, { columns, rows }: Table): { head: Row; body: Row[] } {
  const least = columns.some(({ box }) => box === 'write') ? WRITTEN : 0;
  return {
    head: rowOf(
      flow,
      columns,
      columns.map(({ head }) => head),
      0,
    ),
    body: rows.map((cells) => rowOf(flow, columns, cells, least)),
  };
}

const sum = (rows: Row[]) => rows.reduce((total, { height }) => total + height, 0);

/** Height that must be left for a table to begin on a page. [mm] */
export function leastOfTable(flow: Flow, table: Table): number {
  const { head, body } = rowsOf(flow, table);
  const whole = head.height + sum(body);
  return whole <= KEPT ? whole : head.height + sum(body.slice(0, 2));
}

/** Rows down the pages, the head again on each. */
export function printTable(flow: Flow, table: Table): void {
  const { head, body } = rowsOf(flow, table);
  const begin = () => {
    printRow(flow, table.columns, head, false);
    rule(flow, flow.y, 0.4);
  };
  begin();
  for (const row of body) {
    if (flow.room(row.height)) begin();
    printRow(flow, table.columns, row, true);
    rule(flow, flow.y, 0.1);
  }
}

function printRow(flow: Flow, columns: Column[], { cells, height }: Row, framed: boolean): void {
  let x = MARGIN;
  columns.forEach(({ share, align, box }, i) => {
    const width = share * flow.width;
    const top = flow.y + (height - cells[i].length * lineHeight(TYPE.body)) / 2;
    cells[i].forEach((line, k) => {
      const left = align === 'right' ? x + width - PAD - flow.measure(line, TYPE.body) : x + PAD;
      flow.write([line], left, top + k * lineHeight(TYPE.body), TYPE.body);
    });
    if (framed && box) frame(flow, x, flow.y, width, height);
    x += width;
  });
  flow.y += height;
}
