import type { Source } from './steady-state';
import { diagonal, difference, unit, zeros } from '../numeric/vectors';

/** Currents smaller than this share of the greatest are nothing. */
export const NOTHING = 1e-9;

/** How element currents u = T i come from phase currents, and what that means for the space a mode leaves them. */
export interface Ends {
  /** Rows of T. */
  rows: number[][];
  /** AC lines an element stands for, and diodes its current passes. */
  lines: number;
  diodes: number;
  /** I_dc = share · Σ|u|. */
  share: number;
  /** Nothing less than two elements can conduct: what leaves one comes back in another. */
  closed: boolean;
  basis(mode: readonly number[]): number[][];
  /** Rows that give the voltage at each element from the residual; without any that conducts, only differences count. */
  voltages(mode: readonly number[]): number[][];
}

function separateEnds(m: number): Ends {
  const rows = diagonal(m, 1);
  return {
    rows,
    lines: 2,
    diodes: 2,
    share: 1,
    closed: false,
    basis: (mode) => mode.flatMap((sign, k) => (sign ? [unit(m, k)] : [])),
    voltages: () => rows,
  };
}

function starEnds(m: number): Ends {
  return {
    rows: diagonal(m, 1),
    lines: 1,
    diodes: 1,
    share: 0.5,
    closed: true,
    basis: (mode) => {
      const on = mode.flatMap((sign, k) => (sign ? [k] : []));
      return on.slice(1).map((k) => {
        const column = unit(m, k);
        column[on[0]] = -1;
        return column;
      });
    },
    voltages: (mode) => {
      const on = mode.filter((sign) => sign !== 0).length;
      const neutral = mode.map((sign) => (sign ? 1 / on : 0));
      return mode.map((_, k) => difference(unit(m, k), neutral));
    },
  };
}

function deltaEnds(m: number): Ends {
  const firstOf = (mode: readonly number[]) => mode.findIndex((sign) => sign !== 0);
  return {
    // Phase k runs from terminal k to terminal k + 1.
    rows: zeros(m).map((_, k) => difference(unit(m, k), unit(m, (k + m - 1) % m))),
    lines: 1,
    diodes: 1,
    share: 0.5,
    closed: true,
    basis: (mode) => {
      const first = firstOf(mode);
      if (first < 0) return [new Array<number>(m).fill(1)];
      const groups: number[][] = [];
      for (let step = 0; step < m; step++) {
        const k = (first + step) % m;
        if (mode[k]) groups.push(zeros(m));
        groups[groups.length - 1][k] = 1;
      }
      return groups;
    },
    voltages: (mode) => {
      const first = Math.max(0, firstOf(mode));
      const rows = mode.map(() => zeros(m));
      for (let step = 0; step < m - 1; step++) {
        const k = (first + step) % m;
        const next = (k + 1) % m;
        if (!mode[next]) rows[next] = difference(rows[k], unit(m, k));
      }
      return rows;
    },
  };
}

const knownEnds = new Map<string, Ends>();

/** The ends of m phases, made once. Source: by definition of the connections. */
export function endsOf(connection: Source['connection'], m: number): Ends {
  const key = `${connection} ${m}`;
  const known = knownEnds.get(key);
  if (known) return known;
  const made = { separate: separateEnds, star: starEnds, delta: deltaEnds }[connection](m);
  knownEnds.set(key, made);
  return made;
}
