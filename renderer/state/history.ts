/** One thing done: what it was called, and the whole state before it. Whole states are small and immutable, so no deltas. */
export interface Step<T> {
  name: string;
  state: T;
}

export interface History<T> {
  present: T;
  /** Last done last. */
  past: Step<T>[];
  /** Next to redo first. */
  future: Step<T>[];
  /** The box being typed in: steps with the same key merge into one. */
  merging?: string;
}

export const historyOf = <T>(present: T): History<T> => ({ present, past: [], future: [] });

/**
 * Does one thing. With the merge key of the step before, the two become one; a step that ends where it began is no step.
 *
 * @param name  Told where the step began, so that merged steps read "turns 60 → 64" and not "6 → 64".
 */
export function committed<T>(history: History<T>, next: T, name: (before: T) => string, merge?: string): History<T> {
  const last = history.past.at(-1);
  const merged = merge !== undefined && merge === history.merging && last !== undefined;
  const before = merged ? last.state : history.present;
  const past = merged ? history.past.slice(0, -1) : history.past;
  if (same(before, next)) return { present: before, past, future: merged ? [] : history.future };
  return { present: next, past: [...past, { name: name(before), state: before }], future: [], merging: merge };
}

/** Ends merging: the box was left. */
export const settled = <T>(history: History<T>): History<T> =>
  history.merging === undefined ? history : { ...history, merging: undefined };

export function undone<T>(history: History<T>): History<T> {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    present: step.state,
    past: history.past.slice(0, -1),
    future: [{ name: step.name, state: history.present }, ...history.future],
  };
}

export function redone<T>(history: History<T>): History<T> {
  const [step, ...future] = history.future;
  if (!step) return history;
  return { present: step.state, past: [...history.past, { name: step.name, state: history.present }], future };
}

const same = (a: unknown, b: unknown) => a === b || JSON.stringify(a) === JSON.stringify(b);
