import { readFileSync } from 'node:fs';
import path from 'node:path';
import { parseDesign, type Design } from '../core/index';

/** A demo, with a search of its own if need be. Tests and benches run at the project's root; a bench is bundled and lies elsewhere. */
export function demo(name: string, search?: Design['search']): Design {
  const parsed = parseDesign(readFileSync(path.resolve('assets', `${name}.gapwright`), 'utf8'));
  if (!parsed.ok) throw new Error(`the demo ${name} does not open`);
  return { ...parsed.design, ...(search && { search }) };
}
