import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const documents = ['README.md', 'DEVELOPERS.md', 'CHANGELOG.md'];
const read = (file: string) => readFileSync(file, 'utf8');
const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };

test.each(documents)('every link in %s leads somewhere', (file) => {
  const links = [...read(file).matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g)].map(([, to]) => to).filter((to) => !/^https?:/.test(to));
  expect(links.filter((to) => !existsSync(to))).toEqual([]);
});

test.each(documents)('every file that %s names is there', (file) => {
  const named = [...read(file).matchAll(/`((?:core|renderer|electron|tests|build|assets)\/[\w/.-]*\w)`/g)].map(([, path]) => path);
  expect(named.filter((path) => !existsSync(path))).toEqual([]);
});

test.each(documents)('every test that %s names stands in its file under that name', (file) => {
  const named = [...read(file).matchAll(/`(tests\/[\w/.-]+\.test\.ts)` “([^”]+)”/g)].map(([, place, title]) => ({ place, title }));
  expect(named.filter(({ place, title }) => !read(place).includes(`'${title}'`))).toEqual([]);
});

test.each(documents)('every npm script that %s tells of exists', (file) => {
  const told = [...read(file).matchAll(/\bnpm (?:run (?:-s )?(\w+)|(start|test)\b)/g)].map(([, run, short]) => run ?? short);
  expect(told.filter((name) => !(name in scripts))).toEqual([]);
});

test('the README tells of the commands that the command line has', () => {
  const usages = [...read('electron/cli/commands.ts').matchAll(/usage: '([^']+)'/g)].map(([, usage]) => usage);
  const told = [...read('README.md').matchAll(/^npm run -s gapwright -- (.+?)(?: {2,}.*)?$/gm)].map(([, usage]) =>
    usage.replace(/ +/g, ' '),
  );
  const flat = (text: string) => text.replace(/ +/g, ' ');
  const toldText = flat(read('README.md'));
  expect(usages.length).toBeGreaterThan(0);
  expect(told).toHaveLength(usages.length);
  expect(usages.filter((usage) => !toldText.includes(`gapwright -- ${usage}`))).toEqual([]);
});
