import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
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
