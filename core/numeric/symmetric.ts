/** A small dense matrix, row by row. */
export type Matrix = number[][];

/**
 * Eigenvalues and vectors of A v = λ M v for symmetric A and symmetric positive definite M.
 *
 * @param a  A. [any]
 * @param m  M. [any]
 * @returns  λ, and the vectors as columns of V, with Vᵀ M V = 1. [A over M]
 *
 * Source    Cholesky reduction to a standard problem, then cyclic Jacobi rotations: Golub & Van Loan, Matrix Computations, §8.5, §8.7; for up to two by
 *           two, which is what curves ask for by the thousand, the same written out.
 * Checked   tests/core/numeric/symmetric.test.ts
 */
export function generalizedEigen(a: Matrix, m: Matrix): { values: number[]; vectors: Matrix } {
  const n = a.length;
  if (n === 1) return ofOne(a[0][0], m[0][0]);
  if (n === 2) return ofTwo(a, m);
  const l = cholesky(m);
  // C = L⁻¹ A L⁻ᵀ
  const half = solvedLower(l, a);
  const c = solvedLower(l, transposed(half));
  const v = jacobi(c);
  const vectors = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  for (let k = 0; k < n; k++)
    for (let i = n - 1; i >= 0; i--) {
      let sum = v[i][k];
      for (let j = i + 1; j < n; j++) sum -= l[j][i] * vectors[j][k];
      vectors[i][k] = sum / l[i][i];
    }
  return { values: c.map((row, i) => row[i]), vectors };
}

function ofOne(a: number, m: number): { values: number[]; vectors: Matrix } {
  return { values: [a / m], vectors: [[1 / root(m)]] };
}

function ofTwo([[a, b], [, d]]: Matrix, [[p], [q, r]]: Matrix): { values: number[]; vectors: Matrix } {
  // L = [[l1, 0], [below, l2]], then C = L⁻¹ A L⁻ᵀ = [[c1, cross], [cross, c2]], turned once.
  const l1 = root(p);
  const below = q / l1;
  const l2 = root(r - below * below);
  const c1 = a / p;
  const cross = (b / l1 - below * c1) / l2;
  const c2 = ((d - below * (b / l1)) / l2 - below * cross) / l2;
  const theta = (c2 - c1) / (2 * cross);
  const tangent = cross === 0 ? 0 : Math.sign(theta || 1) / (Math.abs(theta) + Math.sqrt(1 + theta * theta));
  const cosine = 1 / Math.sqrt(1 + tangent * tangent);
  const sine = tangent * cosine;
  return {
    values: [c1 - tangent * cross, c2 + tangent * cross],
    vectors: [
      [(cosine + (below * sine) / l2) / l1, (sine - (below * cosine) / l2) / l1],
      [-sine / l2, cosine / l2],
    ],
  };
}

function root(square: number): number {
  if (!(square > 0)) throw new RangeError('the matrix must be positive definite');
  return Math.sqrt(square);
}

const transposed = (a: Matrix): Matrix => a[0].map((_, j) => a.map((row) => row[j]));

function cholesky(m: Matrix): Matrix {
  const n = m.length;
  const l = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  for (let j = 0; j < n; j++)
    for (let i = j; i < n; i++) {
      let sum = m[i][j];
      for (let k = 0; k < j; k++) sum -= l[i][k] * l[j][k];
      l[i][j] = i === j ? root(sum) : sum / l[j][j];
    }
  return l;
}

function solvedLower(l: Matrix, b: Matrix): Matrix {
  const x = b.map((row) => [...row]);
  for (let k = 0; k < b[0].length; k++)
    for (let i = 0; i < l.length; i++) {
      let sum = x[i][k];
      for (let j = 0; j < i; j++) sum -= l[i][j] * x[j][k];
      x[i][k] = sum / l[i][i];
    }
  return x;
}

/** Turns C to diagonal form in place and returns the rotations' product. */
function jacobi(c: Matrix): Matrix {
  const n = c.length;
  const v: Matrix = c.map((row, i) => row.map((_, j) => (i === j ? 1 : 0)));
  for (let sweep = 0; sweep < 30; sweep++) {
    let off = 0;
    let on = 0;
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) {
        if (i === j) on += c[i][i] ** 2;
        else off += c[i][j] ** 2;
      }
    if (off <= 1e-30 * on) break;
    for (let p = 0; p < n; p++)
      for (let q = p + 1; q < n; q++) {
        if (c[p][q] === 0) continue;
        const theta = (c[q][q] - c[p][p]) / (2 * c[p][q]);
        const t = Math.sign(theta || 1) / (Math.abs(theta) + Math.sqrt(1 + theta * theta));
        const cosine = 1 / Math.sqrt(1 + t * t);
        const sine = t * cosine;
        for (let k = 0; k < n; k++) [c[k][p], c[k][q]] = [cosine * c[k][p] - sine * c[k][q], sine * c[k][p] + cosine * c[k][q]];
        for (let k = 0; k < n; k++) [c[p][k], c[q][k]] = [cosine * c[p][k] - sine * c[q][k], sine * c[p][k] + cosine * c[q][k]];
        for (let k = 0; k < n; k++) [v[k][p], v[k][q]] = [cosine * v[k][p] - sine * v[k][q], sine * v[k][p] + cosine * v[k][q]];
      }
  }
  return v;
}
