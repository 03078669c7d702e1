import { z } from 'zod';
import { entryMeta, type EntryMeta } from '../entries';
import { designSchema, type Design } from './schema';

/** What a form needs of one entry. */
export interface FormEntry {
  optional: boolean;
  /** Range and default, for a number. */
  number?: EntryMeta;
  /** Allowed words, for a choice or for the kind of a union. */
  choices?: string[];
  text?: boolean;
  /** A whole section that may be left out. */
  section?: boolean;
}

/**
 * The entry at a dotted path, as in `magnets.shape.radial`. Below a union the design says which branch holds.
 *
 * @returns undefined where the design has no such entry.
 */
export function entryAt(path: string, design: Design): FormEntry | undefined {
  let schema: z.ZodType = designSchema;
  let value: unknown = design;
  let optional = false;
  for (const key of path.split('.')) {
    const object = branch(unwrapped(schema).schema, value);
    if (!object) return undefined;
    const next = object.shape[key] as z.ZodType | undefined;
    if (!next) return undefined;
    if (key === 'kind') {
      const union = unwrapped(schema).schema;
      if (union instanceof z.ZodDiscriminatedUnion) return { optional: false, choices: kindsOf(union) };
    }
    optional = unwrapped(next).optional;
    schema = next;
    value = (value as Record<string, unknown> | undefined)?.[key];
  }
  const inner = unwrapped(schema).schema;
  if (inner instanceof z.ZodEnum) return { optional, choices: inner.options.map(String) };
  if (inner instanceof z.ZodDiscriminatedUnion) return { optional, choices: kindsOf(inner) };
  if (inner instanceof z.ZodString) return { optional, text: true };
  if (inner instanceof z.ZodObject && optional) return { optional, section: true };
  const number = entryMeta(inner);
  return number ? { optional, number } : undefined;
}

/** A fresh object for the union at `path` when its kind changes: defaults throughout. */
export function kindDefaults(path: string, kind: string): unknown {
  const schema = path.split('.').reduce<z.ZodType>((at, key) => {
    const object = unwrapped(at).schema;
    if (!(object instanceof z.ZodObject)) throw new Error(`${path} is not an entry of a design`);
    return object.shape[key] as z.ZodType;
  }, designSchema);
  const union = unwrapped(schema).schema;
  if (!(union instanceof z.ZodDiscriminatedUnion)) throw new Error(`${path} has no kinds`);
  const option = (union.options as z.ZodObject[]).find((o) => kindOf(o) === kind);
  if (!option) throw new Error(`${path}.kind must be one of ${kindsOf(union).join(', ')}; received ${kind}`);
  return defaultsOf(option);
}

/** A section's defaults, as in `sectionDefaults('controller')`. */
export function sectionDefaults(section: keyof Design): unknown {
  return defaultsOf(designSchema.shape[section]);
}

/** The design a blank start opens with: every entry at its default. */
export function blankDesign(): Design {
  const design = defaultsOf(designSchema) as Design;
  return {
    ...design,
    title: 'Untitled machine',
    magnets: { ...design.magnets, grade: 'N42', intrinsicCoercivity: 955e3 },
    discs: { ...design.discs, backing: { kind: 'steel', thickness: 0.008 } },
    winding: { ...design.winding, layout: kindDefaults('winding.layout', 'concentrated') as Design['winding']['layout'] },
    load: { ...(design.load as Extract<Design['load'], { kind: 'battery' }>), chemistry: 'flooded' },
  };
}

function defaultsOf(schema: z.ZodType): unknown {
  const { schema: inner } = unwrapped(schema);
  const number = entryMeta(inner);
  if (number) return number.default;
  if (inner instanceof z.ZodObject)
    return Object.fromEntries(
      Object.entries(inner.shape as Record<string, z.ZodType>)
        .filter(([, child]) => !unwrapped(child).optional)
        .map(([key, child]) => [key, defaultsOf(child)]),
    );
  if (inner instanceof z.ZodDiscriminatedUnion) return defaultsOf(inner.options[0] as z.ZodType);
  if (inner instanceof z.ZodEnum) return inner.options[0];
  if (inner instanceof z.ZodLiteral) return inner.value;
  if (inner instanceof z.ZodString) return '';
  throw new Error('an entry without a default');
}

function unwrapped(schema: z.ZodType): { schema: z.ZodType; optional: boolean } {
  return schema instanceof z.ZodOptional ? { schema: schema.unwrap() as z.ZodType, optional: true } : { schema, optional: false };
}

function branch(schema: z.ZodType, value: unknown): z.ZodObject | undefined {
  if (schema instanceof z.ZodObject) return schema;
  if (!(schema instanceof z.ZodDiscriminatedUnion)) return undefined;
  const kind = (value as { kind?: unknown } | undefined)?.kind;
  return (schema.options as z.ZodObject[]).find((option) => kindOf(option) === kind);
}

const kindOf = (option: z.ZodObject) => (option.shape.kind as z.ZodLiteral).value;
const kindsOf = (union: z.ZodDiscriminatedUnion) => (union.options as z.ZodObject[]).map((o) => String(kindOf(o)));
