import type { Results } from '../chain/results';
import { workingsOf, type WorkingGroup } from '../chain/workings';
import { standingCautions } from '../controller/cautions';
import { serializeDesign } from '../design/serialize';
import type { Design } from '../design/schema';
import { row, sign, symbol, upright, type Notation } from '../notation';
import { choiceWord, entryQuantities, quantityAt } from '../quantities';
import { workingLines, type Working } from '../working';
import { bySeverity } from './build';
import type { EntriesBlock, ReportDocument, WorkingBlock } from './document';
import { nb } from './figures';
import { machineLine } from './machine-facts';
import { shown } from './shown';
import { traceOf } from './trace';

const ABOUT =
  'How each number of this design comes about, in the order in which the power flows. Under each result stand its formula, the same with ' +
  'this design’s numbers, what the model leaves out, and its source. Where a result is summed, integrated or found by trial, a check that it must meet stands ' +
  'in place of the formula. Numbers are rounded to four figures for print and not in the calculation. It is no proof of safety: local electrical codes ' +
  'and licensed practice come first.';

/** Every working of a design on paper, for somebody who wants to follow or to check it. Cautions come first. */
export function calculationReport(design: Design, results: Results): ReportDocument {
  return {
    title: `${design.title || 'Untitled machine'}: calculation report`,
    machine: machineLine(design, results),
    trace: traceOf(serializeDesign(design)),
    blocks: [
      { kind: 'text', text: ABOUT },
      { kind: 'heading', text: 'Cautions' },
      { kind: 'cautions', cautions: bySeverity([...results.cautions, ...standingCautions]) },
      ...workingsOf(design, results).flatMap((group) => groupBlocks(design, results, group)),
    ],
  };
}

function groupBlocks(design: Design, results: Results, { title, workings }: WorkingGroup): ReportDocument['blocks'] {
  const entries = Object.keys(entryQuantities).filter((path) => workings.some((working) => dependsOn(working, path)));
  const rows = entries.flatMap((path) => entryRow(design, path));
  return [{ kind: 'heading', text: title }, { kind: 'entries', rows }, ...workings.map((working) => workingBlock(results, working))];
}

/** An entry counts by itself, or as a part of one that is a choice with parts of its own. */
function dependsOn(working: Working, path: string): boolean {
  const named = [...(working.from ?? []), ...workingLines(working, shown).terms.flatMap((term) => term.path ?? [])];
  return named.some((name) => path === name || path.startsWith(`${name}.`));
}

function entryRow(design: Design, path: string): EntriesBlock['rows'] {
  const { label, symbol: letter = '', unit } = quantityAt(path);
  const value = valueAt(design, path);
  if (typeof value === 'number') return [{ label, symbol: letter, value: shown(value, unit) }];
  const word = typeof value === 'object' && value !== null && 'kind' in value ? value.kind : value;
  return typeof word === 'string' ? [{ label, symbol: '', value: choiceWord(word) }] : [];
}

function workingBlock(results: Results, working: Working): WorkingBlock {
  const { label, symbol: letter = '', unit } = quantityAt(working.result);
  const { law, symbols, numbers, check, terms } = workingLines(working, shown);
  const lines = [
    { says: 'Law', line: law },
    { says: 'Formula', line: symbols },
    { says: 'Numbers', line: numbers },
    { says: 'Check', line: check?.symbols },
    { says: 'Numbers', line: check?.numbers },
  ];
  const others = terms.filter((term) => term.symbol !== letter);
  return {
    kind: 'working',
    label,
    symbol: letter,
    value: valueText(valueAt(results, working.result), unit),
    lines: lines.flatMap(({ says, line }) => (line ? [{ says, line }] : [])),
    ...(others.length > 0 && {
      where: row(...others.flatMap(({ symbol: of, name }, i) => namedSymbol(of, name, i === others.length - 1))),
    }),
    notes: [
      ...(working.method ? [working.method] : []),
      ...(check
        ? [`Check: ${check.says}${check.holds ? '' : ' It does not hold here: this design is past what the model can tell.'}`]
        : []),
      `Limits: ${working.limits}`,
      `Source: ${working.source}`,
    ],
  };
}

/** Abbreviations keep their capitals. */
const inSentence = (name: string) => (/^[A-Z][A-Z]/.test(name) ? name : `${name.charAt(0).toLowerCase()}${name.slice(1)}`);

const namedSymbol = (of: string, name: string, isLast: boolean): Notation[] => [
  row(symbol(of), upright(`${nb}${inSentence(name)}`)),
  ...(isLast ? [] : [sign(';')]),
];

function valueText(value: unknown, unit: Parameters<typeof shown>[1]): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' ? shown(value, unit) : 'none';
}

const valueAt = (root: unknown, path: string) =>
  path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], root);
