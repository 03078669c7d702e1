/**
 * Chebyshev nodes of the first kind: no node lies on an end, and one node is the middle.
 *
 * @param count  Nodes, at least 1. [-]
 * @param from   Lower end. [unit of x]
 * @param to     Upper end. [unit of x]
 * @returns      Nodes in rising order. [unit of x]
 *
 * Source    Trefethen 2013, *Approximation Theory and Approximation Practice*, ch. 2 (from memory).
 * Checked   tests/core/numeric/interpolate.test.ts
 */
export function chebyshevNodes(count: number, from = -1, to = 1): number[] {
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`count must be a whole number of at least 1; received ${count}`);
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  return Array.from({ length: count }, (_, i) => middle - half * Math.cos((Math.PI * (2 * i + 1)) / (2 * count)));
}

/**
 * Barycentric weights of any distinct nodes, scaled so that the greatest is 1.
 *
 *   wᵢ = 1 / Π (xᵢ − xⱼ), j ≠ i
 *
 * @param nodes  Distinct nodes. [unit of x]
 * @returns      Weights, one per node. [-]
 *
 * Source    Berrut & Trefethen 2004, *SIAM Review* 46, 501, eq. 3.2 (from memory).
 * Checked   tests/core/numeric/interpolate.test.ts
 */
export function barycentricWeights(nodes: readonly number[]): number[] {
  const span = Math.max(...nodes) - Math.min(...nodes) || 1;
  const weights = nodes.map((x, i) => {
    let product = 1;
    for (let j = 0; j < nodes.length; j++) if (j !== i) product *= ((x - nodes[j]) / span) * 4;
    return 1 / product;
  });
  const greatest = Math.max(...weights.map(Math.abs));
  return weights.map((w) => w / greatest);
}

/**
 * What each node's value counts for in the interpolated value at x: f(x) ≈ Σ cᵢ f(xᵢ). The same coefficients serve every quantity kept on the same nodes.
 *
 * @param nodes    Distinct nodes. [unit of x]
 * @param x        Where the value is wanted; close outside the nodes is allowed. [unit of x]
 * @param weights  `barycentricWeights(nodes)`, worked out here when not handed in. [-]
 * @returns        Coefficients, adding up to 1. [-]
 *
 * Source    Berrut & Trefethen 2004, eq. 4.2 (from memory).
 * Checked   tests/core/numeric/interpolate.test.ts
 */
export function interpolationCoefficients(
  nodes: readonly number[],
  x: number,
  weights: readonly number[] = barycentricWeights(nodes),
): number[] {
  const hit = nodes.indexOf(x);
  if (hit >= 0) return nodes.map((_, i) => (i === hit ? 1 : 0));
  const terms = nodes.map((node, i) => weights[i] / (x - node));
  const sum = terms.reduce((total, term) => total + term, 0);
  return terms.map((term) => term / sum);
}

/**
 * Polynomial interpolation through all nodes.
 *
 * @param nodes   Distinct nodes. [unit of x]
 * @param values  Values at the nodes. [unit of f]
 * @param x       Where the value is wanted. [unit of x]
 * @returns       Interpolated value. [unit of f]
 *
 * Source    as `interpolationCoefficients`.
 * Checked   tests/core/numeric/interpolate.test.ts
 */
export function interpolated(nodes: readonly number[], values: readonly number[], x: number): number {
  const coefficients = interpolationCoefficients(nodes, x);
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) sum += coefficients[i] * values[i];
  return sum;
}
