import { gaussLegendre } from './integrate';

const NODES = 48;

/**
 * Student's t: how many standard errors to each side hold a share of all cases.
 *
 * @param share    As in 0.95. [-]
 * @param degrees  Degrees of freedom, ν ≥ 1. [-]
 * @returns        t. [-]
 *
 *   P(|T| < √ν tan θ) = ∫₀^θ cos^{ν−1} / ∫₀^{π/2} cos^{ν−1}
 *
 * Source    density of Student's t with t = √ν tan θ; halving.
 * Checked   tests/core/numeric/distribution.test.ts
 */
export function studentFactor(share: number, degrees: number): number {
  const area = (to: number) => {
    // The density is narrow, some 1/√ν: what lies beyond a few widths counts for nothing.
    const top = Math.min(to, 12 / Math.sqrt(degrees));
    const { nodes, weights } = gaussLegendre(NODES, 0, top);
    return nodes.reduce((sum, x, i) => sum + weights[i] * Math.cos(x) ** (degrees - 1), 0);
  };
  const whole = area(Math.PI / 2);
  let [low, high] = [0, Math.PI / 2];
  for (let pass = 0; pass < 60; pass++) {
    const middle = (low + high) / 2;
    if (area(middle) < share * whole) low = middle;
    else high = middle;
  }
  return Math.sqrt(degrees) * Math.tan((low + high) / 2);
}

/**
 * How likely chance alone makes χ² so great.
 *
 * @param chiSquare  Sum of squares of standard normal residuals. [-]
 * @param degrees    Degrees of freedom. [-]
 * @returns          Probability. [-] 1 where there are no degrees of freedom.
 *
 * Valid     to about 0.005, better in the tail.
 * Source    cube-root approximation, Wilson & Hilferty 1931, Proc. Natl Acad. Sci. 17, 684; normal tail: Abramowitz & Stegun 26.2.17.
 * Checked   tests/core/numeric/distribution.test.ts
 */
export function chanceOf(chiSquare: number, degrees: number): number {
  if (degrees < 1) return 1;
  const spread = 2 / (9 * degrees);
  return normalTail((Math.cbrt(chiSquare / degrees) - 1 + spread) / Math.sqrt(spread));
}

/**
 * Share of a normal distribution beyond a value.
 *
 * @param value  In standard deviations. [-]
 * @returns      Probability. [-]
 *
 * Source    Abramowitz & Stegun 1964, 26.2.17 (from memory), error below 7.5e-8.
 * Checked   tests/core/numeric/distribution.test.ts
 */
export function normalTail(value: number): number {
  if (value < 0) return 1 - normalTail(-value);
  const t = 1 / (1 + 0.2316419 * value);
  const sum = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return (sum * Math.exp((-value * value) / 2)) / Math.sqrt(2 * Math.PI);
}
