import { generalizedEigen, type Matrix } from '../numeric/symmetric';
import type { Drive } from './flow';
import type { ModeSpace } from './topology';

/**
 * One mode made diagonal: i = W y, y = free · exp(−rate · θ) + constant + Σ (cos · cos nθ + sin · sin nθ) over the electrical angle θ, and its guards
 * written in the same terms. Matrices lie row by row in flat arrays: this is the innermost loop of every curve.
 */
export interface Mode {
  space: ModeSpace;
  /** Degrees of freedom, k. */
  count: number;
  /** [1/rad] */
  rates: Float64Array;
  /** W, m × k. */
  currents: Float64Array;
  /** L W, m × k: from currents to y. */
  flux: Float64Array;
  constant: Float64Array;
  /** k × harmonics. */
  cos: Float64Array;
  sin: Float64Array;
  /** EMF along each degree of freedom, Wᵀ e, k × harmonics. */
  emfCos: Float64Array;
  emfSin: Float64Array;
  guards: GuardTerms;
}

/** Guards of a mode over the angle, guard by guard: constant, harmonics, and the share of each free part. */
export interface GuardTerms {
  count: number;
  constant: Float64Array;
  cos: Float64Array;
  sin: Float64Array;
  free: Float64Array;
}

/** A mode's signs, each +1, −1 or 0, as one number. */
export function keyOf(mode: readonly number[]): number {
  let key = 0;
  for (let k = 0; k < mode.length; k++) key = 3 * key + mode[k] + 1;
  return key;
}

const nothing = new Float64Array(0);

/** Rooms for a mode, to be filled. */
export const emptyMode = (): Mode => ({
  space: { basis: [], resistance: [], drop: [], dc: [], guards: [] },
  count: 0,
  rates: nothing,
  currents: nothing,
  flux: nothing,
  constant: nothing,
  cos: nothing,
  sin: nothing,
  emfCos: nothing,
  emfSin: nothing,
  guards: { count: 0, constant: nothing, cos: nothing, sin: nothing, free: nothing },
});

/** At least so long: the array itself where it is. */
const roomFor = (array: Float64Array, length: number) => (array.length < length ? new Float64Array(length) : array);

/**
 * The mode of a space under a drive.
 *
 * @param space  Where the currents can go, and what holds them there. [Ω, V]
 * @param drive  EMFs and inductance. [V, H]
 * @param mode   Where it is written. [-] A curve has some thousand modes: their rooms are used again.
 * @returns      Rates, steady parts and guards, each degree of freedom by itself. [1/rad, A·√H, A or V]
 *
 * Source    generalized eigenproblem of resistance and inductance; phasors.
 * Checked   tests/core/rectifier/moments.test.ts, tests/laws/rectifier.test.ts
 */
export function modeUnder(space: ModeSpace, drive: Drive, mode = emptyMode()): Mode {
  const m = drive.cos.length;
  const h = drive.orders.length;
  const { omega, orders, speed } = drive;
  const k = space.basis.length;
  const { values, vectors } = k
    ? generalizedEigen(reduced(space.resistance, space.basis), reduced(drive.inductance, space.basis))
    : { values: [], vectors: [] };
  mode.space = space;
  mode.count = k;
  mode.rates = roomFor(mode.rates, k);
  mode.currents = roomFor(mode.currents, m * k);
  mode.flux = roomFor(mode.flux, m * k);
  mode.constant = roomFor(mode.constant, k);
  for (const part of ['cos', 'sin', 'emfCos', 'emfSin'] as const) mode[part] = roomFor(mode[part], k * h);
  for (let i = 0; i < m; i++)
    for (let j = 0; j < k; j++) {
      let sum = 0;
      for (let c = 0; c < k; c++) sum += space.basis[c][i] * vectors[c][j];
      mode.currents[i * k + j] = sum;
    }
  writeProduct(drive.inductance, mode.currents, k, mode.flux);
  for (let j = 0; j < k; j++) {
    mode.rates[j] = values[j] / omega;
    let along = 0;
    for (let i = 0; i < m; i++) along += mode.currents[i * k + j] * space.drop[i];
    mode.constant[j] = -along / values[j];
    for (let n = 0, at = j * h; n < h; n++, at++) {
      let fc = 0;
      let fs = 0;
      for (let i = 0; i < m; i++) {
        fc += mode.currents[i * k + j] * drive.cos[i][n];
        fs += mode.currents[i * k + j] * drive.sin[i][n];
      }
      fc *= speed;
      fs *= speed;
      const w = orders[n] * omega;
      const size = values[j] * values[j] + w * w;
      mode.emfCos[at] = fc;
      mode.emfSin[at] = fs;
      mode.cos[at] = (values[j] * fc - w * fs) / size;
      mode.sin[at] = (values[j] * fs + w * fc) / size;
    }
  }
  writeGuards(mode, drive, values);
  return mode;
}

let drops: Float64Array = nothing;

function writeGuards(mode: Mode, { cos: emfCos, sin: emfSin, orders, omega, speed }: Drive, values: readonly number[]): void {
  const { space, count: k, currents, flux, constant, cos, sin, guards: terms } = mode;
  const m = emfCos.length;
  const h = orders.length;
  drops = roomFor(drops, m * k);
  writeProduct(space.resistance, currents, k, drops);
  const count = space.guards.length;
  terms.count = count;
  terms.constant = roomFor(terms.constant, count);
  terms.cos = roomFor(terms.cos, count * h);
  terms.sin = roomFor(terms.sin, count * h);
  terms.free = roomFor(terms.free, count * k);
  for (let g = 0; g < count; g++) {
    const guard = space.guards[g];
    terms.constant[g] = guard.offset;
    for (let n = 0; n < h; n++) terms.cos[g * h + n] = terms.sin[g * h + n] = 0;
    for (let i = 0; i < m; i++) {
      const r = guard.residual[i];
      if (r === 0) continue;
      terms.constant[g] -= r * space.drop[i];
      const perSpeed = r * speed;
      for (let n = 0; n < h; n++) {
        terms.cos[g * h + n] += perSpeed * emfCos[i][n];
        terms.sin[g * h + n] += perSpeed * emfSin[i][n];
      }
    }
    for (let j = 0; j < k; j++) {
      let level = 0;
      let change = 0;
      for (let i = 0; i < m; i++) {
        level += guard.currents[i] * currents[i * k + j] - guard.residual[i] * drops[i * k + j];
        change -= guard.residual[i] * flux[i * k + j];
      }
      terms.constant[g] += level * constant[j];
      terms.free[g * k + j] = level - change * values[j];
      for (let n = 0; n < h; n++) {
        const turning = change * orders[n] * omega;
        terms.cos[g * h + n] += level * cos[j * h + n] + turning * sin[j * h + n];
        terms.sin[g * h + n] += level * sin[j * h + n] - turning * cos[j * h + n];
      }
    }
  }
}

/** Nᵀ M N. */
function reduced(matrix: Matrix, basis: readonly number[][]): Matrix {
  const k = basis.length;
  const m = matrix.length;
  const result = basis.map((column) => column.slice(0, k));
  for (let b = 0; b < k; b++)
    for (let a = 0; a <= b; a++) {
      let sum = 0;
      for (let i = 0; i < m; i++) if (basis[a][i] !== 0) for (let j = 0; j < m; j++) sum += basis[a][i] * matrix[i][j] * basis[b][j];
      result[a][b] = result[b][a] = sum;
    }
  return result;
}

/** M W, row by row, W with k columns. */
function writeProduct(matrix: Matrix, w: Float64Array, k: number, result: Float64Array): void {
  const m = matrix.length;
  for (let i = 0; i < m; i++)
    for (let j = 0; j < k; j++) {
      let sum = 0;
      for (let n = 0; n < m; n++) sum += matrix[i][n] * w[n * k + j];
      result[i * k + j] = sum;
    }
}
