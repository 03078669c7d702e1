import { readFileSync } from 'node:fs';
import path from 'node:path';
import { type Design, parseDesign } from '../../core/index';

/** A demo of assets/, for the benches; `npm run bench` runs at the project's root. */
export function demo(name: string): Design {
  const parsed = parseDesign(readFileSync(path.resolve('assets', `${name}.gapwright`), 'utf8'));
  if (!parsed.ok) throw new Error(`the demo ${name} does not open`);
  return parsed.design;
}
