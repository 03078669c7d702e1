import type { Matrix } from '../numeric/symmetric';
import type { Bridge, DcSide, Source } from './steady-state';

/**
 * How phases, diodes and DC side hang together.
 *
 * Phase currents i obey L i′ + R i + ∂φ(i) ∋ e, where φ is the convex potential of diodes and DC side. Within one mode (which diodes conduct, and
 * which way) φ is quadratic and the currents move in a linear space i = N x, so that
 *
 *   Nᵀ L N x′ + Nᵀ Q N x = Nᵀ (e − b)        I_dc = c · i
 *
 * A mode holds while all its guards are positive; the first to fall through zero names the next mode.
 */
export interface Topology {
  /** Signs, one an element: +1, −1, or 0 where nothing flows. What an element is, the topology knows. */
  modeOf(currents: number[]): number[];
  space(mode: number[]): ModeSpace;
  /** Guards of a mode: positive while it holds. `residual` is e − L i′ − Q i − b. */
  guards(mode: number[], space: ModeSpace, currents: number[], residual: number[]): number[];
  /** The mode after guard `index` has failed. */
  after(mode: number[], index: number, space: ModeSpace, currents: number[], residual: number[]): number[];
  /** Power lost in diodes and in AC lines for currents at one instant. [W] */
  diodePower(mode: number[], currents: number[]): number;
  linePower(currents: number[]): number;
  /** Square of each line's current. [A²] */
  lineSquares(currents: number[]): number[];
}

export interface ModeSpace {
  /** N as columns. */
  basis: number[][];
  resistance: Matrix;
  /** b. [V] */
  drop: number[];
  /** c. [-] */
  dc: number[];
}

const zeros = (n: number) => new Array<number>(n).fill(0);
const unit = (n: number, k: number): number[] => Array.from({ length: n }, (_, i) => (i === k ? 1 : 0));
const dot = (a: readonly number[], b: readonly number[]) => {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
};
const addOuter = (m: Matrix, a: readonly number[], factor: number) => {
  for (let i = 0; i < a.length; i++) if (a[i] !== 0) for (let j = 0; j < a.length; j++) m[i][j] += factor * a[i] * a[j];
};

/** Currents smaller than this share of the greatest are nothing. */
const NOTHING = 1e-9;

/** The topology of a source with its bridge. One phase is always a bridge across its two ends. */
export function topologyOf(source: Source, bridge: Bridge, dc: DcSide): Topology {
  const { connection } = source;
  if (source.phaseEmf.length === 1 || connection === 'separate')
    return bridge.arrangement === 'bridges-in-series' && source.phaseEmf.length > 1
      ? seriesBridges(source, bridge, dc)
      : elements(source, bridge, dc, separateEnds(source.phaseEmf.length));
  return elements(source, bridge, dc, connection === 'star' ? starEnds(source.phaseEmf.length) : deltaEnds(source.phaseEmf.length));
}

/** How element currents u = T i come from phase currents, and what that means for the space a mode leaves them. */
interface Ends {
  /** Rows of T. */
  rows: number[][];
  /** T i, the same as by `rows`. */
  element: (currents: readonly number[]) => readonly number[];
  /** AC lines an element stands for, and diodes its current passes. */
  lines: number;
  diodes: number;
  /** I_dc = share · Σ|u|. */
  share: number;
  /** Nothing less than two elements can conduct: what leaves one comes back in another. */
  closed: boolean;
  basis(mode: number[]): number[][];
  /** Voltage at each element from the residual in phase space; elements that conduct read 0. Without any, only differences count. */
  voltages(mode: number[], residual: number[]): number[];
}

function separateEnds(m: number): Ends {
  return {
    element: (currents) => currents,
    rows: zeros(m).map((_, k) => unit(m, k)),
    lines: 2,
    diodes: 2,
    share: 1,
    closed: false,
    basis: (mode) => mode.flatMap((sign, k) => (sign ? [unit(m, k)] : [])),
    voltages: (_, residual) => residual,
  };
}

function starEnds(m: number): Ends {
  return {
    element: (currents) => currents,
    rows: zeros(m).map((_, k) => unit(m, k)),
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
    voltages: (mode, residual) => {
      const on = residual.filter((_, k) => mode[k] !== 0);
      const neutral = on.length ? on.reduce((a, b) => a + b, 0) / on.length : 0;
      return residual.map((r, k) => (mode[k] ? 0 : r - neutral));
    },
  };
}

function deltaEnds(m: number): Ends {
  return {
    // Phase k runs from terminal k to terminal k + 1.
    element: (currents) => currents.map((i, k) => i - currents[(k + m - 1) % m]),
    rows: zeros(m).map((_, k) => {
      const row = unit(m, k);
      row[(k + m - 1) % m] -= 1;
      return row;
    }),
    lines: 1,
    diodes: 1,
    share: 0.5,
    closed: true,
    basis: (mode) => {
      const first = mode.findIndex((sign) => sign !== 0);
      if (first < 0) return [new Array<number>(m).fill(1)];
      const groups: number[][] = [];
      for (let step = 0; step < m; step++) {
        const k = (first + step) % m;
        if (mode[k]) groups.push(zeros(m));
        groups[groups.length - 1][k] = 1;
      }
      return groups;
    },
    voltages: (mode, residual) => {
      const first = Math.max(
        0,
        mode.findIndex((sign) => sign !== 0),
      );
      const v = zeros(m);
      for (let step = 0; step < m - 1; step++) {
        const k = (first + step) % m;
        const next = (k + 1) % m;
        v[next] = mode[next] ? 0 : v[k] - residual[k];
      }
      return v;
    },
  };
}

/** Star, delta, and bridges in parallel: φ = Σ [(n Vt + s E)|u| + n r u²/2] + R_dc (s Σ|u|)²/2. */
function elements(source: Source, bridge: Bridge, dc: DcSide, ends: Ends): Topology {
  const m = source.phaseEmf.length;
  const threshold = ends.diodes * bridge.threshold;
  const slope = ends.diodes * bridge.slope;
  const { element } = ends;
  const edge = (space: ModeSpace, currents: number[]) => threshold + ends.share * (dc.emf + dc.resistance * dot(space.dc, currents));
  const tidy = (mode: number[]) => (ends.closed && (!mode.includes(1) || !mode.includes(-1)) ? zeros(m) : mode);
  return {
    modeOf: (currents) => {
      const u = element(currents);
      const least = NOTHING * Math.max(...u.map(Math.abs), 1e-12);
      return tidy(u.map((x) => (Math.abs(x) > least ? Math.sign(x) : 0)));
    },
    space: (mode) => {
      const sense = zeros(m);
      const resistance = zeros(m).map((_, k) => unit(m, k).map((x) => x * source.resistance));
      for (const row of ends.rows) addOuter(resistance, row, ends.lines * source.lineResistance);
      mode.forEach((sign, k) => {
        if (!sign) return;
        addOuter(resistance, ends.rows[k], slope);
        for (let i = 0; i < m; i++) sense[i] += sign * ends.rows[k][i];
      });
      const c = sense.map((x) => x * ends.share);
      addOuter(resistance, c, dc.resistance);
      return { basis: ends.basis(mode), resistance, drop: sense.map((x) => x * (threshold + ends.share * dc.emf)), dc: c };
    },
    guards: (mode, space, currents, residual) => {
      const v = ends.voltages(mode, residual);
      const most = edge(space, currents);
      if (ends.closed && mode.every((sign) => sign === 0)) return [2 * most - (Math.max(...v) - Math.min(...v))];
      const u = element(currents);
      return mode.map((sign, k) => (sign ? sign * u[k] : most - Math.abs(v[k])));
    },
    after: (mode, index, _space, _currents, residual) => {
      const v = ends.voltages(mode, residual);
      const next = [...mode];
      if (ends.closed && mode.every((sign) => sign === 0)) {
        next[v.indexOf(Math.max(...v))] = 1;
        next[v.indexOf(Math.min(...v))] = -1;
        return next;
      }
      next[index] = mode[index] ? 0 : Math.sign(v[index]);
      return tidy(next);
    },
    diodePower: (_, currents) => element(currents).reduce((sum, u) => sum + threshold * Math.abs(u) + slope * u * u, 0),
    linePower: (currents) => element(currents).reduce((sum, u) => sum + ends.lines * source.lineResistance * u * u, 0),
    lineSquares: (currents) => element(currents).map((u) => u * u),
  };
}

/**
 * Bridges in series carry one direct current I = max|i|: φ = (E + 2m Vt) I + (R_dc + m r) I²/2 + r Σi²/2. A phase whose |i| is less than I is
 * passed by through its own four diodes. An element is a phase; its sign says that it carries all of I, 0 that it is passed by, and a leading
 * element more than the phases says whether anything flows.
 */
function seriesBridges(source: Source, bridge: Bridge, dc: DcSide): Topology {
  const m = source.phaseEmf.length;
  const emf = dc.emf + 2 * m * bridge.threshold;
  const resistance = dc.resistance + m * bridge.slope;
  const own = source.resistance + 2 * source.lineResistance + bridge.slope;
  const greatest = (currents: readonly number[]) => Math.max(...currents.map(Math.abs));
  return {
    modeOf: (currents) => {
      const most = greatest(currents);
      if (most < 1e-12) return zeros(m + 1);
      return [1, ...currents.map((i) => (Math.abs(i) > most * (1 - NOTHING) ? Math.sign(i) : 0))];
    },
    space: (mode) => {
      const signs = mode.slice(1);
      const members = signs.filter((sign) => sign !== 0).length;
      const c = signs.map((sign) => (mode[0] ? sign / members : 0));
      const q = zeros(m).map((_, k) => unit(m, k).map((x) => x * own));
      addOuter(q, c, resistance);
      const basis = mode[0] ? [signs, ...signs.flatMap((sign, k) => (sign ? [] : [unit(m, k)]))] : [];
      return { basis, resistance: q, drop: c.map((x) => x * emf), dc: c };
    },
    guards: (mode, space, currents, residual) => {
      if (!mode[0]) return [emf - residual.reduce((sum, r) => sum + Math.abs(r), 0)];
      const current = dot(space.dc, currents);
      const members = mode.slice(1).filter((sign) => sign !== 0).length;
      const push = (emf + resistance * current) / members;
      return [
        current,
        ...mode.slice(1).map((sign, k) => (sign ? (members > 1 ? sign * residual[k] + push : 1) : current - Math.abs(currents[k]))),
      ];
    },
    after: (mode, index, _space, currents, residual) => {
      if (!mode[0]) return [1, ...residual.map((r) => Math.sign(r) || 1)];
      if (index === 0) return zeros(m + 1);
      const next = [...mode];
      next[index] = mode[index] ? 0 : Math.sign(currents[index - 1]);
      return next;
    },
    diodePower: (_, currents) => {
      const most = greatest(currents);
      return 2 * m * bridge.threshold * most + bridge.slope * (m * most * most + currents.reduce((sum, i) => sum + i * i, 0));
    },
    linePower: (currents) => currents.reduce((sum, i) => sum + 2 * source.lineResistance * i * i, 0),
    lineSquares: (currents) => currents.map((i) => i * i),
  };
}
