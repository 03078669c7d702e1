import type { Matrix } from './symmetric';

/** n zeros. */
export const zeros = (n: number) => new Array<number>(n).fill(0);

/** Along axis k of n, as long as `size`. */
export const unit = (n: number, k: number, size = 1) => {
  const one = zeros(n);
  one[k] = size;
  return one;
};

/** a · factor. */
export const scaled = (a: readonly number[], factor: number) => a.map((x) => x * factor);

/** a − b. */
export const difference = (a: readonly number[], b: readonly number[]) => a.map((x, i) => x - b[i]);

/** aᵀ b. */
export const dot = (a: readonly number[], b: ArrayLike<number>) => a.reduce((sum, x, i) => sum + x * b[i], 0);

/** n × n with one value along the diagonal. */
export const diagonal = (n: number, value: number): Matrix => zeros(n).map((_, k) => unit(n, k, value));

/** M + factor · a aᵀ, in place. */
export const addOuter = (m: Matrix, a: readonly number[], factor: number) => {
  for (let i = 0; i < a.length; i++) if (a[i] !== 0) for (let j = 0; j < a.length; j++) m[i][j] += factor * a[i] * a[j];
};
