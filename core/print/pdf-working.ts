import { row, sign, symbol, upright } from '../notation';
import type { EntriesBlock, WorkingBlock } from '../sheet/document';
import { baseOf, type Flow, lineHeight, MARGIN, rule, TYPE } from './page-flow';
import { formulaHeight, printFormula } from './pdf-formula';

const TITLE = 12;
/** What the lines are, in a narrow column at their left. */
const SAYS = 20;
const AFTER = 3;

/** Result and value, as the first line of a working says them. */
const headOf = ({ label, symbol: letter, value }: WorkingBlock) =>
  row(upright(label), ...(letter ? [sign(','), symbol(letter)] : []), sign('='), upright(value));

const whereOf = ({ where }: WorkingBlock) => where && row(upright('where '), where);

/** A working stays on one page, unless it is longer than one. [mm] */
export function leastOfWorking(flow: Flow, block: WorkingBlock): number {
  const width = flow.width - SAYS;
  const where = whereOf(block);
  const formulas = block.lines.reduce((sum, { line }) => sum + formulaHeight(flow, line, width, TYPE.body).height, 0);
  const names = where ? formulaHeight(flow, where, width, TYPE.small).height : 0;
  return lineHeight(TITLE) + 2 + formulas + names + notesOf(flow, block).length * lineHeight(TYPE.small);
}

const notesOf = (flow: Flow, { notes }: WorkingBlock) => notes.flatMap((note) => flow.wrap(note, flow.width - SAYS, TYPE.small));

/** A working down the page: result, formulas, names of the symbols, notes in small type. */
export function printWorking(flow: Flow, block: WorkingBlock): void {
  const width = flow.width - SAYS;
  rule(flow, flow.y, 0.1);
  flow.y += 1;
  printFormula(flow, headOf(block), MARGIN, flow.width, TITLE);
  for (const { says, line } of block.lines) {
    const { height, baseLine } = formulaHeight(flow, line, width, TYPE.body);
    flow.room(height);
    flow.write([says], MARGIN, flow.y + baseLine - baseOf(TYPE.small), TYPE.small);
    printFormula(flow, line, MARGIN + SAYS, width, TYPE.body);
  }
  const where = whereOf(block);
  if (where) printFormula(flow, where, MARGIN + SAYS, width, TYPE.small);
  for (const line of notesOf(flow, block)) {
    flow.room(lineHeight(TYPE.small));
    flow.y += flow.write([line], MARGIN + SAYS, flow.y, TYPE.small);
  }
  flow.y += AFTER;
}

/** Where the symbol and the value of an entry stand, as shares of the width. */
const ENTRY = { symbol: 0.5, value: 0.65 };
const entryHeight = lineHeight(TYPE.foot) + 0.8;

export const leastOfEntries = (_flow: Flow, { rows }: EntriesBlock): number => Math.min(rows.length, 4) * entryHeight;

/** Entries with symbol and value, one to a line. */
export function printEntries(flow: Flow, { rows }: EntriesBlock): void {
  for (const { label, symbol: letter, value } of rows) {
    flow.room(entryHeight);
    const top = flow.y;
    flow.write([label], MARGIN, top, TYPE.foot);
    flow.write([value], MARGIN + ENTRY.value * flow.width, top, TYPE.foot);
    flow.y += baseOf(TYPE.foot) - formulaHeight(flow, symbol(letter), flow.width / 4, TYPE.foot).baseLine;
    printFormula(flow, symbol(letter), MARGIN + ENTRY.symbol * flow.width, flow.width / 4, TYPE.foot);
    flow.y = top + entryHeight;
    rule(flow, flow.y - 0.4, 0.1);
  }
  flow.y += AFTER;
}
