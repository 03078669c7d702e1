import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** What .gitignore leaves out: folders by name, files by name or ending. The tree may have come without git. */
const ignored = readFileSync('.gitignore', 'utf8').split('\n').filter(Boolean).concat('.git/');
const isIgnored = (name: string, isFolder: boolean) =>
  ignored.some((rule) =>
    rule.endsWith('/') ? isFolder && `${name}/` === rule : rule.startsWith('*') ? name.endsWith(rule.slice(1)) : name === rule,
  );

/** Files of the project below the named places, or all of them. */
export function projectFiles(...places: string[]): string[] {
  return (places.length ? places : ['.']).flatMap(filesBelow).sort();
}

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (isIgnored(entry.name, entry.isDirectory())) return [];
    const place = path.posix.join(folder, entry.name);
    return entry.isDirectory() ? filesBelow(place) : [place];
  });
}

export const sourceFiles = (...places: string[]): string[] => projectFiles(...places).filter((file) => /\.tsx?$/.test(file));

export interface Import {
  file: string;
  /** As written. */
  from: string;
  /** Path within the project, without its ending, for a relative import; else undefined. */
  target: string | undefined;
  typeOnly: boolean;
}

const statement = /^(?:import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'/gm;
const dynamic = /\bimport\(\s*'([^']+)'\s*\)|\bnew URL\(\s*'(\.[^']+)'\s*,\s*import\.meta\.url\s*\)/g;

/** What a file imports, read from its text. */
export function importsOf(file: string): Import[] {
  const text = readFileSync(file, 'utf8');
  const all = [
    ...[...text.matchAll(statement)].map(([whole, type, from]) => ({ from: from, typeOnly: type !== undefined || onlyTypes(whole) })),
    ...[...text.matchAll(dynamic)].map(([, imported, address]) => ({ from: imported ?? address, typeOnly: false })),
  ];
  return all.map(({ from, typeOnly }) => ({ file, from, typeOnly, target: from.startsWith('.') ? resolved(file, from) : undefined }));
}

/** `import { type A, type B } from …` */
function onlyTypes(whole: string): boolean {
  const names =
    /\{([^}]*)\}/
      .exec(whole)?.[1]
      ?.split(',')
      .map((name) => name.trim())
      .filter(Boolean) ?? [];
  return names.length > 0 && names.every((name) => name.startsWith('type ')) && !/^(?:import|export)\s+\w+\s*,/.test(whole);
}

function resolved(file: string, from: string): string {
  const target = path.posix.join(path.posix.dirname(file), from.replace(/\?.*$/, '')).replace(/(\.tsx?|\/)$/, '');
  return existsSync(`${target}/index.ts`) ? `${target}/index` : target;
}
