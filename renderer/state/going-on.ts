import type { Design } from '../../core';
import { withValueAt } from '../path';
import { asEntered } from '../reading';

/**
 * The design that comes next if a key is held down: one number has moved twice by the same amount, and nothing else has.
 * Worked out while the solver waits, it is there when the key repeats.
 */
export function goingOn(before: Design, then: Design, now: Design): Design | undefined {
  const [first, second] = [moved(before, then), moved(then, now)];
  if (!first || !second || first.path !== second.path || asEntered(first.to - first.from) !== asEntered(second.to - second.from))
    return undefined;
  return withValueAt(now, second.path, asEntered(2 * second.to - second.from));
}

interface Move {
  path: string;
  from: number;
  to: number;
}

/** The one number in which two designs differ. */
function moved(from: object, to: object): Move | undefined {
  const moves = differences(from, to, '');
  return moves.length === 1 ? moves[0] : undefined;
}

/** What differs, by path; anything but a number counts as NaN. */
function differences(from: unknown, to: unknown, path: string): Move[] {
  if (Object.is(from, to)) return [];
  if (!isRecord(from) || !isRecord(to)) return [{ path, from: asNumber(from), to: asNumber(to) }];
  const keys = new Set([...Object.keys(from), ...Object.keys(to)]);
  return [...keys].flatMap((key) => differences(from[key], to[key], path === '' ? key : `${path}.${key}`));
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);
const asNumber = (value: unknown) => (typeof value === 'number' ? value : NaN);
