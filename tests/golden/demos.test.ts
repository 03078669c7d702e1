import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Results, solve } from '../../core/index';
import { demo } from '../demo';

// What the demos came to when it was last looked at: no reference, only a bell that rings when numbers move.
const file = new URL('./demos.json', import.meta.url);
const demos = ['shed-light', 'hill-cabin', 'farm-tracker'];
const advice =
  'Demo results moved. If that is meant, record them with `UPDATE_GOLDEN=1 npx vitest run --config build/vitest.config.ts tests/golden` ' +
  'and add a line under "Numbers that changed" in CHANGELOG.md that says which, by how much and why.';

const isTable = (value: unknown): value is object[] => Array.isArray(value) && typeof value[0] === 'object';

/** Numbers to four figures, tables left out. */
const rounded = (value: unknown): unknown => {
  if (typeof value === 'number') return Number(value.toPrecision(4));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, child]) => !isTable(child))
      .map(([key, child]) => [key, rounded(child)]),
  );
};

const headline = ({ gap, coils, emf, cutIn, rated, year }: Results) => rounded({ gap, coils, emf, cutIn, rated, year });

const headlineOf = (name: string) => headline(solve(demo(name)));

if (process.env.UPDATE_GOLDEN)
  writeFileSync(file, `${JSON.stringify(Object.fromEntries(demos.map((name) => [name, headlineOf(name)])), null, 2)}\n`);

describe('headline results of the demos, to four figures', () => {
  const recorded = JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown>;

  test('there is a record of each', () => {
    expect(Object.keys(recorded)).toEqual(demos);
  });

  test.each(demos)('%s', (name) => {
    expect(headlineOf(name), advice).toEqual(recorded[name]);
  });
});
