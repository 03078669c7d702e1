import { useEffect, useEffectEvent, useState, type KeyboardEvent } from 'react';
import type { Quantity } from '../../core';
import { parse } from '../reading';
import { entryStep, entryText, entryUnit } from '../units';
import { useScrub, type StepKeys } from './scrub';
import { useUnits } from './unit-preferences';

export interface NumberRange {
  min: number;
  max: number;
  whole?: 'any' | 'even';
}

export interface QuantityTextOptions {
  quantity: Quantity;
  range: NumberRange;
  value: number | undefined;
  /** May be left empty; then `onChange(undefined)`. */
  optional?: boolean;
  /** What the owner keeps of `onFault`; when it is dropped the text goes back to the value. */
  fault: string | undefined;
  onChange: (value: number | undefined) => void;
  /** What is wrong with the text in the box, or null; the value stays as it was. */
  onFault: (message: string | null) => void;
  /** The box was left: the next change is another step. */
  onSettle: () => void;
}

/** The text of a number's box: kept as typed, its value following every usable keystroke. */
export function useQuantityText({ quantity, range, value, optional = false, fault, onChange, onFault, onSettle }: QuantityTextOptions) {
  const units = useUnits();
  const unit = entryUnit(quantity.unit, units);
  const stored = value === undefined ? '' : entryText(value, quantity.unit, units);
  // The text belongs to one stored value in one unit; when either changes from outside, it starts anew.
  const [typed, setTyped] = useState({ text: stored, value, unit, isFaulty: false });
  const isCurrent = Object.is(typed.value, value) && typed.unit === unit && (!typed.isFaulty || fault !== undefined);
  const reset = () => setTyped({ text: stored, value, unit, isFaulty: false });
  const forget = useEffectEvent(() => onFault(null));
  useEffect(() => () => forget(), []);

  const spelled = (v: number) => `${entryText(v, quantity.unit, units)} ${unit}`.trim();
  const span = `${spelled(range.min)} to ${spelled(range.max)}`;
  const read = (text: string): { value?: number; error: string | null } => {
    if (text.trim() === '' && optional) return { error: null };
    const parsed = parse(text, quantity.unit, units);
    if (!parsed.ok) return { error: `${parsed.message} It takes ${span}.` };
    const error = rangeError(parsed.value, range, spelled);
    return error === null ? { value: parsed.value, error } : { error };
  };
  const take = (text: string) => {
    const got = read(text);
    setTyped({ text, value: got.error === null ? got.value : value, unit, isFaulty: got.error !== null });
    onFault(got.error);
    if (got.error === null && !Object.is(got.value, value)) onChange(got.value);
  };
  const step = (from: number, steps: number, { shiftKey, altKey }: StepKeys, base = from) => {
    const size = shiftKey ? 10 : altKey ? 0.1 : 1;
    const whole = Math.max(1, size) * (range.whole === 'even' ? 2 : 1);
    const one = range.whole ? whole : size * entryStep(base, quantity.unit, units);
    const next = Math.min(range.max, Math.max(range.min, from + steps * one));
    take(entryText(next, quantity.unit, units));
    return next;
  };
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Enter') leave();
    if (event.key === 'Escape') {
      reset();
      onFault(null);
    }
    if ((event.key !== 'ArrowUp' && event.key !== 'ArrowDown') || value === undefined) return;
    event.preventDefault();
    step(value, event.key === 'ArrowUp' ? 1 : -1, event);
  };
  const leave = () => {
    if (fault === undefined) reset();
    onSettle();
  };
  const scrub = useScrub(value, step, onSettle);
  return {
    text: isCurrent ? typed.text : stored,
    error: isCurrent && typed.isFaulty ? (fault ?? null) : null,
    unit,
    /** What the box takes, as in "0.5 mm to 50 mm". */
    span,
    take,
    press,
    leave,
    scrub,
  };
}

/** What is out of range, in the user's units, or null. */
export function rangeError(value: number, range: NumberRange, shown: (value: number) => string): string | null {
  if (value < range.min || value > range.max)
    return `Must be between ${shown(range.min)} and ${shown(range.max)}; this is ${shown(value)}.`;
  const every = range.whole === 'even' ? 2 : 1;
  if (!range.whole || value % every === 0) return null;
  const below = every * Math.floor(value / every);
  const near = [below, below + every].filter((v) => v >= range.min && v <= range.max).map(shown);
  return `Must be ${every === 2 ? 'an even' : 'a whole'} number, such as ${near.join(' or ')}; this is ${shown(value)}.`;
}
