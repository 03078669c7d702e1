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
 * Barycentric weights of `chebyshevNodes`, and of nodes that a smooth stretching has moved from there: the interpolant is then a rational one, as good in the
 * stretched coordinate as the polynomial is in the plain one.
 *
 *   wᵢ = (−1)ⁱ sin((2i + 1) π / 2n)
 *
 * @param count  Nodes, n. [-]
 * @returns      Weights, one per node. [-]
 *
 * Source    Berrut & Trefethen 2004, eq. 5.3; Tee & Trefethen 2006, *SIAM J. Sci. Comput.* 28, 1798 (both from memory).
 * Checked   tests/core/numeric/interpolate.test.ts
 */
export function chebyshevWeights(count: number): number[] {
  return Array.from({ length: count }, (_, i) => (i % 2 === 0 ? 1 : -1) * Math.sin(((2 * i + 1) * Math.PI) / (2 * count)));
}

/** How close to its place in the stretched coordinate a node must lie: what interpolation on the nodes may be off by. */
const NODE_PLACED = 1e-9;

/**
 * Chebyshev nodes drawn together round places where a function is rough over a known width.
 *
 *   Chebyshev in t(x) = Σ asinh((x − cⱼ) / d)
 *
 * @param count   Nodes, at least 1. [-]
 * @param from    Lower end. [unit of x]
 * @param to      Upper end. [unit of x]
 * @param places  Where to draw together, cⱼ, at least one. [unit of x]
 * @param width   Over which the function is rough there, d, above 0. [unit of x]
 * @returns       Nodes in rising order, for use with `chebyshevWeights`. [unit of x]
 *
 * Source    as `chebyshevWeights`; the sinh of Johnston & Elliott 2005 at several places.
 * Checked   tests/core/numeric/interpolate.test.ts
 */
export function clusteredNodes(count: number, from: number, to: number, places: readonly number[], width: number): number[] {
  const width2 = width * width;
  const stretched = (x: number) => places.reduce((sum, c) => sum + Math.asinh((x - c) / width), 0);
  const slope = (x: number) => places.reduce((sum, c) => sum + 1 / Math.sqrt((x - c) * (x - c) + width2), 0);
  let x = from;
  return chebyshevNodes(count, stretched(from), stretched(to)).map((t) => {
    // Newton's method, kept between bounds that close in.
    let low = x;
    let high = to;
    for (let pass = 0; pass < 60; pass++) {
      const off = stretched(x) - t;
      if (Math.abs(off) < NODE_PLACED) break;
      if (off > 0) high = x;
      else low = x;
      const next = x - off / slope(x);
      x = next > low && next < high ? next : (low + high) / 2;
    }
    return x;
  });
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
  const count = nodes.length;
  let least = Infinity;
  let most = -Infinity;
  for (let i = 0; i < count; i++) {
    least = Math.min(least, nodes[i]);
    most = Math.max(most, nodes[i]);
  }
  const scale = 4 / (most - least || 1);
  const weights = new Array<number>(count);
  let greatest = 0;
  for (let i = 0; i < count; i++) {
    let product = 1;
    for (let j = 0; j < count; j++) if (j !== i) product *= (nodes[i] - nodes[j]) * scale;
    weights[i] = 1 / product;
    greatest = Math.max(greatest, Math.abs(weights[i]));
  }
  for (let i = 0; i < count; i++) weights[i] /= greatest;
  return weights;
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
  const count = nodes.length;
  const terms = new Array<number>(count);
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const away = x - nodes[i];
    if (away === 0) return nodes.map((_, k) => (k === i ? 1 : 0));
    sum += terms[i] = weights[i] / away;
  }
  for (let i = 0; i < count; i++) terms[i] /= sum;
  return terms;
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
