import { expect, test } from 'vitest';
import { generalizedEigen, type Matrix } from '../../../core/numeric/symmetric';

const product = (a: Matrix, v: number[]) => a.map((row) => row.reduce((sum, x, i) => sum + x * v[i], 0));
const a: Matrix = [
  [4, 1, -2],
  [1, 3, 0.5],
  [-2, 0.5, 6],
];
const m: Matrix = [
  [2, 0.3, 0],
  [0.3, 1, -0.2],
  [0, -0.2, 3],
];

test('vectors and values satisfy A v = λ M v, and the vectors are normal in M', () => {
  const { values, vectors } = generalizedEigen(a, m);
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

test('a second matrix that is not positive definite is refused', () => {
  expect(() =>
    generalizedEigen(a, [
      [0, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ]),
  ).toThrow('positive definite');
});
