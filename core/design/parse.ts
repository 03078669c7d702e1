import type { z } from 'zod';
import { shown } from '../entries';
import type { Problem } from '../problem';
import { geometryProblems } from './geometry';
import { designSchema, type Design } from './schema';

/** A refused design is there all the same when each entry is sound and they only cannot stand together: it can be shown and put right. */
export type Parsed = { ok: true; design: Design } | { ok: false; problems: Problem[]; design?: Design };

/**
 * Reads the text of a design file.
 *
 * @param text  JSON as saved, with or without a byte-order mark.
 * @returns     The design, or every problem with the entry it concerns. Never throws.
 */
export function parseDesign(text: string): Parsed {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unreadable';
    return { ok: false, problems: [{ where: '', message: `the file is not whole JSON text (${reason.slice(0, 160)})` }] };
  }
  return readDesign(value);
}

/** As `parseDesign`, for a value that is already out of its JSON. */
export function readDesign(value: unknown): Parsed {
  const header = headerProblem(value);
  if (header) return { ok: false, problems: [header] };
  const result = designSchema.safeParse(value);
  if (!result.success) return { ok: false, problems: result.error.issues.flatMap((issue) => problemsOf(issue, value)) };
  const problems = geometryProblems(result.data);
  return problems.length ? { ok: false, problems, design: result.data } : { ok: true, design: result.data };
}

function headerProblem(value: unknown): Problem | undefined {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return { where: '', message: `a design is a JSON object; received ${shown(value)}` };
  const { kind, version } = value as { kind?: unknown; version?: unknown };
  if (kind !== 'gapwright-design') return { where: 'kind', message: `must be "gapwright-design"; received ${shown(kind)}` };
  if (typeof version === 'number' && version > 1)
    return { where: 'version', message: `this file is of version ${version}, made by a newer Gapwright; this one reads version 1` };
  return undefined;
}

function problemsOf(issue: z.core.$ZodIssue, root: unknown): Problem[] {
  const where = pathText(issue.path);
  if (issue.code === 'unrecognized_keys')
    return issue.keys.map((key) => ({
      where: pathText([...issue.path, key]),
      message: 'is not an entry of a design; remove it or correct its name',
    }));
  if (issue.code === 'invalid_value')
    return [{ where, message: `must be ${oneOf(issue.values)}; received ${shown(valueAt(root, issue.path))}` }];
  if (issue.code === 'invalid_union') {
    const kinds = 'options' in issue && Array.isArray(issue.options) ? oneOf(issue.options) : 'of a known kind';
    return [{ where, message: `must be ${kinds}; received ${shown(valueAt(root, issue.path))}` }];
  }
  if (issue.code === 'invalid_type' && !issue.message.startsWith('must'))
    return [
      {
        where,
        message: `must be ${issue.expected === 'array' ? 'a list' : /^[aeiou]/.test(issue.expected) ? `an ${issue.expected}` : `a ${issue.expected}`}; received ${shown(valueAt(root, issue.path))}`,
      },
    ];
  if ((issue.code === 'too_big' || issue.code === 'too_small') && !issue.message.startsWith('must'))
    return [{ where, message: `${sizeAllowed(issue)}; received ${sizeOf(valueAt(root, issue.path))}` }];
  return [{ where, message: issue.message }];
}

/** Of lists and texts; numbers have words of their own. */
function sizeAllowed(issue: z.core.$ZodIssueTooBig | z.core.$ZodIssueTooSmall): string {
  const limit = issue.code === 'too_big' ? `at most ${issue.maximum}` : `at least ${issue.minimum}`;
  return `must have ${limit} ${issue.origin === 'array' ? 'entries' : 'characters'}`;
}

const sizeOf = (value: unknown) => (Array.isArray(value) || typeof value === 'string' ? value.length : shown(value));

const oneOf = (values: readonly unknown[]) => (values.length === 1 ? shown(values[0]) : `one of ${values.map(shown).join(', ')}`);

function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`))
    .join('')
    .replace(/^\./, '');
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}
