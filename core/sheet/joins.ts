import type { Coil } from '../winding/stage';

export type Connection = 'star' | 'delta' | 'separate';
export type End = 'start' | 'finish';

export interface CoilEnd {
  coil: number;
  end: End;
}

/** One electrical node: the coil ends twisted and soldered together there, and the terminal that leads out, if one does. */
export interface Junction {
  /** As in "A", "A2", "star point", or "" for a joint between two coils of a path. */
  name: string;
  kind: 'terminal' | 'star point' | 'joint';
  ends: CoilEnd[];
}

/** Coils of one path of a phase, in the order in which the current passes them. */
export interface Path {
  phase: number;
  path: number;
  coils: Coil[];
}

export const phaseLetter = (phase: number) => String.fromCharCode(64 + phase);

/** Where the current of the phase goes in: at the finish of a coil that is joined the other way round. */
export const entryEnd = (coil: Coil): End => (coil.direction === 1 ? 'start' : 'finish');
export const exitEnd = (coil: Coil): End => (coil.direction === 1 ? 'finish' : 'start');

/** The phases' paths, coils in the order of their numbers. */
export function pathsOf(coils: readonly Coil[]): Path[] {
  const paths = new Map<string, Path>();
  for (const coil of [...coils].sort((a, b) => a.phase - b.phase || a.path - b.path || a.coil - b.coil)) {
    const key = `${coil.phase}/${coil.path}`;
    const path = paths.get(key) ?? { phase: coil.phase, path: coil.path, coils: [] };
    path.coils.push(coil);
    paths.set(key, path);
  }
  return [...paths.values()];
}

/** What a single phase is in star or delta: a phase with two terminals of its own. */
export const effectiveConnection = (connection: Connection, phases: number): Connection => (phases === 1 ? 'separate' : connection);

/** Names of the nodes at the two ends of a phase: delta joins the end of each phase to the beginning of the next. */
export function phaseEnds(phase: number, phases: number, connection: Connection): { begin: string; end: string } {
  const letter = phaseLetter(phase);
  switch (effectiveConnection(connection, phases)) {
    case 'star':
      return { begin: letter, end: STAR_POINT };
    case 'delta':
      return { begin: letter, end: phaseLetter((phase % phases) + 1) };
    case 'separate':
      return { begin: `${letter}1`, end: `${letter}2` };
  }
}

export const STAR_POINT = 'star point';

/** Every node of the winding: terminals in order, then the star point, then the joints between coils. */
export function junctions(coils: readonly Coil[], phases: number, connection: Connection): Junction[] {
  const named = new Map<string, Junction>();
  const joints: Junction[] = [];
  const put = (name: string, coilEnd: CoilEnd) => {
    const known = named.get(name);
    if (known) known.ends.push(coilEnd);
    else named.set(name, { name, kind: name === STAR_POINT ? 'star point' : 'terminal', ends: [coilEnd] });
  };
  for (const { phase, coils: chain } of pathsOf(coils)) {
    const { begin, end } = phaseEnds(phase, phases, connection);
    put(begin, { coil: chain[0].coil, end: entryEnd(chain[0]) });
    chain.slice(1).forEach((coil, i) => {
      const before = chain[i];
      joints.push({
        name: '',
        kind: 'joint',
        ends: [
          { coil: before.coil, end: exitEnd(before) },
          { coil: coil.coil, end: entryEnd(coil) },
        ],
      });
    });
    const last = chain[chain.length - 1];
    put(end, { coil: last.coil, end: exitEnd(last) });
  }
  const terminals = [...named.values()].sort(
    (a, b) => Number(a.kind === 'star point') - Number(b.kind === 'star point') || (a.name < b.name ? -1 : 1),
  );
  return [...terminals, ...joints];
}

/** What a coil's end joins, in words, as in "start of 4", "star point", "terminal A". */
export function joinWords(coilEnd: CoilEnd, nodes: readonly Junction[]): string {
  const node = nodes.find((n) => n.ends.some((e) => e.coil === coilEnd.coil && e.end === coilEnd.end));
  if (!node) throw new Error(`the ${coilEnd.end} of coil ${coilEnd.coil} is at no junction`);
  if (node.kind === 'terminal') return `terminal ${node.name}`;
  if (node.kind === 'star point') return STAR_POINT;
  return node.ends
    .filter((e) => e.coil !== coilEnd.coil || e.end !== coilEnd.end)
    .map((e) => `${e.end} of ${e.coil}`)
    .join(', ');
}
