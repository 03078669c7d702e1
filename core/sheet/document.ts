import type { Notation } from '../notation';
import type { Caution } from '../problem';
import type { Drawing } from './drawing';

export interface Column {
  head: string;
  /** Share of the page's width. */
  share: number;
  align?: 'right';
  /** Cells are framed: to be ticked, or written in by hand and so taller. */
  box?: 'tick' | 'write';
}

/** What the winding sheet is made of, before anybody knows the paper. */
export type Block =
  /** `newPage` for what stands overleaf. */
  | { kind: 'heading'; text: string; newPage?: boolean }
  | { kind: 'text'; text: string }
  /** Names and values; `large` for what is looked up with both hands full. */
  | { kind: 'facts'; rows: [name: string, value: string][]; large?: boolean }
  | { kind: 'table'; columns: Column[]; rows: string[][] }
  | { kind: 'drawing'; drawing: Drawing }
  /** Numbered, each with a box to tick. */
  | { kind: 'steps'; steps: string[] }
  | { kind: 'cautions'; cautions: Caution[] };

/** One result of the calculation report and how it comes about. */
export interface WorkingBlock {
  kind: 'working';
  label: string;
  symbol: string;
  value: string;
  /** Lines of mathematics, each under a word that says what it is. */
  lines: { says: string; line: Notation }[];
  /** Names of the symbols. */
  where?: Notation;
  notes: string[];
}

/** Entries of the design that results depend on. */
export interface EntriesBlock {
  kind: 'entries';
  rows: { label: string; symbol: string; value: string }[];
}

export interface ReportDocument extends Omit<SheetDocument, 'blocks'> {
  blocks: (Block | EntriesBlock | WorkingBlock)[];
}

export interface SheetDocument {
  title: string;
  /** The machine in a line. */
  machine: string;
  /** Eight hexadecimal digits that change with any entry of the design. */
  trace: string;
  blocks: Block[];
}
