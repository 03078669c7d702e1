import { generalizedEigen, type Matrix } from '../numeric/symmetric';
import { failure, suspicion, type Look } from './events';
import type { ModeSpace, Topology } from './topology';

/** What drives the flow: harmonics of each phase's EMF at this speed, in volts, over the electrical angle. */
export interface Drive {
  /** Odd, rising. */
  orders: number[];
  /** [phase][harmonic] */
  cos: number[][];
  sin: number[][];
  /** Electrical angular frequency. [rad/s] */
  omega: number;
  inductance: Matrix;
}

/**
 * One mode, diagonal: y′ = −λ y + forcing, i = W y, with W = N V from the eigenvectors. The forced answer to each harmonic and to the constants is
 * known in closed form. Matrices lie row by row in flat arrays: this is the innermost loop of every curve.
 */
interface Diagonal {
  space: ModeSpace;
  count: number;
  rates: Float64Array;
  /** W, m × k. */
  modes: Float64Array;
  /** L W, m × k: from currents to y, and from y′ to volts. */
  flux: Float64Array;
  /** Q W, m × k. */
  drops: Float64Array;
  constant: Float64Array;
  /** k × harmonics. */
  cos: Float64Array;
  sin: Float64Array;
}

/** A stretch of one mode, between two angles. [electrical rad] */
export interface Stretch {
  mode: number[];
  from: number;
  to: number;
  /** Angle in which the fastest part of the currents dies away to a third. [electrical rad] */
  settling: number;
  /** Currents and EMFs at an angle within it. Both arrays are used again by the next call. */
  at: (angle: number) => { currents: number[]; emf: number[] };
  dcAmps: (currents: readonly number[]) => number;
}

/** Guards are looked at this often a period. */
const LOOKS = 48;
/** After an event, where guards may dip for a moment, the first look comes after this share of a step; then steps double. */
const FIRST_LOOK = 0.25;
const MOST_EVENTS = 400;

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
  const { orders, omega } = drive;
  const m = drive.cos.length;
  const harmonics = orders.length;
  const cosines = new Float64Array(harmonics);
  const sines = new Float64Array(harmonics);
  const state = { currents: new Array<number>(m).fill(0), emf: new Array<number>(m).fill(0), residual: new Array<number>(m).fill(0) };

  /** cos nθ and sin nθ of every order, by turning through 2θ from one odd order to the next. */
  const turnTo = (angle: number) => {
    const [c2, s2] = [Math.cos(2 * angle), Math.sin(2 * angle)];
    let c = Math.cos(angle);
    let s = Math.sin(angle);
    for (let n = 1, h = 0; h < harmonics; n += 2) {
      if (orders[h] === n) {
        cosines[h] = c;
        sines[h++] = s;
      }
      [c, s] = [c * c2 - s * s2, s * c2 + c * s2];
    }
  };

  /** Currents, EMFs and residual e − L i′ − Q i − b at an angle, for a mode whose free part was `free` at `began`. */
  const look = (d: Diagonal, free: Float64Array, began: number, angle: number) => {
    turnTo(angle);
    const time = (angle - began) / omega;
    const { currents, emf, residual } = state;
    for (let i = 0; i < m; i++) {
      let e = 0;
      for (let h = 0; h < harmonics; h++) e += drive.cos[i][h] * cosines[h] + drive.sin[i][h] * sines[h];
      emf[i] = e;
      residual[i] = e - d.space.drop[i];
      currents[i] = 0;
    }
    for (let j = 0; j < d.count; j++) {
      const decayed = free[j] * Math.exp(-d.rates[j] * time);
      let value = decayed + d.constant[j];
      let change = 0;
      for (let h = 0, at = j * harmonics; h < harmonics; h++, at++) {
        value += d.cos[at] * cosines[h] + d.sin[at] * sines[h];
        change += orders[h] * (d.sin[at] * cosines[h] - d.cos[at] * sines[h]);
      }
      const slope = change * omega - d.rates[j] * decayed;
      for (let i = 0, at = j; i < m; i++, at += d.count) {
        currents[i] += d.modes[at] * value;
        residual[i] -= d.flux[at] * slope + d.drops[at] * value;
      }
    }
  };

  const freePart = (d: Diagonal, currents: readonly number[], angle: number): Float64Array => {
    turnTo(angle);
    const free = new Float64Array(d.count);
    for (let j = 0; j < d.count; j++) {
      let y = -d.constant[j];
      for (let i = 0; i < m; i++) y += d.flux[i * d.count + j] * currents[i];
      for (let h = 0, at = j * harmonics; h < harmonics; h++, at++) y -= d.cos[at] * cosines[h] + d.sin[at] * sines[h];
      free[j] = y;
    }
    return free;
  };

  return (start: readonly number[], from: number, to: number): { end: number[]; stretches: Stretch[] } => {
    const step = (2 * Math.PI) / LOOKS;
    const stretches: Stretch[] = [];
    let currents = [...start];
    let mode = topology.modeOf(currents);
    let angle = from;
    for (let events = 0; events < MOST_EVENTS && angle < to; events++) {
      const d = diagonalOf(mode);
      const held = mode;
      const began = angle;
      const free = freePart(d, currents, began);
      let worst = 0;
      const lookAt = (at: number): Look => {
        look(d, free, began, at);
        return { angle: at, guards: topology.guards(held, d.space, state.currents, state.residual) };
      };
      const margin = (at: number) => {
        const { guards } = lookAt(at);
        worst = 0;
        for (let g = 1; g < guards.length; g++) if (guards[g] < guards[worst]) worst = g;
        return guards[worst];
      };
      // A guard that fails at once is an event at this very angle: a diode that must turn on before time passes.
      let failed = events > 0 && margin(angle) < -1e-9;
      let seen = [lookAt(angle)];
      while (!failed && angle < to) {
        const next = lookAt(Math.min(angle + Math.min(step, Math.max(angle - began, FIRST_LOOK * step)), to));
        seen = [...seen.slice(-2), next];
        angle = next.angle;
        const suspect = suspicion(seen);
        if (!suspect) continue;
        const { low, high } = suspect;
        const after = margin(high);
        failed = after < 0;
        if (failed) angle = failure(margin, low.angle, Math.max(0, Math.min(...low.guards)), high, after);
      }
      if (angle > began)
        stretches.push({
          mode: held,
          from: began,
          to: angle,
          settling: omega / Math.max(...d.rates, 1e-300),
          at: (where) => {
            look(d, free, began, where);
            return state;
          },
          dcAmps: (i) => {
            let sum = 0;
            for (let k = 0; k < m; k++) sum += d.space.dc[k] * i[k];
            return sum;
          },
        });
      margin(angle);
      currents = [...state.currents];
      if (failed) {
        mode = topology.after(held, worst, d.space, state.currents, state.residual);
        currents = onto(diagonalOf(mode), currents);
      }
    }
    return { end: currents, stretches };
  };
}

/** The nearest currents the mode allows, in the measure of stored energy. */
function onto(d: Diagonal, currents: readonly number[]): number[] {
  const next = currents.map(() => 0);
  for (let j = 0; j < d.count; j++) {
    let y = 0;
    for (let i = 0; i < currents.length; i++) y += d.flux[i * d.count + j] * currents[i];
    for (let i = 0; i < currents.length; i++) next[i] += d.modes[i * d.count + j] * y;
  }
  return next;
}

function diagonalize(space: ModeSpace, drive: Drive): Diagonal {
  const m = drive.cos.length;
  const harmonics = drive.orders.length;
  const { basis } = space;
  const k = basis.length;
  const reduced = (matrix: Matrix) =>
    basis.map((a) =>
      basis.map((b) => a.reduce((sum, x, i) => (x === 0 ? sum : sum + x * matrix[i].reduce((row, y, j) => row + y * b[j], 0)), 0)),
    );
  const { values, vectors } = k ? generalizedEigen(reduced(space.resistance), reduced(drive.inductance)) : { values: [], vectors: [] };
  const modes = new Float64Array(m * k);
  for (let i = 0; i < m; i++) for (let j = 0; j < k; j++) for (let c = 0; c < k; c++) modes[i * k + j] += basis[c][i] * vectors[c][j];
  const through = (matrix: Matrix) => {
    const product = new Float64Array(m * k);
    for (let i = 0; i < m; i++)
      for (let n = 0; n < m; n++) for (let j = 0; j < k; j++) product[i * k + j] += matrix[i][n] * modes[n * k + j];
    return product;
  };
  const constant = new Float64Array(k);
  const cos = new Float64Array(k * harmonics);
  const sin = new Float64Array(k * harmonics);
  for (let j = 0; j < k; j++) {
    for (let i = 0; i < m; i++) constant[j] -= (modes[i * k + j] * space.drop[i]) / values[j];
    for (let h = 0; h < harmonics; h++) {
      let fc = 0;
      let fs = 0;
      for (let i = 0; i < m; i++) {
        fc += modes[i * k + j] * drive.cos[i][h];
        fs += modes[i * k + j] * drive.sin[i][h];
      }
      const w = drive.orders[h] * drive.omega;
      const size = values[j] ** 2 + w ** 2;
      cos[j * harmonics + h] = (values[j] * fc - w * fs) / size;
      sin[j * harmonics + h] = (values[j] * fs + w * fc) / size;
    }
  }
  return {
    space,
    count: k,
    rates: Float64Array.from(values),
    modes,
    flux: through(drive.inductance),
    drops: through(space.resistance),
    constant,
    cos,
    sin,
  };
}
