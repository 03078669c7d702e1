import type { Formula } from './formula';
import type { UnitKind } from './quantities';

/** Mathematics as it stands on a page, before anybody knows the page: MathML on screen, strokes and letters on paper, or plain text. */
export type Notation =
  /** A quantity, as in `B_r20`. */
  | { kind: 'symbol'; text: string }
  /** A number with its unit, or the name of a function. */
  | { kind: 'upright'; text: string }
  | { kind: 'sign'; text: string }
  | { kind: 'row'; parts: Notation[] }
  | { kind: 'fraction'; over: Notation; under: Notation }
  | { kind: 'raised'; of: Notation; exponent: Notation }
  | { kind: 'root'; of: Notation }
  | { kind: 'bracket'; of: Notation }
  /** ∫, Σ or max, with what stands below and above it. */
  | { kind: 'large'; sign: string; below?: Notation; above?: Notation };

export const symbol = (text: string): Notation => ({ kind: 'symbol', text });
export const upright = (text: string): Notation => ({ kind: 'upright', text });
export const sign = (text: string): Notation => ({ kind: 'sign', text });
export const row = (...parts: Notation[]): Notation => ({ kind: 'row', parts });
const fraction = (over: Notation, under: Notation): Notation => ({ kind: 'fraction', over, under });
const bracket = (of: Notation): Notation => ({ kind: 'bracket', of });

/**
 * Notation from a line whose parts stand with a space between them, so that a law reads in the source as on paper: `b_1 = { 2 / π } · ∫_0^π B_z · cos θ · d θ`.
 * Braces hold parts together, a stroke in them makes a fraction, `√{` a root; round brackets are as tall as what they hold; `^` raises.
 */
export function written(line: string): Notation {
  const words = line.split(' ');
  /** Up to the mark that ends it, and what that mark is raised to. */
  const group = (): { of: Notation; exponent?: string } => {
    const sides: Notation[][] = [[]];
    let word = words.shift();
    for (; word !== undefined && !/^[})]/.test(word); word = words.shift()) {
      if (word === '/') sides.push([]);
      else sides[sides.length - 1].push(part(word));
    }
    const [above, below] = sides.map((parts) => (parts.length === 1 ? parts[0] : row(...parts)));
    return { of: below ? fraction(above, below) : above, exponent: word?.split('^')[1] };
  };
  const part = (word: string): Notation => {
    if (word === '{') return group().of;
    if (word === '√{') return { kind: 'root', of: group().of };
    if (word !== '(') return single(word);
    const { of, exponent } = group();
    return exponent ? { kind: 'raised', of: bracket(of), exponent: single(exponent) } : bracket(of);
  };
  return group().of;
}

function single(word: string): Notation {
  const [, mark, below, above] = /^([∫Σ]|max)(?:_([^^]+))?(?:\^(.+))?$/.exec(word) ?? [];
  if (mark) return { kind: 'large', sign: mark, ...(below && { below: single(below) }), ...(above && { above: single(above) }) };
  const [, of, exponent] = /^(.+)\^(.+)$/.exec(word) ?? [];
  if (of) return { kind: 'raised', of: single(of), exponent: single(exponent) };
  if (/^[=+−·≈≤≥|,]$/.test(word)) return sign(word);
  const [, left, between, right] = /^([^+−]+)([+−])(.+)$/.exec(word) ?? [];
  if (left) return row(single(left), sign(between), single(right));
  return /^[0-9.]+$|^(?:sin|cos|tanh|sech|exp|d)$/.test(word) ? upright(word) : symbol(word);
}

/** Text of a value, as in "12.50 mm". SI in, the reader's unit out. */
export type Show = (value: number, unit: UnitKind) => string;

/** How a term or a plain number is written, in a place that asks a part to hold together so tightly. */
type Leaf = (of: Extract<Formula, { kind: 'term' | 'number' }>, needed: number) => Notation;

/** A formula in its symbols; what is a number in every design stays one. */
export const inSymbols = (formula: Formula, show: Show): Notation =>
  laid(formula, 0, (of, needed) => (of.kind === 'term' ? symbol(of.symbol) : figures(of, needed, show)));

/** The same with the numbers in it. */
export const inNumbers = (formula: Formula, show: Show): Notation => laid(formula, 0, (of, needed) => figures(of, needed, show));

/** How tightly parts hold together: a part that holds less than its place asks is put in brackets. */
const HOLD = { sum: 1, negative: 2, product: 3, tight: 4 };

/** A number is put in brackets where its sign or its unit would be misread. */
const figures = (of: Parameters<Leaf>[0], needed: number, show: Show): Notation => {
  const text = of.kind === 'number' && of.text !== undefined ? of.text : show(of.value, of.unit);
  const loose = (text.startsWith('−') && needed > HOLD.sum) || (needed === HOLD.tight && !/^[\d.]+$|^π$/.test(text));
  return loose ? bracket(upright(text)) : upright(text);
};

function laid(formula: Formula, needed: number, leaf: Leaf): Notation {
  const within = (hold: number, notation: Notation) => (hold < needed ? bracket(notation) : notation);
  const lay = (part: Formula, hold: number) => laid(part, hold, leaf);
  switch (formula.kind) {
    case 'term':
    case 'number':
      return leaf(formula, needed);
    case 'sum':
      return within(HOLD.sum, row(...formula.parts.flatMap((part, i) => addend(part, i === 0, lay))));
    case 'negative':
      return within(HOLD.negative, row(sign('−'), lay(formula.of, HOLD.product)));
    case 'product':
      return within(
        HOLD.product,
        row(
          ...separated(
            '·',
            formula.parts.map((part) => lay(part, HOLD.product)),
          ),
        ),
      );
    case 'quotient':
      return within(HOLD.product, fraction(lay(formula.over, 0), lay(formula.under, 0)));
    case 'power':
      return { kind: 'raised', of: lay(formula.of, HOLD.tight), exponent: upright(String(formula.exponent)) };
    case 'root':
      return { kind: 'root', of: lay(formula.of, 0) };
    case 'apply': {
      const list = row(
        ...separated(
          ',',
          formula.of.map((part) => lay(part, 0)),
        ),
      );
      return formula.name === 'floor' ? row(sign('⌊'), list, sign('⌋')) : row(upright(formula.name), bracket(list));
    }
  }
}

function addend(part: Formula, isFirst: boolean, lay: (part: Formula, hold: number) => Notation): Notation[] {
  if (part.kind === 'negative') return [sign('−'), lay(part.of, HOLD.product)];
  return isFirst ? [lay(part, HOLD.sum)] : [sign('+'), lay(part, HOLD.negative)];
}

const separated = (by: string, parts: Notation[]) => parts.flatMap((part, i) => (i > 0 ? [sign(by), part] : [part]));

const BREAKS = /^[=≈≤≥>+−;]$/;

/** Where a line may be broken: before each sign but a dot, and after a semicolon, unless it stands within a fraction, a root or brackets. */
export function piecesOf(line: Notation): Notation[][] {
  const pieces: Notation[][] = [[]];
  let ended = false;
  for (const part of flat(line)) {
    const breaks = part.kind === 'sign' && BREAKS.test(part.text);
    const ends = breaks && part.text === ';';
    const last = pieces[pieces.length - 1];
    if (ended || (breaks && !ends && last.length > 0)) pieces.push([part]);
    else last.push(part);
    ended = ends;
  }
  return pieces;
}

const flat = (line: Notation): Notation[] => (line.kind === 'row' ? line.parts.flatMap(flat) : [line]);

/** In one line, as for a reader of plain text or a machine that speaks. */
export function plainText(notation: Notation): string {
  const grouped = (part: Notation) => {
    const text = plainText(part);
    return part.kind === 'row' && part.parts.length > 1 ? `(${text})` : text;
  };
  switch (notation.kind) {
    case 'symbol':
    case 'upright':
    case 'sign':
      return notation.text;
    case 'row':
      return notation.parts
        .map(plainText)
        .join(' ')
        .replace(/⌊ /g, '⌊')
        .replace(/ ([⌋,])/g, '$1');
    case 'fraction':
      return `${grouped(notation.over)} / ${grouped(notation.under)}`;
    case 'raised':
      return `${grouped(notation.of)}^${grouped(notation.exponent)}`;
    case 'root':
      return `√(${plainText(notation.of)})`;
    case 'bracket':
      return `(${plainText(notation.of)})`;
    case 'large': {
      const end = (mark: string, part?: Notation) => (part ? `${mark}${grouped(part)}` : '');
      return `${notation.sign}${end('_', notation.below)}${end('^', notation.above)}`;
    }
  }
}
