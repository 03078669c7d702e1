import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { licences, shippedPackages } from '../../build/licences';
import { importsOf, projectFiles, sourceFiles } from './sources';

interface Manifest {
  license: string;
  scripts: Record<string, string>;
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
  peerDependencies?: Record<string, string>;
}
const manifestAt = (folder: string) => JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')) as Manifest;
const { scripts, dependencies, devDependencies } = manifestAt('.');
const all = { ...dependencies, ...devDependencies };

const packageOf = (from: string) =>
  from
    .split('/')
    .slice(0, from.startsWith('@') ? 2 : 1)
    .join('/');

/** Packages that the code of the named places needs when it runs. */
const neededBy = (...places: string[]) =>
  new Set(
    sourceFiles(...places)
      .flatMap(importsOf)
      .filter(({ target, typeOnly }) => target === undefined && !typeOnly)
      .map(({ from }) => packageOf(from))
      .filter((name) => !name.startsWith('node:')),
  );

/** What a package cannot run without, though nobody imports it: `@mui/material` and its styles. */
const peersOf = (name: string) => Object.keys(manifestAt(`node_modules/${name}`).peerDependencies ?? {});

test('what ships is listed as what ships, so that an audit of it sees all of it', () => {
  const needed = [...neededBy('core', 'renderer', 'electron')].filter((name) => name !== 'electron');
  const withPeers = new Set([...needed, ...needed.flatMap(peersOf).filter((name) => name in all)]);
  const types = [...withPeers].filter((name) => !name.startsWith('@types/'));
  expect(Object.keys(dependencies).sort()).toEqual(types.sort());
});

test('no package is there that nobody uses', () => {
  // The rules name packages too, without using them.
  const text = projectFiles()
    .filter((file) => !file.startsWith('tests/rules/'))
    .filter((file) => /\.(tsx?|mjs|cjs|js)$|tsconfig[\w.]*\.json$/.test(file))
    .map((file) => readFileSync(file, 'utf8'))
    .join('\n')
    .concat(Object.values(scripts).join('\n'));
  const isNamed = (name: string) => new RegExp(`['"]${name}(/[^'"]*)?['"]|\\b${name} -`).test(text);
  const isPeer = (name: string) => Object.keys(all).some((other) => existsSync(`node_modules/${other}`) && peersOf(other).includes(name));
  const isTypes = (name: string) => name.startsWith('@types/') && (name === '@types/node' || isNamed(name.replace('@types/', '')));
  // The compiler is run by `tsc -b`, under another name than its package.
  const isCompiler = (name: string) => name === 'typescript' && Object.values(scripts).some((script) => /\btsc\b/.test(script));
  expect(Object.keys(all).filter((name) => ![isNamed, isPeer, isTypes, isCompiler].some((is) => is(name)))).toEqual([]);
});

test('every package is pinned to one version', () => {
  expect(Object.entries(all).filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
});

/** Anyone may pass these on, changed or not, in a program of any licence, if they keep the notice. */
const permissive = [
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  '0BSD',
  'Apache-2.0',
  'Zlib',
  'BlueOak-1.0.0',
  'CC0-1.0',
  'Python-2.0',
  'WTFPL',
];
/** For fonts: may be bundled with anything, not sold alone. */
const forFonts = ['OFL-1.1'];
const isPermissive = (license: string, allowed: string[]) => {
  const choices = license.replace(/[()]/g, '').split(' OR ');
  return choices.some((choice) => choice.split(' AND ').every((each) => allowed.includes(each)));
};

test('every licence of what ships is permissive, and its text goes with the program', () => {
  const packages = shippedPackages();
  expect(packages.length).toBeGreaterThan(50);
  expect(packages.filter(({ license }) => !isPermissive(license, [...permissive, ...forFonts])).map(({ name }) => name)).toEqual([]);
  expect(packages.filter(({ text }) => text.length < 200).map(({ name }) => name)).toEqual([]);
  const text = licences();
  for (const { name, version } of packages) expect(text).toContain(`${name} ${version} (`);
  expect(text).toContain('Bitstream Vera Fonts Copyright');
});

test('README.md counts what ships', () => {
  const told = /(\d+) packages named in package\.json ship with the program, (\d+) with all that they need/.exec(
    readFileSync('README.md', 'utf8'),
  );
  expect(told?.slice(1).map(Number)).toEqual([Object.keys(dependencies).length, shippedPackages().length]);
});

test('every licence of what only builds and tests is permissive, or changes nothing of ours', () => {
  const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8')) as {
    packages: Record<string, { license?: string; extraneous?: boolean }>;
  };
  const others = Object.entries(packages).filter(([place, { license = '' }]) => place !== '' && !isPermissive(license, permissive));
  const named = [...new Set(others.map(([place, { license }]) => `${license} ${place.replace(/^.*node_modules\//, '')}`))].sort();
  const known = [
    // Copyleft file by file, for changes to those files alone; they are run here as they come.
    /^MPL-2\.0 (axe-core|lightningcss(-.*)?)$/,
    // Data about browsers: to be named when passed on, and it is not.
    /^CC-BY-4\.0 caniuse-lite$/,
    // Fonts. Bitstream's and Arev's terms are those of MIT, with a name to keep.
    /^OFL-1\.1 @fontsource\/roboto$/,
    /^SEE LICENSE IN README\.md AND LICENSE dejavu-fonts-ttf$/,
  ];
  expect(named.filter((each) => !known.some((pattern) => pattern.test(each)))).toEqual([]);
});

test('the README says how many packages ship', () => {
  const told = /(\d+) packages named in package\.json ship with the program, (\d+) with all that they need/.exec(
    readFileSync('README.md', 'utf8'),
  );
  expect(told?.slice(1).map(Number)).toEqual([Object.keys(dependencies).length, shippedPackages().length]);
});
