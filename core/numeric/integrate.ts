export interface Quadrature {
  nodes: number[];
  weights: number[];
}

const rules = new Map<number, Quadrature>();

/**
 * Gauss–Legendre nodes and weights: ∫f ≈ Σ wᵢ f(xᵢ), exact for polynomials up to degree 2n − 1. Rules on [−1, 1] are kept once made.
 *
 * @param count  Nodes, n, at least 1. [-]
 * @param from   Lower end. [unit of x]
 * @param to     Upper end. [unit of x]
 * @returns      Nodes in rising order and their weights, which add up to `to − from`. [unit of x]
 *
 * Source    Abramowitz & Stegun 1964, 25.4.29–30; nodes by Newton's method on the Legendre recurrence.
 * Checked   tests/core/numeric/integrate.test.ts
 */
export function gaussLegendre(count: number, from = -1, to = 1): Quadrature {
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`count must be a whole number of at least 1; received ${count}`);
  let rule = rules.get(count);
  if (!rule) rules.set(count, (rule = unitRule(count)));
  const half = (to - from) / 2;
  const middle = (to + from) / 2;
  return { nodes: rule.nodes.map((x) => middle + half * x), weights: rule.weights.map((w) => half * w) };
}

function unitRule(n: number): Quadrature {
  const nodes = new Array<number>(n);
  const weights = new Array<number>(n);
  for (let i = 0; i < n; i++) {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 0;
    for (let pass = 0; pass < 8; pass++) {
      let previous = 1;
      let value = x;
      for (let k = 2; k <= n; k++) [previous, value] = [value, ((2 * k - 1) * x * value - (k - 1) * previous) / k];
      slope = (n * (x * value - previous)) / (x * x - 1);
      const step = value / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    nodes[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  return { nodes, weights };
}

/**
 * Definite integral by Gauss–Legendre quadrature.
 *
 * @param f      Integrand. [any]
 * @param from   Lower end. [unit of x]
 * @param to     Upper end. [unit of x]
 * @param count  Nodes. [-]
 * @returns      Integral. [unit of f times unit of x]
 *
 * Source    as `gaussLegendre`.
 * Checked   tests/core/numeric/integrate.test.ts
 */
export function integral(f: (x: number) => number, from: number, to: number, count: number): number {
  const { nodes, weights } = gaussLegendre(count, from, to);
  let sum = 0;
  for (let i = 0; i < count; i++) sum += weights[i] * f(nodes[i]);
  return sum;
}
