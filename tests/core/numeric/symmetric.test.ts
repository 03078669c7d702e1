import { expect, test } from 'vitest';
import { generalizedEigen, type Matrix } from '../../../core/numeric/symmetric';

const product = (a: Matrix, v: number[]) => a.map((row) => row.reduce((sum, x, i) => sum + x * v[i], 0));
const A: Matrix = [
  [4, 1, -2],
  [1, 3, 0.5],
  [-2, 0.5, 6],
];
const M: Matrix = [
  [2, 0.3, 0],
  [0.3, 1, -0.2],
  [0, -0.2, 3],
];

/** Of the first so many rows and columns. */
const corner = (whole: Matrix, size: number) => whole.slice(0, size).map((row) => row.slice(0, size));

test.each([1, 2, 3])('size %i: vectors and values satisfy A v = λ M v, and the vectors are normal in M', (size) => {
  const [a, m] = [corner(A, size), corner(M, size)];
  const { values, vectors } = generalizedEigen(a, m);
  expect(values).toHaveLength(size);
  values.forEach((value, k) => {
    const v = vectors.map((row) => row[k]);
    const right = product(m, v);
    product(a, v).forEach((left, i) => expect(left).toBeCloseTo(value * right[i], 12));
    values.forEach((_, j) => {
      const other = vectors.map((row) => row[j]);
      expect(right.reduce((sum, x, i) => sum + x * other[i], 0)).toBeCloseTo(j === k ? 1 : 0, 12);
    });
  });
});

test('two by two by hand: A = [[2, 1], [1, 2]] has 1 and 3', () => {
  const one: Matrix = [
    [1, 0],
    [0, 1],
  ];
  const { values } = generalizedEigen(
    [
      [2, 1],
      [1, 2],
    ],
    one,
  );
  expect([...values].sort()).toEqual([expect.closeTo(1, 12), expect.closeTo(3, 12)]);
});

test.each([1, 2, 3])('size %i: a second matrix that is not positive definite is refused', (size) => {
  const flat = corner(A, size).map((row, i) => row.map((_, j) => (i === j && i < size - 1 ? 1 : 0)));
  expect(() => generalizedEigen(corner(A, size), flat)).toThrow('positive definite');
});
