/**
 * Solution of a small set of linear equations.
 *
 * @param matrix  Rows of A, not changed. [any]
 * @param right   b. [any]
 * @returns       x of A x = b; undefined where A is singular. [any]
 *
 * Source    Gaussian elimination with partial pivoting: Golub & Van Loan, Matrix Computations, §3.4 (from memory).
 * Checked   tests/core/numeric/linear.test.ts
 */
export function linearSolution(matrix: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
  const n = right.length;
  const a = matrix.map((row) => [...row]);
  const x = [...right];
  for (let p = 0; p < n; p++) {
    let pivot = p;
    for (let i = p + 1; i < n; i++) if (Math.abs(a[i][p]) > Math.abs(a[pivot][p])) pivot = i;
    if (!(Math.abs(a[pivot][p]) > 0)) return undefined;
    if (pivot !== p) {
      [a[p], a[pivot]] = [a[pivot], a[p]];
      [x[p], x[pivot]] = [x[pivot], x[p]];
    }
    for (let i = p + 1; i < n; i++) {
      const f = a[i][p] / a[p][p];
      if (f === 0) continue;
      for (let j = p; j < n; j++) a[i][j] -= f * a[p][j];
      x[i] -= f * x[p];
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let j = i + 1; j < n; j++) x[i] -= a[i][j] * x[j];
    x[i] /= a[i][i];
  }
  return x;
}
