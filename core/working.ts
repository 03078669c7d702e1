import { evaluate, termsOf, type Formula, type Term } from './formula';
import { inNumbers, inSymbols, row, sign, symbol, upright, type Notation, type Show } from './notation';
import { quantityAt, type EntryPath, type ResultPath, type UnitKind } from './quantities';

/** Something that must hold of a result that no closed formula gives; both sides can be worked out from what is known. */
export interface Check {
  /** What it says, in a few words. */
  says: string;
  left: Formula;
  sign: '≈' | '≤' | '≥' | '>';
  right: Formula;
  /** What both sides are. */
  unit: UnitKind;
  /** Greatest difference of the two sides for `≈`, as a share of the greater. */
  within?: number;
}

/** How one result comes about, shown when a reader opens the number. Either its formula gives it exactly, or a check holds it to account. */
export interface Working {
  /** As in `coils.phaseResistance`. */
  result: ResultPath;
  /** The general law, where a value is summed, integrated or found by trial. */
  law?: Notation;
  /** How it is worked out from the law, in a sentence. */
  method?: string;
  formula?: Formula;
  check?: Check;
  /** Entries and results that count beside those in the formula. */
  from?: (EntryPath | ResultPath)[];
  /** What the model leaves out, in a sentence. */
  limits: string;
  source: string;
}

/** Reads a design and its results into terms of formulas. */
export interface Given {
  entry: (path: EntryPath) => Term;
  result: (path: ResultPath) => Term;
}

/** A shaft speed is in rpm among the results by name, and in rad/s in every formula. */
const RPM = (2 * Math.PI) / 60;

export function givenBy(design: object, results: object): Given {
  const term = (root: object, path: string): Term => {
    const { symbol: letter = '', label: name, unit } = quantityAt(path);
    const value = numberAt(root, path);
    return { kind: 'term', symbol: letter, name, path, ...(unit === 'rpm' ? { value: value * RPM, unit: 'speed' } : { value, unit }) };
  };
  return { entry: (path) => term(design, path), result: (path) => term(results, path) };
}

function numberAt(root: object, path: string): number {
  const value = path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], root);
  if (typeof value !== 'number') throw new Error(`${path} is no number that a formula can take; received ${String(value)}`);
  return value;
}

/** A value found on the way, or a constant that `path` chooses. */
export const found = (letter: string, name: string, value: number, unit: UnitKind, path?: EntryPath | ResultPath): Term => ({
  kind: 'term',
  symbol: letter,
  name,
  value,
  unit,
  ...(path && { path }),
});

/** Whether a check is met. */
export function holds({ left, sign: relation, right, within = 0 }: Check): boolean {
  const [a, b] = [evaluate(left), evaluate(right)];
  const near = Math.abs(a - b) <= within * Math.max(Math.abs(a), Math.abs(b));
  return { '≈': near, '≤': a <= b, '≥': a >= b, '>': a > b }[relation];
}

export interface WorkingLines {
  /** The formula, or the law that stands for it. */
  law?: Notation;
  symbols?: Notation;
  numbers?: Notation;
  check?: { says: string; holds: boolean; symbols: Notation; numbers: Notation };
  terms: Term[];
}

/** The lines a reader sees, with values as `show` writes them. */
export function workingLines({ result, law, formula, check }: Working, show: Show): WorkingLines {
  const quantity = quantityAt(result);
  const letter = symbol(quantity.symbol ?? '');
  const unit = quantity.unit === 'rpm' ? 'speed' : quantity.unit;
  const answer = (of: Formula, kind: UnitKind) => upright(show(evaluate(of), kind));
  const isNamedAlike = formula?.kind === 'term' && formula.symbol === quantity.symbol;
  return {
    ...(law && { law }),
    ...(formula && {
      ...(!isNamedAlike && { symbols: row(letter, sign('='), inSymbols(formula, show)) }),
      numbers: row(letter, sign('='), inNumbers(formula, show), ...(isBare(formula) ? [] : [sign('='), answer(formula, unit)])),
    }),
    ...(check && {
      check: {
        says: check.says,
        holds: holds(check),
        symbols: row(inSymbols(check.left, show), sign(check.sign), inSymbols(check.right, show)),
        numbers: checkedNumbers(check, show),
      },
    }),
    terms: [formula, check?.left, check?.right].flatMap((of) => (of ? termsOf(of) : [])).filter(isFirst),
  };
}

/** Both sides in numbers, what each comes to in the middle. */
function checkedNumbers({ left, right, unit, sign: relation }: Check, show: Show): Notation {
  const answered = (of: Formula) =>
    isBare(of) ? [inNumbers(of, show)] : [inNumbers(of, show), sign('='), upright(show(evaluate(of), unit))];
  return row(...answered(left), sign(relation), ...answered(right).reverse());
}

const isBare = ({ kind }: Formula) => kind === 'term' || kind === 'number';
const isFirst = ({ symbol: letter }: Term, i: number, all: Term[]) => all.findIndex((term) => term.symbol === letter) === i;
