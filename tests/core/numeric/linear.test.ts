import { expect, test } from 'vitest';
import { linearSolution } from '../../../core/numeric/linear';

test('a set that needs rows exchanged is solved, and its matrix left as it was', () => {
  const a = [
    [0, 2, 1],
    [1, -2, -3],
    [-1, 1, 2],
  ];
  const x = linearSolution(a, [-8, 0, 3]) ?? [];
  [-4, -5, 2].forEach((expected, i) => expect(x[i]).toBeCloseTo(expected, 12));
  expect(a[0]).toEqual([0, 2, 1]);
});

test('a singular set has no solution', () => {
  expect(
    linearSolution(
      [
        [1, 2],
        [2, 4],
      ],
      [1, 2],
    ),
  ).toBeUndefined();
});
