import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { designJsonSchema } from '../../core/design/json-schema';

const file = new URL('../../assets/gapwright.schema.json', import.meta.url);

// `UPDATE_SCHEMA=1 npx vitest run … tests/rules/schema` writes it anew: it follows core/design/schema.ts and is no reference.
test('the published JSON Schema is that of the design file', () => {
  const text = `${JSON.stringify(designJsonSchema(), null, 2)}\n`;
  if (process.env.UPDATE_SCHEMA) writeFileSync(file, text);
  expect(readFileSync(file, 'utf8')).toBe(text);
});

test('it carries the ranges of the entries', () => {
  const schema = JSON.parse(readFileSync(file, 'utf8')) as { properties: { discs: { properties: Record<string, unknown> } } };
  expect(schema.properties.discs.properties.poles).toMatchObject({ type: 'number', minimum: 4, maximum: 80, multipleOf: 2 });
});

describe('whoever checks a design against the published schema', () => {
  const published = z.fromJSONSchema(JSON.parse(readFileSync(file, 'utf8')) as z.core.JSONSchema.JSONSchema);
  const demo = (name: string) =>
    JSON.parse(readFileSync(new URL(`../../assets/${name}.gapwright`, import.meta.url), 'utf8')) as Record<string, object>;

  test.each(['shed-light', 'hill-cabin', 'farm-tracker'])('finds %s good', (name) => {
    expect(published.safeParse(demo(name))).toMatchObject({ success: true });
  });

  test.each<[string, object]>([
    ['an odd number of poles', { poles: 7 }],
    ['a clearance below its range', { runningClearance: -0.001 }],
    ['text for a number', { poles: 'many' }],
    ['an arrangement that there is not', { arrangement: 'three' }],
    ['an entry that no design has', { pols: 8 }],
    ['an entry that is missing', { arrangement: undefined }],
  ])('finds %s bad', (_, change) => {
    const design = demo('hill-cabin');
    const { error } = published.safeParse({ ...design, discs: { ...design.discs, ...change } });
    expect(error?.issues.map(({ path }) => path[0])).toEqual(['discs']);
  });
});
