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

/**
 * The mode of a space under a drive.
 *
 * @param space  Where the currents can go, and what holds them there. [Ω, V]
 * @param drive  EMFs and inductance. [V, H]
 * @returns      Rates, steady parts and guards, each degree of freedom by itself. [1/rad, A·√H, A or V]
 *
 * Source    generalized eigenproblem of resistance and inductance; phasors.
 * Checked   tests/core/rectifier/moments.test.ts, tests/laws/rectifier.test.ts
 */
export function modeUnder(space: ModeSpace, drive: Drive): Mode {
  const m = drive.cos.length;
  const h = drive.orders.length;
  const { omega, orders, speed } = drive;
  const k = space.basis.length;
  const { values, vectors } = k
    ? generalizedEigen(reduced(space.resistance, space.basis), reduced(drive.inductance, space.basis))
    : { values: [], vectors: [] };
  const currents = new Float64Array(m * k);
  for (let i = 0; i < m; i++)
    for (let j = 0; j < k; j++) for (let c = 0; c < k; c++) currents[i * k + j] += space.basis[c][i] * vectors[c][j];
  const mode: Mode = {
    space,
    count: k,
    rates: Float64Array.from(values, (value) => value / omega),
    currents,
    flux: product(drive.inductance, currents, k),
    constant: new Float64Array(k),
    cos: new Float64Array(k * h),
    sin: new Float64Array(k * h),
    emfCos: new Float64Array(k * h),
    emfSin: new Float64Array(k * h),
    guards: { count: 0, constant: new Float64Array(0), cos: new Float64Array(0), sin: new Float64Array(0), free: new Float64Array(0) },
  };
  for (let j = 0; j < k; j++) {
    for (let i = 0; i < m; i++) mode.constant[j] -= (currents[i * k + j] * space.drop[i]) / values[j];
    for (let n = 0, at = j * h; n < h; n++, at++) {
      let fc = 0;
      let fs = 0;
      for (let i = 0; i < m; i++) {
        fc += currents[i * k + j] * drive.cos[i][n];
        fs += currents[i * k + j] * drive.sin[i][n];
      }
      fc *= speed;
      fs *= speed;
      const w = orders[n] * omega;
      const size = values[j] ** 2 + w ** 2;
      mode.emfCos[at] = fc;
      mode.emfSin[at] = fs;
      mode.cos[at] = (values[j] * fc - w * fs) / size;
      mode.sin[at] = (values[j] * fs + w * fc) / size;
    }
  }
  mode.guards = guardTerms(mode, drive, values);
  return mode;
}

function guardTerms({ space, count: k, currents, flux, constant, cos, sin }: Mode, drive: Drive, values: readonly number[]): GuardTerms {
  const m = drive.cos.length;
  const h = drive.orders.length;
  const drops = product(space.resistance, currents, k);
  const { guards } = space;
  const terms: GuardTerms = {
    count: guards.length,
    constant: new Float64Array(guards.length),
    cos: new Float64Array(guards.length * h),
    sin: new Float64Array(guards.length * h),
    free: new Float64Array(guards.length * k),
  };
  guards.forEach((guard, g) => {
    terms.constant[g] = guard.offset;
    for (let i = 0; i < m; i++) {
      const r = guard.residual[i];
      if (r === 0) continue;
      terms.constant[g] -= r * space.drop[i];
      const perSpeed = r * drive.speed;
      for (let n = 0; n < h; n++) {
        terms.cos[g * h + n] += perSpeed * drive.cos[i][n];
        terms.sin[g * h + n] += perSpeed * drive.sin[i][n];
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
        const w = drive.orders[n] * drive.omega;
        terms.cos[g * h + n] += level * cos[j * h + n] + change * w * sin[j * h + n];
        terms.sin[g * h + n] += level * sin[j * h + n] - change * w * cos[j * h + n];
      }
    }
  });
  return terms;
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

/** M W, flat, W with k columns. */
function product(matrix: Matrix, w: Float64Array, k: number): Float64Array {
  const m = matrix.length;
  const result = new Float64Array(m * k);
  for (let i = 0; i < m; i++)
    for (let n = 0; n < m; n++) {
      const x = matrix[i][n];
      if (x !== 0) for (let j = 0; j < k; j++) result[i * k + j] += x * w[n * k + j];
    }
  return result;
}
