import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { projectFiles, sourceFiles } from './sources';

const topLevel = [
  ...['README.md', 'DEVELOPERS.md', 'CHANGELOG.md', 'LICENSE', 'package.json', 'package-lock.json', 'tsconfig.json'],
  ...['electron', 'renderer', 'core', 'assets', 'tests', 'build', '.ci'],
];

test('the top level holds what a newcomer is told of, and nothing else', () => {
  const found = new Set(projectFiles().map((file) => file.split('/')[0]));
  expect([...found].filter((name) => name === '.ci' || !name.startsWith('.')).sort()).toEqual(topLevel.sort());
});

const ours = () => projectFiles().filter((file) => !/package-lock\.json$|\.(ttf|png|ico|icns|pdf)$|LICENSE/.test(file));

test('files are named in lower case with hyphens', () => {
  const names = sourceFiles('core', 'renderer', 'electron', 'tests', 'build').map((file) => path.basename(file));
  expect(names.filter((name) => !/^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+)*\.tsx?$/.test(name))).toEqual([]);
});

test('no file is a drawer for odds and ends', () => {
  expect(sourceFiles().filter((file) => /\/(utils?|helpers?|common|misc|shared)(\/|\.tsx?$)/.test(file))).toEqual([]);
});

test('no source file is longer than 300 lines; a table of values may be', () => {
  const long = sourceFiles('core', 'renderer', 'electron').filter((file) => readFileSync(file, 'utf8').split('\n').length > 301);
  const tables = ['core/quantities.ts'];
  expect(long.filter((file) => !tables.includes(file))).toEqual([]);
});

/** Put together here, so that this file does not hold the words it looks for. */
const words = {
  'words that have no place in the project': [
    ['trans', 'cript'],
    ['the reco', 'rding'],
    ['seed docu', 'ment'],
    ['seed vid', 'eo'],
  ],
  'work that says it is unfinished': [
    ['TO', 'DO'],
    ['FIX', 'ME'],
    ['not imple', 'mented'],
  ],
  'a type waved away': [
    [': a', 'ny\\b'],
    ['as a', 'ny\\b'],
    ['<a', 'ny>'],
    ['@ts-', 'ignore'],
    ['@ts-no', 'check'],
    ['@ts-expect-', 'error'],
  ],
  'a test that is switched off': [['\\b(it|test|describe)\\.(sk', 'ip|on', 'ly|to', 'do)\\b']],
};

test.each(Object.entries(words))('nowhere in the project: %s', (_title, pieces) => {
  const pattern = new RegExp(pieces.map((piece) => piece.join('')).join('|'), 'g');
  const isCode = (file: string) => /\.(ts|tsx|mjs|cjs)$/.test(file);
  const found = ours().flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(pattern)]
      .map(([word]) => ({ file, word }))
      .filter(({ word }) => isCode(file) || !/any|@ts/.test(word)),
  );
  expect(found).toEqual([]);
});

test('core knows no clock, no chance that is not seeded and no console', () => {
  const outside = /\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bconsole\.|\bprocess\.|\bperformance\.now\b/;
  expect(sourceFiles('core').filter((file) => outside.test(readFileSync(file, 'utf8')))).toEqual([]);
});
