import { expect, test } from 'vitest';
import {
  barycentricWeights,
  chebyshevNodes,
  chebyshevWeights,
  clusteredNodes,
  interpolated,
  interpolationCoefficients,
} from '../../../core/numeric/interpolate';

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

test('weights in closed form are those worked out from the nodes', () => {
  const ours = chebyshevWeights(9);
  const theirs = barycentricWeights(chebyshevNodes(9, 2, 5));
  const ratio = ours[4] / theirs[4];
  ours.forEach((w, i) => expect(w).toBeCloseTo(ratio * theirs[i], 12));
});

test('nodes drawn together settle a sharp function that plain ones do not, and rise within the interval', () => {
  const sharp = (x: number) => Math.atan((x - 0.3) / 0.02) - Math.atan((x - 0.7) / 0.02);
  const count = 32;
  const worst = (nodes: number[]) => {
    const off = Array.from({ length: 500 }, (_, i) => {
      const x = i / 499;
      return Math.abs(
        interpolationCoefficients(nodes, x, chebyshevWeights(count)).reduce((sum, c, k) => sum + c * sharp(nodes[k]), 0) - sharp(x),
      );
    });
    return Math.max(...off);
  };
  const drawn = clusteredNodes(count, 0, 1, [0.3, 0.7], 0.02);
  drawn.forEach((x, i) => expect(x).toBeGreaterThan(i === 0 ? 0 : drawn[i - 1]));
  expect(drawn.at(-1)).toBeLessThan(1);
  expect(worst(drawn)).toBeLessThan(2e-3);
  expect(worst(chebyshevNodes(count, 0, 1))).toBeGreaterThan(0.1);
  expect(clusteredNodes(1, 0.4, 0.4, [0.3], 0.02)).toEqual([0.4]);
});
