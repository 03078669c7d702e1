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
  modeOf(currents: ArrayLike<number>): number[];
  space(mode: readonly number[]): ModeSpace;
  /** Element currents u = T i, row by row. */
  elements: number[][];
  /** AC lines that an element's current passes. */
  lines: number;
  /** Power in the diodes: threshold · I_dc + slope · Σu² + dcSlope · I_dc². */
  diodes: { threshold: number; slope: number; dcSlope: number };
}

export interface ModeSpace {
  /** N as columns. */
  basis: number[][];
  /** Q. [Ω] */
  resistance: Matrix;
  /** b. [V] */
  drop: number[];
  /** c. [-] */
  dc: number[];
  guards: Guard[];
}

/** offset + currents · i + residual · r, with r = e − L i′ − Q i − b: positive while the mode holds, and the mode that follows. */
export interface Guard {
  offset: number;
  currents: number[];
  residual: number[];
  next: number[];
}

const zeros = (n: number) => new Array<number>(n).fill(0);
const unit = (n: number, k: number, size = 1) => {
  const one = zeros(n);
  one[k] = size;
  return one;
};
const scaled = (a: readonly number[], factor: number) => a.map((x) => x * factor);
const difference = (a: readonly number[], b: readonly number[]) => a.map((x, i) => x - b[i]);
const dot = (a: readonly number[], b: ArrayLike<number>) => a.reduce((sum, x, i) => sum + x * b[i], 0);
const addOuter = (m: Matrix, a: readonly number[], factor: number) => {
  for (let i = 0; i < a.length; i++) if (a[i] !== 0) for (let j = 0; j < a.length; j++) m[i][j] += factor * a[i] * a[j];
};
const diagonal = (n: number, value: number): Matrix => zeros(n).map((_, k) => unit(n, k, value));
const isRest = (mode: readonly number[]) => mode.every((sign) => sign === 0);

/** Currents smaller than this share of the greatest are nothing. */
const NOTHING = 1e-9;

/** The topology of a source with its bridge. One phase is always a bridge across its two ends. */
export function topologyOf(source: Source, bridge: Bridge, dc: DcSide): Topology {
  const { connection } = source;
  if (source.phaseEmf.length === 1 || connection === 'separate')
    return bridge.arrangement === 'bridges-in-series' && source.phaseEmf.length > 1
      ? seriesBridges(source, bridge, dc)
      : parallelPaths(source, bridge, dc, separateEnds(source.phaseEmf.length));
  return parallelPaths(source, bridge, dc, connection === 'star' ? starEnds(source.phaseEmf.length) : deltaEnds(source.phaseEmf.length));
}

/** How element currents u = T i come from phase currents, and what that means for the space a mode leaves them. */
interface Ends {
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

/** Star, delta, and bridges in parallel: φ = Σ [(n Vt + s E)|u| + n r u²/2] + R_dc (s Σ|u|)²/2. */
function parallelPaths(source: Source, bridge: Bridge, dc: DcSide, ends: Ends): Topology {
  const m = source.phaseEmf.length;
  const threshold = ends.diodes * bridge.threshold;
  const slope = ends.diodes * bridge.slope;
  const edge = threshold + ends.share * dc.emf;
  const tidy = (mode: number[]) => (ends.closed && (!mode.includes(1) || !mode.includes(-1)) ? zeros(m) : mode);
  const withSign = (mode: readonly number[], k: number, sign: number) => tidy(mode.map((old, j) => (j === k ? sign : old)));

  /** Two diodes turn on together when the greatest difference of potentials suffices. */
  const fromRest = (voltages: number[][]): Guard[] =>
    voltages.flatMap((high, a) =>
      voltages.flatMap((low, b) =>
        a === b
          ? []
          : [{ offset: 2 * edge, currents: zeros(m), residual: difference(low, high), next: difference(unit(m, a), unit(m, b)) }],
      ),
    );
  const guards = (mode: readonly number[], c: number[]): Guard[] => {
    const voltages = ends.voltages(mode);
    if (ends.closed && isRest(mode)) return fromRest(voltages);
    const rise = scaled(c, ends.share * dc.resistance);
    return mode.flatMap((sign, k) =>
      sign
        ? [{ offset: 0, currents: scaled(ends.rows[k], sign), residual: zeros(m), next: withSign(mode, k, 0) }]
        : [1, -1].map((side) => ({ offset: edge, currents: rise, residual: scaled(voltages[k], -side), next: withSign(mode, k, side) })),
    );
  };
  return {
    elements: ends.rows,
    lines: ends.lines,
    diodes: { threshold: threshold / ends.share, slope, dcSlope: 0 },
    modeOf: (currents) => {
      const u = ends.rows.map((row) => dot(row, currents));
      const least = NOTHING * Math.max(...Array.from(currents, Math.abs), 1e-12);
      return tidy(u.map((x) => (Math.abs(x) > least ? Math.sign(x) : 0)));
    },
    space: (mode) => {
      const sense = zeros(m);
      const resistance = diagonal(m, source.resistance);
      ends.rows.forEach((row, k) => {
        addOuter(resistance, row, ends.lines * source.lineResistance + (mode[k] ? slope : 0));
        for (let i = 0; i < m; i++) sense[i] += mode[k] * row[i];
      });
      const c = scaled(sense, ends.share);
      addOuter(resistance, c, dc.resistance);
      return { basis: ends.basis(mode), resistance, drop: scaled(sense, edge), dc: c, guards: guards(mode, c) };
    },
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

  /** Any set of directions may be the one that wins. */
  const fromRest = (): Guard[] =>
    Array.from({ length: 2 ** m }, (_, bits) => {
      const signs = zeros(m).map((_, k) => ((bits >> k) & 1 ? -1 : 1));
      return { offset: emf, currents: zeros(m), residual: scaled(signs, -1), next: [1, ...signs] };
    });
  const flowing = (signs: readonly number[], c: number[]): Guard[] => {
    const members = signs.filter((sign) => sign !== 0).length;
    const next = (k: number, sign: number) => [1, ...signs.map((old, j) => (j === k ? sign : old))];
    const stops: Guard = { offset: 0, currents: c, residual: zeros(m), next: zeros(m + 1) };
    const own = signs.flatMap((sign, k): Guard[] => {
      if (!sign)
        return [1, -1].map((side) => ({ offset: 0, currents: difference(c, unit(m, k, side)), residual: zeros(m), next: next(k, side) }));
      if (members === 1) return [];
      return [{ offset: emf / members, currents: scaled(c, resistance / members), residual: unit(m, k, sign), next: next(k, 0) }];
    });
    return [stops, ...own];
  };
  return {
    elements: diagonal(m, 1),
    lines: 2,
    diodes: { threshold: 2 * m * bridge.threshold, slope: bridge.slope, dcSlope: m * bridge.slope },
    modeOf: (currents) => {
      const i = Array.from(currents);
      const most = Math.max(...i.map(Math.abs));
      return most < 1e-12 ? zeros(m + 1) : [1, ...i.map((each) => (Math.abs(each) > most * (1 - NOTHING) ? Math.sign(each) : 0))];
    },
    space: (mode) => {
      const signs = mode.slice(1);
      const members = signs.filter((sign) => sign !== 0).length;
      const c = signs.map((sign) => (mode[0] ? sign / members : 0));
      const q = diagonal(m, own);
      addOuter(q, c, resistance);
      const basis = mode[0] ? [signs, ...signs.flatMap((sign, k) => (sign ? [] : [unit(m, k)]))] : [];
      return { basis, resistance: q, drop: scaled(c, emf), dc: c, guards: mode[0] ? flowing(signs, c) : fromRest() };
    },
  };
}
