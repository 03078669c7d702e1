// The licences of everything that ships: our own, the font's, and each package's as the lock file has it (more than the bundle holds, never less).
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const at = (place: string) => fileURLToPath(new URL(`../${place}`, import.meta.url));
const read = (place: string) => readFileSync(at(place), 'utf8').trim();

interface Locked {
  version: string;
  license: string;
  dev?: boolean;
  optional?: boolean;
  devOptional?: boolean;
}

/** Packages that a user gets, each with its licence by name and in full. */
export function shippedPackages() {
  const { packages } = JSON.parse(read('package-lock.json')) as { packages: Record<string, Locked> };
  return Object.entries(packages)
    .filter(([place, { dev, optional, devOptional }]) => place !== '' && !dev && !optional && !devOptional && !place.includes('/@types/'))
    .map(([place, { version, license }]) => ({ name: place.replace(/^.*node_modules\//, ''), version, license, text: licenceText(place) }));
}

/** One text to go with the program. */
export function licences(): string {
  const packages = shippedPackages().map(({ name, version, license, text }) => `${name} ${version} (${license})\n\n${text}\n`);
  const own = [`Gapwright (MIT)\n\n${read('LICENSE')}\n`, `DejaVu Sans\n\n${read('assets/fonts/DejaVuSans-LICENSE.txt')}\n`];
  return [...own, ...packages].join(`\n${'-'.repeat(78)}\n\n`);
}

/** A package made of several others has a licence file for each. */
function licenceText(place: string): string {
  const files = readdirSync(at(place), { recursive: true, encoding: 'utf8' })
    .filter((file) => /(^|[/\\])(licen[cs]e|copying|notice)[^/\\]*$/i.test(file) && !/(^|[/\\])node_modules[/\\]/.test(file))
    .sort();
  return files.map((file) => read(path.posix.join(place, file.split(path.sep).join('/')))).join('\n\n');
}
