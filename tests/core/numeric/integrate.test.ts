import { expect, test } from 'vitest';
import { gaussLegendre, integral } from '../../../core/numeric/integrate';

test('three nodes are the ones in the handbook (Abramowitz & Stegun 1964, table 25.4)', () => {
  const { nodes, weights } = gaussLegendre(3);
  [-0.774596669241483, 0, 0.774596669241483].forEach((x, i) => expect(nodes[i]).toBeCloseTo(x, 14));
  [0.555555555555556, 0.888888888888889, 0.555555555555556].forEach((w, i) => expect(weights[i]).toBeCloseTo(w, 14));
});

test('n nodes are exact for a polynomial of degree 2n − 1', () => {
  for (const n of [1, 2, 5, 12, 40]) {
    const degree = 2 * n - 1;
    expect(integral((x) => (degree + 1) * x ** degree, 0, 1, n)).toBeCloseTo(1, 12);
  }
});

test('a smooth integrand converges to its integral', () => {
  expect(integral(Math.exp, -1, 2, 12)).toBeCloseTo(Math.E ** 2 - 1 / Math.E, 13);
});

test('a count that is not a whole number is refused', () => {
  expect(() => gaussLegendre(2.5)).toThrow('received 2.5');
  expect(() => gaussLegendre(0)).toThrow('received 0');
});
