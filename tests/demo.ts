import { readFileSync } from 'node:fs';
import { parseDesign, type Design } from '../core/index';

/** A demo, with a search of its own if need be. */
export function demo(name: string, search?: Design['search']): Design {
  const parsed = parseDesign(readFileSync(new URL(`../assets/${name}.gapwright`, import.meta.url), 'utf8'));
  if (!parsed.ok) throw new Error(`the demo ${name} does not open`);
  return { ...parsed.design, ...(search && { search }) };
}
