import { z } from 'zod';

/** What a form needs to know about one number of the design file. */
export interface EntryMeta {
  min: number;
  max: number;
  default: number;
  /** Whole numbers only; `even` steps by two. */
  whole?: 'any' | 'even';
}

type Spec = EntryMeta & { optional?: boolean };

/** A number of the design file with its greatest range and its default, SI units. Units and words are in `quantities.ts`. */
export function quantity(spec: Spec) {
  let schema = z.number({
    error: (issue) => `must be a number between ${spec.min} and ${spec.max}; received ${shown(issue.input)}`,
  });
  schema = schema.refine((v) => v >= spec.min && v <= spec.max, {
    error: (issue) => `must be between ${spec.min} and ${spec.max}; received ${shown(issue.input)}`,
    abort: true,
  });
  if (spec.whole) {
    const step = spec.whole === 'even' ? 2 : 1;
    schema = schema.refine((v) => Number.isInteger(v / step), {
      error: (issue) => `must be ${spec.whole === 'even' ? 'an even' : 'a whole'} number; received ${shown(issue.input)}`,
    });
  }
  return schema.meta({ entry: spec });
}

/** How a received value is written in an error: short, and never empty. What is nested is not written out, since it may be so without end. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'object' && value !== null) return Array.isArray(value) ? 'a list' : 'an object';
  const text = typeof value === 'number' ? String(value) : JSON.stringify(value);
  return text.length > 40 ? `${text.slice(0, 37)}…` : text;
}

/** The form data of a schema made by `quantity`, or undefined for another kind of entry. */
export function entryMeta(schema: z.core.$ZodType): EntryMeta | undefined {
  return (z.globalRegistry.get(schema) as { entry?: EntryMeta } | undefined)?.entry;
}
