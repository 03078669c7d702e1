import type { UnitKind } from './quantities';

/** A number inside a message: SI for whoever shows it in other units, and the words used here. */
export interface Measured {
  value: number;
  unit: UnitKind;
  text: string;
}

/** What is said to a reader; with `parts`, a screen can say it in the reader's own units. */
export interface Words {
  message: string;
  parts?: (string | Measured)[];
}

/** Something that makes a design unusable: which entry, what was received, what would be possible. */
export interface Problem extends Words {
  /** Path of the design entry, as in `discs.poles`. Empty when the whole text is at fault. */
  where: string;
}

/** Something a builder must know about a design that can be worked out. */
export interface Caution extends Words {
  severity: 'note' | 'warning' | 'danger';
  /** Path of the design entry to look at first, as in `winding.turns`. */
  where: string;
}

/** Words with measured numbers, or other such words, among them, as in told`must be more than ${mm(0.04)}`. */
export function told(strings: TemplateStringsArray, ...values: (string | number | Measured | Words)[]): Words {
  const parts = strings.flatMap((words, i) => {
    const value = values[i] ?? '';
    if (typeof value === 'object' && 'message' in value) return [words, ...(value.parts ?? [value.message])];
    return [words, typeof value === 'number' ? String(value) : value];
  });
  const message = parts.map((part) => (typeof part === 'string' ? part : part.text)).join('');
  return parts.every((part) => typeof part === 'string') ? { message } : { message, parts };
}

/** A length told in millimetres. [m] */
export const inMm = (metres: number, text: string): Measured => ({ value: metres, unit: 'length', text: `${text} mm` });

/** A design that cannot be worked out. Only `design/` and the chain's own geometry checks throw it. */
export class DesignError extends Error {
  constructor(readonly problems: Problem[]) {
    super(problems.map((p) => (p.where ? `${p.where}: ${p.message}` : p.message)).join('; '));
    this.name = 'DesignError';
  }
}
