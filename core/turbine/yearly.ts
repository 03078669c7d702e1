/** A Julian year, by definition. [s] */
export const YEAR = 365.25 * 24 * 3600;

// Lanczos approximation, g = 7, nine terms: Press et al., Numerical Recipes, and Godfrey's coefficients (from memory); 1e-13 relative.
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/**
 * Gamma function of a positive number.
 *
 * @param x  More than 0. [-]
 * @returns  Γ(x). [-]
 *
 * Source    Lanczos approximation.
 * Checked   tests/reference/wind.test.ts
 */
export function gamma(x: number): number {
  if (x < 0.5) return Math.PI / (Math.sin(Math.PI * x) * gamma(1 - x));
  const t = x + 6.5;
  const series = LANCZOS.slice(1).reduce((sum, c, i) => sum + c / (x + i), LANCZOS[0]);
  return Math.sqrt(2 * Math.PI) * t ** (x - 0.5) * Math.exp(-t) * series;
}

/**
 * Energy of a year at a site whose winds follow a Weibull law.
 *
 * @param curve      Power at rising winds from 0, straight between; nothing beyond the last. [m/s, W]
 * @param meanWind   Year's mean. [m/s]
 * @param shape      Weibull shape, 2 for Rayleigh. [-]
 * @returns          Energy. [J]
 *
 * Source    Weibull distribution, scale = mean / Γ(1 + 1/k); each straight piece integrated by parts over the survival function.
 * Checked   tests/reference/wind.test.ts
 */
export function yearEnergy(curve: readonly { wind: number; watts: number }[], meanWind: number, shape: number): number {
  const scale = meanWind / gamma(1 + 1 / shape);
  const share = (wind: number) => Math.exp(-((wind / scale) ** shape));
  const nodes = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)];
  const weights = [5 / 18, 8 / 18, 5 / 18];
  let mean = 0;
  for (let i = 1; i < curve.length; i++) {
    const a = curve[i - 1];
    const b = curve[i];
    const width = b.wind - a.wind;
    const survived = nodes.reduce((sum, x, k) => sum + weights[k] * share(a.wind + x * width), 0);
    mean += a.watts * share(a.wind) - b.watts * share(b.wind) + (b.watts - a.watts) * survived;
  }
  return mean * YEAR;
}
