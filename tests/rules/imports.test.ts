import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type Import, importsOf, sourceFiles } from './sources';

/** The order in which the power flows; a file imports only to its left. */
const order = [
  ...[
    'constants',
    'numeric',
    'quantities',
    'formula',
    'notation',
    'working',
    'problem',
    'entries',
    'magnets',
    'field',
    'winding',
    'wire',
    'emf',
    'rectifier',
    'charging',
    'heat',
  ],
  ...['turbine', 'controller', 'design', 'chain', 'bench', 'explore', 'sheet', 'print', 'index'],
];
const stageOf = (coreFile: string) => coreFile.split('/')[1].replace(/\.ts$/, '');

const imports = (...places: string[]): Import[] => sourceFiles(...places).flatMap(importsOf);
const told = ({ file, from }: Import) => `${file} imports ${from}`;
const packageOf = (from: string) =>
  from
    .split('/')
    .slice(0, from.startsWith('@') ? 2 : 1)
    .join('/');
/** Those imports that no rule allows, in words. */
const strange = (all: Import[], isAllowed: (each: Import) => boolean) => all.filter((each) => !isAllowed(each)).map(told);

test('imports are read in all their forms', () => {
  const forms = importsOf('tests/rules/imports.test.ts').map(({ from, target }) => [from, target]);
  expect(forms).toEqual([
    ['node:fs', undefined],
    ['vitest', undefined],
    ['./sources', 'tests/rules/sources'],
  ]);
});

test('every folder of core has its place in the order', () => {
  expect([...new Set(sourceFiles('core').map(stageOf))].filter((stage) => !order.includes(stage))).toEqual([]);
});

test('in core a file imports only to its left', () => {
  const isLeft = ({ file, target }: Import) => {
    if (target === undefined) return true;
    if (!target.startsWith('core/')) return false;
    const [here, there] = [stageOf(file), stageOf(target)];
    return there !== 'index' && (here === there || order.indexOf(there) < order.indexOf(here));
  };
  expect(strange(imports('core'), isLeft)).toEqual([]);
});

test('core uses no package but zod for the design file and the writers for paper', () => {
  const isAllowed = ({ file, from, target }: Import) => {
    if (target !== undefined) return true;
    if (from === 'zod') return /(^core\/entries|\/section)\.ts$|^core\/design\//.test(file);
    return ['jspdf', '@tarikjabiri/dxf'].includes(from) && file.startsWith('core/print/');
  };
  expect(strange(imports('core'), isAllowed)).toEqual([]);
});

test('stages and formulas take the design file’s sections as types only, so that zod never reaches the solver’s worker', () => {
  const readsTheFile = (path: string) => /^core\/(entries|design\/.*|.*\/section)$/.test(path.replace(/\.ts$/, ''));
  const isAllowed = ({ file, target, typeOnly }: Import) =>
    target === undefined || typeOnly || !readsTheFile(target) || readsTheFile(file) || file === 'core/index.ts';
  const early = imports('core').filter(({ file }) => order.indexOf(stageOf(file)) <= order.indexOf('chain'));
  expect(strange(early, isAllowed)).toEqual([]);
});

test('the renderer knows core by its one door, and of the hosts only the contract’s types', () => {
  const isAllowed = ({ target, typeOnly }: Import) =>
    target === undefined ||
    target.startsWith('renderer/') ||
    target.startsWith('assets/') ||
    target === 'core/index' ||
    (target === 'electron/contract' && typeOnly);
  expect(strange(imports('renderer'), isAllowed)).toEqual([]);
});

test('the renderer uses no package that is not for pages', () => {
  const pages = [
    'react',
    'react-dom',
    '@mui/material',
    '@mui/x-charts',
    '@emotion/react',
    '@emotion/styled',
    '@fontsource/roboto',
    'pdfjs-dist',
    'zustand',
  ];
  expect(strange(imports('renderer'), ({ from, target }) => target !== undefined || pages.includes(packageOf(from)))).toEqual([]);
});

test('a worksheet never imports another', () => {
  const sheetOf = (path: string) => /^renderer\/worksheets\/([^/]+)\//.exec(path)?.[1];
  const isOwn = ({ file, target }: Import) => {
    const there = target && sheetOf(target);
    return there === undefined || sheetOf(file) === undefined || there === sheetOf(file);
  };
  expect(strange(imports('renderer/worksheets'), isOwn)).toEqual([]);
});

test('parts and drawings know nothing of state, actions or worksheets', () => {
  const isAllowed = ({ target, typeOnly }: Import) => typeOnly || !/^renderer\/(state|actions|worksheets|shell)\//.test(target ?? '');
  expect(strange(imports('renderer/parts', 'renderer/drawing'), isAllowed)).toEqual([]);
});

test('of the hosts only the command line reads designs, and none knows the renderer or another host', () => {
  const hostOf = (path: string) => /^electron\/(window|served|cli)\//.exec(path)?.[1];
  const isAllowed = ({ file, target }: Import) => {
    if (target === undefined) return true;
    if (target === 'core/index') return hostOf(file) === 'cli';
    return target.startsWith('electron/') && [undefined, hostOf(file)].includes(hostOf(target));
  };
  expect(strange(imports('electron'), isAllowed)).toEqual([]);
});

test('the hosts use Node alone, and the window Electron besides', () => {
  const isAllowed = ({ file, from, target }: Import) =>
    target !== undefined || from.startsWith('node:') || (from === 'electron' && file.startsWith('electron/window/'));
  expect(strange(imports('electron'), isAllowed)).toEqual([]);
});

test('of Electron the window uses no part that opens addresses, starts programs or reaches past its one page', () => {
  const imported = /^import \{([^}]+)\} from 'electron';$/gm;
  const parts = sourceFiles('electron/window').flatMap((file) =>
    [...readFileSync(file, 'utf8').matchAll(imported)].flatMap(([, names]) => names.split(',').map((name) => name.trim())),
  );
  expect([...new Set(parts.filter((name) => !name.startsWith('type ')))].sort()).toEqual(
    ['BrowserWindow', 'Menu', 'app', 'contextBridge', 'dialog', 'ipcMain', 'ipcRenderer', 'protocol', 'screen', 'session'], // prettier-ignore
  );
});
