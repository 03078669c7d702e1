import { awgGauges, type UnitKind } from '../core';
import { entryUnit, unitsOf, type Unit, type UnitPreferences } from './units';

export type Parsed = { ok: true; value: number } | { ok: false; message: string };

const plain: Unit = { factor: 1 };

const number = String.raw`\d+(?:[.,]\d*)?|[.,]\d+`;
const fraction = new RegExp(String.raw`^(?:(\d+)\s+)?(\d+)\s*/\s*(\d+)`);

/** Reads "1.2mm", "3/8 in", "1 3/8", "12+0.5", "2*3", "14 AWG"; a term without its own unit takes the last one written, or the box's. */
export function parse(text: string, kind: UnitKind, preferences: UnitPreferences): Parsed {
  if (kind === 'wireDiameter' && /awg/i.test(text)) return gaugeOf(text);
  const terms = termsOf(text.replaceAll('−', '-').replaceAll('–', '-').trim());
  if (!terms) return { ok: false, message: text.trim() === '' ? 'A number is needed here.' : `“${text.trim()}” is not a number.` };
  const written = terms.findLast((t) => t.unit !== '')?.unit ?? entryUnit(kind, preferences);
  const units: Unit[] = [];
  for (const term of terms) {
    const name = spelling(term.unit || written, kind);
    if (name === undefined) return { ok: false, message: `“${term.unit || written}” is not a unit for this; try ${suggestion(kind)}.` };
    units.push(unitsOf(kind)[name] ?? plain);
  }
  const first = units[0] ?? plain;
  if (units.some((u) => (u.offset ?? 0) !== (first.offset ?? 0))) return { ok: false, message: 'Two temperature scales cannot be added.' };
  const value = terms.reduce((sum, term, i) => sum + term.value * (units[i] ?? first).factor, first.offset ?? 0);
  return Number.isFinite(value) ? { ok: true, value: asEntered(value) } : { ok: false, message: `“${text.trim()}” is not a number.` };
}

/** Twelve digits of a number: what sums and units leave behind them nobody entered, and it reads badly in the file. */
export const asEntered = (value: number): number => Number(value.toPrecision(12));

function spelling(name: string, kind: UnitKind): string | undefined {
  const names = Object.keys(unitsOf(kind));
  return names.find((n) => n === name) ?? names.find((n) => n.toLowerCase() === name.toLowerCase());
}

const suggestion = (kind: UnitKind) =>
  Object.keys(unitsOf(kind))
    .slice(0, 4)
    .map((n) => n || 'a plain number')
    .join(', ');

interface Term {
  value: number;
  unit: string;
}

function termsOf(text: string): Term[] | undefined {
  const terms: Term[] = [];
  let rest = text;
  while (rest !== '') {
    const sign = /^[+-]/.exec(rest)?.[0];
    if (sign === undefined && terms.length > 0) return undefined;
    rest = rest.slice(sign ? 1 : 0).trimStart();
    const product = productOf(rest);
    if (!product) return undefined;
    const unit = /^[^\d\s.,+*-][^+*-]*|^/.exec(product.rest)?.[0] ?? '';
    terms.push({ value: (sign === '-' ? -1 : 1) * product.value, unit: unit.trim() });
    rest = product.rest.slice(unit.length).trimStart();
  }
  return terms.length > 0 ? terms : undefined;
}

function productOf(text: string): { value: number; rest: string } | undefined {
  const mixed = fraction.exec(text);
  if (mixed && Number(mixed[3]) !== 0) {
    const value = Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
    return { value, rest: text.slice(mixed[0].length).trimStart() };
  }
  const read = (from: string) => new RegExp(`^(?:${number})(?:e[+-]?\\d+)?`, 'i').exec(from)?.[0];
  const head = read(text);
  if (head === undefined) return undefined;
  let value = Number(head.replace(',', '.'));
  let rest = text.slice(head.length).trimStart();
  for (let operator = /^[*×/]\s*(?=[\d.,])/.exec(rest); operator; operator = /^[*×/]\s*(?=[\d.,])/.exec(rest)) {
    rest = rest.slice(operator[0].length);
    const next = read(rest);
    if (next === undefined) return undefined;
    value = operator[0].startsWith('/') ? value / Number(next.replace(',', '.')) : value * Number(next.replace(',', '.'));
    rest = rest.slice(next.length).trimStart();
  }
  return { value, rest };
}

/** A wire's bare diameter by its gauge number, as in "14 AWG". */
function gaugeOf(text: string): Parsed {
  const number = /^\s*(\d+)\s*awg\s*$/i.exec(text)?.[1] ?? /^\s*awg\s*(\d+)\s*$/i.exec(text)?.[1];
  const gauge = awgGauges.find(({ label }) => label === `${Number(number)} AWG`);
  if (gauge) return { ok: true, value: gauge.conductorDiameter };
  return { ok: false, message: `“${text.trim()}” is not a gauge in the table: ${awgGauges[0]?.label} to ${awgGauges.at(-1)?.label}.` };
}
