import { expect, test } from 'vitest';
import { crossing } from '../../../core/numeric/crossing';

test('finds where a function crosses zero', () => {
  expect(crossing((x) => x ** 3 - 8, 0, 10)).toBeCloseTo(2, 4);
  expect(crossing((x) => Math.expm1(x - 5), 0, 9)).toBeCloseTo(5, 4);
});

test('a straight line needs one step', () => {
  let asked = 0;
  expect(
    crossing(
      (x) => {
        asked++;
        return x - 3;
      },
      0,
      9,
    ),
  ).toBe(3);
  expect(asked).toBe(3);
});

test('a function already above zero crosses at the low end', () => expect(crossing((x) => x + 1, 0, 9)).toBe(0));
