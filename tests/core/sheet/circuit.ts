import type { Junction } from '../../../core/sheet/joins';
import type { Coil } from '../../../core/winding/stage';

/** Potential of every node when each coil raises its start by `emf` over its finish; throws when two ways round disagree. */
export function potentials(nodes: Junction[], coils: readonly Coil[], emf: (coil: Coil) => number): Map<Junction, number> {
  const nodeOf = (coil: number, end: 'start' | 'finish') => {
    const node = nodes.find((n) => n.ends.some((e) => e.coil === coil && e.end === end));
    if (!node) throw new Error(`the ${end} of coil ${coil} hangs in the air`);
    return node;
  };
  const known = new Map<Junction, number>();
  for (const root of nodes) {
    if (known.has(root)) continue;
    known.set(root, 0);
    for (let grew = true; grew; ) {
      grew = false;
      for (const coil of coils) {
        const [start, finish] = [nodeOf(coil.coil, 'start'), nodeOf(coil.coil, 'finish')];
        const [a, b] = [known.get(start), known.get(finish)];
        if (a !== undefined && b !== undefined) {
          if (Math.abs(a - b - emf(coil)) > 1e-9) throw new Error(`a current circulates through coil ${coil.coil}`);
        } else if (a !== undefined) {
          known.set(finish, a - emf(coil));
          grew = true;
        } else if (b !== undefined) {
          known.set(start, b + emf(coil));
          grew = true;
        }
      }
    }
  }
  return known;
}
