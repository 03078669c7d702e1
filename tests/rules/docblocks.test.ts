import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sourceFiles } from './sources';

const physics = ['magnets', 'field', 'winding', 'wire', 'emf', 'rectifier', 'charging', 'heat', 'turbine', 'controller'].map(
  (name) => `core/${name}`,
);
const isFormula = (file: string) => !/\/(stage|section|cautions)\.ts$/.test(file);

interface Exported {
  name: string;
  parameters: string[];
  block: string;
}

/** The functions a file exports, each with the docblock that stands right before it. */
function exportedFunctions(text: string): Exported[] {
  const declaration =
    /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\s*)?^export (?:async )?(?:function\*? (\w+)(?:<[^>]*>)?|const (\w+)(?:: [^=]+)? = (?:<[^>]*>)?)\(([^)]*)\)(?:: [^=\n]+)?(?: =>|[:\s{])/gm;
  return [...text.matchAll(declaration)].map(([, block, named, held, parameters]) => ({
    name: named ?? held,
    parameters: parameters.split(',').flatMap((piece) => /^\s*(?:readonly )?(\w+)\??\s*[:=]/.exec(piece)?.[1] ?? []),
    block: block ?? '',
  }));
}

test('an exported function is found with its parameters and its docblock', () => {
  const text =
    '/** Twice. */\nexport function twice(x: number, by = 2): number {\n}\n\nexport const half = (x: number): number => x / 2;\n';
  expect(exportedFunctions(text)).toEqual([
    { name: 'twice', parameters: ['x', 'by'], block: '/** Twice. */\n' },
    { name: 'half', parameters: ['x'], block: '' },
  ]);
});

const functionsOf = (...folders: string[]) =>
  sourceFiles(...folders)
    .filter(isFormula)
    .flatMap((file) => exportedFunctions(readFileSync(file, 'utf8')).map((each) => ({ ...each, at: `${file}: ${each.name}` })));

test('every function that a formula file exports says what it gives', () => {
  const silent = functionsOf(...physics, 'core/numeric').filter(({ block }) => !block);
  expect(silent.map(({ at }) => at)).toEqual([]);
});

test('a docblock that lists parameters lists all of them, and says units in brackets', () => {
  const listed = functionsOf(...physics).filter(({ block }) => block.includes('@param'));
  const faults = listed.flatMap(({ at, parameters, block }) => [
    ...parameters.filter((name) => !new RegExp(`@param +${name}\\b`).test(block)).map((name) => `${at}: ${name}`),
    ...(/\[[^\]]+\]/.test(block) ? [] : [`${at}: no unit`]),
  ]);
  expect(faults).toEqual([]);
});

test('every formula file says where its method comes from', () => {
  const files = [...new Set(functionsOf(...physics).map(({ at }) => at.split(': ')[0]))];
  const origin = /\bSource\b|from memory|common practice|plain geometry|by definition/i;
  expect(files.filter((file) => !origin.test(readFileSync(file, 'utf8')))).toEqual([]);
});

test('every check that a docblock names is there', () => {
  const named = sourceFiles('core').flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(/^ \* Checked +(.*)$/gm)].flatMap(([, paths]) =>
      [...paths.matchAll(/tests\/[\w/.-]+/g)].map(([path]) => ({ file, path: path.replace(/\.$/, '') })),
    ),
  );
  expect(named.filter(({ path }) => !existsSync(path)).map(({ file, path }) => `${file}: ${path}`)).toEqual([]);
});
