import type { UnitKind } from './quantities';

/** A quantity in a formula: what it is called, its value and the place where it is set or worked out. */
export interface Term {
  kind: 'term';
  /** As in `B_r20`: what follows the underscore is set below the line. */
  symbol: string;
  name: string;
  /** SI; temperatures in °C. */
  value: number;
  unit: UnitKind;
  /** Design entry or result it comes from; none for a value found on the way. */
  path?: string;
}

/** A formula that can be worked out as well as read: what is shown is what is computed. Plain data, so that it crosses to a worker. */
export type Formula =
  | Term
  | { kind: 'number'; value: number; unit: UnitKind; text?: string }
  | { kind: 'sum'; parts: Formula[] }
  | { kind: 'negative'; of: Formula }
  | { kind: 'product'; parts: Formula[] }
  | { kind: 'quotient'; over: Formula; under: Formula }
  | { kind: 'power'; of: Formula; exponent: number }
  | { kind: 'root'; of: Formula }
  | { kind: 'apply'; name: keyof typeof functions; of: Formula[] };

const functions = {
  max: (...of: number[]) => Math.max(...of),
  min: (...of: number[]) => Math.min(...of),
  cos: Math.cos,
  /** A whole number must not be lost to rounding. */
  floor: (of: number) => Math.floor(of + 1e-9),
} as const;

type Operand = Formula | number;
const operand = (of: Operand): Formula => (typeof of === 'number' ? { kind: 'number', value: of, unit: 'count' } : of);

export const PI: Formula = { kind: 'number', value: Math.PI, unit: 'count', text: 'π' };
export const fixed = (value: number, unit: UnitKind): Formula => ({ kind: 'number', value, unit });
export const plus = (...parts: Operand[]): Formula => ({ kind: 'sum', parts: parts.map(operand) });
export const negative = (of: Operand): Formula => ({ kind: 'negative', of: operand(of) });
export const minus = (first: Operand, ...rest: Operand[]): Formula => plus(first, ...rest.map(negative));
export const times = (...parts: Operand[]): Formula => ({ kind: 'product', parts: parts.map(operand) });
export const over = (above: Operand, below: Operand): Formula => ({ kind: 'quotient', over: operand(above), under: operand(below) });
export const power = (of: Operand, exponent: number): Formula => ({ kind: 'power', of: operand(of), exponent });
export const squared = (of: Operand): Formula => power(of, 2);
export const root = (of: Operand): Formula => ({ kind: 'root', of: operand(of) });
export const greatest = (...of: Operand[]): Formula => ({ kind: 'apply', name: 'max', of: of.map(operand) });
export const least = (...of: Operand[]): Formula => ({ kind: 'apply', name: 'min', of: of.map(operand) });
export const cosine = (of: Operand): Formula => ({ kind: 'apply', name: 'cos', of: [operand(of)] });
export const floor = (of: Operand): Formula => ({ kind: 'apply', name: 'floor', of: [operand(of)] });
/** The same, with the floor of nothing shown only where it is met. */
export const notBelowZero = (of: Formula): Formula => (evaluate(of) < 0 ? greatest(0, of) : of);

/** What a formula comes to; `valueOf` tells each term's value, its own unless told otherwise. SI. */
export function evaluate(formula: Formula, valueOf: (term: Term) => number = ({ value }) => value): number {
  const of = (part: Formula) => evaluate(part, valueOf);
  switch (formula.kind) {
    case 'term':
      return valueOf(formula);
    case 'number':
      return formula.value;
    case 'sum':
      return formula.parts.reduce((sum, part) => sum + of(part), 0);
    case 'negative':
      return -of(formula.of);
    case 'product':
      return formula.parts.reduce((product, part) => product * of(part), 1);
    case 'quotient':
      return of(formula.over) / of(formula.under);
    case 'power':
      return of(formula.of) ** formula.exponent;
    case 'root':
      return Math.sqrt(of(formula.of));
    case 'apply':
      return applied(formula.name, formula.of.map(of));
  }
}

const applied = (name: keyof typeof functions, values: number[]) => functions[name](...(values as [number]));

/** The terms of a formula in the order in which they stand, each symbol once. */
export function termsOf(formula: Formula): Term[] {
  const all = partsOf(formula).flatMap(termsOf);
  const terms = formula.kind === 'term' ? [formula] : all;
  return terms.filter(({ symbol }, i) => terms.findIndex((term) => term.symbol === symbol) === i);
}

function partsOf(formula: Formula): Formula[] {
  switch (formula.kind) {
    case 'term':
    case 'number':
      return [];
    case 'sum':
    case 'product':
      return formula.parts;
    case 'quotient':
      return [formula.over, formula.under];
    case 'apply':
      return formula.of;
    default:
      return [formula.of];
  }
}
