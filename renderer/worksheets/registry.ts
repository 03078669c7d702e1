import { bench } from './bench/worksheet';
import { controller } from './controller/worksheet';
import { emf } from './emf/worksheet';
import { explore } from './explore/worksheet';
import { heat } from './heat/worksheet';
import { magnets } from './magnets/worksheet';
import { sheet } from './sheet/worksheet';
import { turbine } from './turbine/worksheet';
import { winding } from './winding/worksheet';
import { wire } from './wire/worksheet';
import type { Worksheet } from './worksheet';

/** In the order of the navigation: as the power flows, then as the work goes. */
export const worksheets: readonly Worksheet[] = [magnets, winding, wire, emf, heat, turbine, controller, bench, explore, sheet];

const known = new Map<string, Worksheet | undefined>();

/** The worksheet whose cautions an entry's path belongs to: the longest beginning that fits. */
export function worksheetFor(where: string): Worksheet | undefined {
  if (!known.has(where)) known.set(where, longestFit(where));
  return known.get(where);
}

function longestFit(where: string): Worksheet | undefined {
  const length = (w: Worksheet) => Math.max(-1, ...w.cautions.filter((c) => where === c || where.startsWith(`${c}.`)).map((c) => c.length));
  const best = [...worksheets].sort((a, b) => length(b) - length(a))[0];
  return best && length(best) >= 0 ? best : undefined;
}
