import { expect, test } from 'vitest';
import { barycentricWeights, chebyshevNodes, interpolated, interpolationCoefficients } from '../../../core/numeric/interpolate';

test('nodes lie inside the interval, rising and symmetric about its middle', () => {
  const nodes = chebyshevNodes(7, 2, 4);
  expect(nodes[3]).toBeCloseTo(3, 14);
  nodes.forEach((x, i) => {
    expect(x + nodes[6 - i]).toBeCloseTo(6, 13);
    if (i > 0) expect(x).toBeGreaterThan(nodes[i - 1]);
  });
  expect(nodes[0]).toBeGreaterThan(2);
});

test('one node is the middle and interpolates a constant', () => {
  expect(chebyshevNodes(1, 0, 1)[0]).toBeCloseTo(0.5, 15);
  expect(interpolated([0.5], [3], 0.9)).toBe(3);
});

test('n nodes reproduce a polynomial of degree n − 1 anywhere', () => {
  const nodes = chebyshevNodes(6, -1, 3);
  const quintic = (x: number) => 2 - x + 0.5 * x ** 5;
  for (const x of [-1, 0.1, 2.2, 3]) expect(interpolated(nodes, nodes.map(quintic), x)).toBeCloseTo(quintic(x), 11);
});

test('a value on a node is the node’s value', () => {
  const nodes = chebyshevNodes(5, 0, 1);
  expect(interpolationCoefficients(nodes, nodes[2])).toEqual([0, 0, 1, 0, 0]);
});

test('many nodes neither overflow nor lose their sum', () => {
  const nodes = chebyshevNodes(60, 0.1, 0.16);
  const weights = barycentricWeights(nodes);
  expect(weights.every(Number.isFinite)).toBe(true);
  const sum = interpolationCoefficients(nodes, 0.1311, weights).reduce((a, b) => a + b, 0);
  expect(sum).toBeCloseTo(1, 12);
});
