import { generalizedEigen, type Matrix } from '../numeric/symmetric';
import type { ModeSpace, Topology } from './topology';

/** What drives the flow: harmonics of each phase's EMF at this speed, in volts, over the electrical angle. */
export interface Drive {
  orders: number[];
  /** [phase][harmonic] */
  cos: number[][];
  sin: number[][];
  /** Electrical angular frequency. [rad/s] */
  omega: number;
  inductance: Matrix;
}

/** One mode, diagonal: y′ = −λ y + forcing, i = W y. Forced answer per harmonic and constant known in closed form. */
interface Diagonal {
  space: ModeSpace;
  rates: number[];
  /** W = N V, columns as modes of decay. [phase][k] */
  modes: Matrix;
  /** Vᵀ Nᵀ L: from currents to y. */
  toState: Matrix;
  constant: number[];
  cos: Matrix;
  sin: Matrix;
}

/** A stretch of one mode: it holds from `from` to `to` (time over ω, electrical rad). */
export interface Stretch {
  mode: number[];
  from: number;
  to: number;
  /** Currents and EMFs at an angle within it. */
  currents: (angle: number) => number[];
  emf: (angle: number) => number[];
  dcAmps: (currents: number[]) => number;
}

/** Guards are looked at this often a period; between looks events are found by bisection. */
const LOOKS = 72;
const MOST_EVENTS = 400;
const BISECTIONS = 44;

/**
 * The exact flow of the currents from one event to the next.
 *
 * @param topology  Circuit. [-]
 * @param drive     EMFs and inductance. [V, H]
 * @returns         Function from starting currents, start and end angle to the currents at the end and the stretches passed. [A, rad]
 *
 * Source    linear systems with constant coefficients between events: modal decomposition and phasors.
 * Checked   tests/laws/rectifier.test.ts
 */
export function flowOf(topology: Topology, drive: Drive) {
  const diagonals = new Map<string, Diagonal>();
  const diagonalOf = (mode: number[]) => {
    const key = mode.join();
    let found = diagonals.get(key);
    if (!found) diagonals.set(key, (found = diagonalize(topology.space(mode), drive)));
    return found;
  };
  const m = drive.cos.length;
  const emfAt = (angle: number): number[] => {
    const e = new Array<number>(m).fill(0);
    drive.orders.forEach((n, h) => {
      const [c, s] = [Math.cos(n * angle), Math.sin(n * angle)];
      for (let k = 0; k < m; k++) e[k] += drive.cos[k][h] * c + drive.sin[k][h] * s;
    });
    return e;
  };

  /** Currents and residual e − L i′ − Q i − b of a mode at an angle, its homogeneous part started at `start` with y₀. */
  const look = (d: Diagonal, free: number[], start: number, angle: number) => {
    const time = (angle - start) / drive.omega;
    const k = d.rates.length;
    const y = new Array<number>(k);
    const slope = new Array<number>(k);
    const trig = drive.orders.map((n) => [Math.cos(n * angle), Math.sin(n * angle)] as const);
    for (let j = 0; j < k; j++) {
      const decayed = free[j] * Math.exp(-d.rates[j] * time);
      let value = decayed + d.constant[j];
      let change = -d.rates[j] * decayed;
      for (let h = 0; h < trig.length; h++) {
        const [c, s] = trig[h];
        value += d.cos[j][h] * c + d.sin[j][h] * s;
        change += drive.orders[h] * drive.omega * (d.sin[j][h] * c - d.cos[j][h] * s);
      }
      y[j] = value;
      slope[j] = change;
    }
    const currents = new Array<number>(m).fill(0);
    const rates = new Array<number>(m).fill(0);
    for (let i = 0; i < m; i++)
      for (let j = 0; j < k; j++) {
        currents[i] += d.modes[i][j] * y[j];
        rates[i] += d.modes[i][j] * slope[j];
      }
    const residual = new Array<number>(m);
    for (let i = 0; i < m; i++) {
      let r = -d.space.drop[i];
      for (let h = 0; h < trig.length; h++) r += drive.cos[i][h] * trig[h][0] + drive.sin[i][h] * trig[h][1];
      for (let j = 0; j < m; j++) r -= drive.inductance[i][j] * rates[j] + d.space.resistance[i][j] * currents[j];
      residual[i] = r;
    }
    return { currents, residual };
  };

  const freePart = (d: Diagonal, currents: number[], angle: number): number[] =>
    d.toState.map((row, j) => {
      let y = -d.constant[j];
      for (let i = 0; i < m; i++) y += row[i] * currents[i];
      drive.orders.forEach((n, h) => (y -= d.cos[j][h] * Math.cos(n * angle) + d.sin[j][h] * Math.sin(n * angle)));
      return y;
    });

  return (start: number[], from: number, to: number): { end: number[]; stretches: Stretch[] } => {
    const step = (2 * Math.PI) / LOOKS;
    const stretches: Stretch[] = [];
    let currents = start;
    let mode = topology.modeOf(start);
    let angle = from;
    for (let events = 0; events < MOST_EVENTS && angle < to; events++) {
      const d = diagonalOf(mode);
      const began = angle;
      const free = freePart(d, currents, began);
      const failing = (at: number) => {
        const seen = look(d, free, began, at);
        const guards = topology.guards(mode, d.space, seen.currents, seen.residual);
        let worst = 0;
        for (let g = 1; g < guards.length; g++) if (guards[g] < guards[worst]) worst = g;
        return { seen, worst, value: guards[worst] };
      };
      let state = failing(angle);
      // A guard that fails at once is an event at this very angle: a diode that must turn on before time passes.
      let failed =
        state.value < -1e-9 * Math.max(1, Math.abs(state.value)) && events > 0 && stretches.at(-1)?.to === angle ? state : undefined;
      while (!failed && angle < to) {
        const next = Math.min(angle + step, to);
        state = failing(next);
        if (state.value < 0) {
          let low = angle;
          let high = next;
          for (let k = 0; k < BISECTIONS && high - low > 1e-12 * high; k++) {
            const middle = (low + high) / 2;
            const tried = failing(middle);
            if (tried.value < 0) {
              high = middle;
              state = tried;
            } else low = middle;
          }
          failed = state;
          angle = high;
        } else angle = next;
      }
      const last = failed ?? failing(angle);
      if (angle > began) {
        const held = mode;
        stretches.push({
          mode: held,
          from: began,
          to: angle,
          currents: (at) => look(d, free, began, at).currents,
          emf: emfAt,
          dcAmps: (i) => d.space.dc.reduce((sum, c, k) => sum + c * i[k], 0),
        });
      }
      currents = last.seen.currents;
      if (failed) {
        mode = topology.after(mode, failed.worst, d.space, failed.seen.currents, failed.seen.residual);
        currents = onto(diagonalOf(mode), currents);
      }
    }
    return { end: currents, stretches };
  };
}

/** The nearest currents the mode allows, in the measure of stored energy. */
function onto(d: Diagonal, currents: number[]): number[] {
  const y = d.toState.map((row) => row.reduce((sum, w, i) => sum + w * currents[i], 0));
  return d.modes.map((row) => row.reduce((sum, w, j) => sum + w * y[j], 0));
}

function diagonalize(space: ModeSpace, drive: Drive): Diagonal {
  const m = drive.cos.length;
  const { basis } = space;
  if (basis.length === 0)
    return { space, rates: [], modes: Array.from({ length: m }, () => []), toState: [], constant: [], cos: [], sin: [] };
  const reduced = (matrix: Matrix) =>
    basis.map((a) => basis.map((b) => a.reduce((sum, x, i) => sum + x * matrix[i].reduce((row, y, j) => row + y * b[j], 0), 0)));
  const { values, vectors } = generalizedEigen(reduced(space.resistance), reduced(drive.inductance));
  const k = basis.length;
  const modes = Array.from({ length: m }, (_, i) =>
    Array.from({ length: k }, (_, j) => basis.reduce((sum, column, c) => sum + column[i] * vectors[c][j], 0)),
  );
  const toState = Array.from({ length: k }, (_, j) =>
    Array.from({ length: m }, (_, i) => drive.inductance[i].reduce((sum, l, n) => sum + l * modes[n][j], 0)),
  );
  const forced = (column: (i: number) => number) =>
    Array.from({ length: k }, (_, j) => modes.reduce((sum, row, i) => sum + row[j] * column(i), 0));
  const constant = forced((i) => -space.drop[i]).map((f, j) => f / values[j]);
  const cos: Matrix = Array.from({ length: k }, () => []);
  const sin: Matrix = Array.from({ length: k }, () => []);
  drive.orders.forEach((n, h) => {
    const [fc, fs] = [forced((i) => drive.cos[i][h]), forced((i) => drive.sin[i][h])];
    const w = n * drive.omega;
    for (let j = 0; j < k; j++) {
      const size = values[j] ** 2 + w ** 2;
      cos[j][h] = (values[j] * fc[j] - w * fs[j]) / size;
      sin[j][h] = (values[j] * fs[j] + w * fc[j]) / size;
    }
  });
  return { space, rates: values, modes, toState, constant, cos, sin };
}
