import { MU_0 } from '../constants';

/** Mild steel, H by B, linear between. [T], [A/m] */
const CURVE: readonly (readonly [b: number, h: number])[] = [
  [0, 0],
  [0.0025, 16],
  [0.005, 30],
  [0.0125, 54],
  [0.025, 93],
  [0.05, 143],
  [0.1, 191],
  [0.2, 210],
  [0.3, 222],
  [0.4, 233],
  [0.5, 247],
  [0.6, 258],
  [0.7, 272],
  [0.8, 289],
  [0.9, 313],
  [1.0, 342],
  [1.1, 377],
  [1.2, 433],
  [1.3, 509],
  [1.4, 648],
  [1.5, 933],
  [1.55, 1228],
  [1.6, 1934],
  [1.65, 2913],
  [1.7, 4993],
  [1.75, 7189],
  [1.8, 9423],
];
const LAST = CURVE[CURVE.length - 1];
/** Beyond the table: B = μ₀H + aH² + bH + c up to 2.22 T, then μ₀H + 2.16 T. */
const A = -2.381e-10;
const B = 2.327e-5;
const C = 1.59;
const SATURATION = 2.16;

/**
 * Flux density in mild steel.
 *
 * @param fieldStrength  H, not below 0. [A/m]
 * @returns              B. [T]
 *
 * Valid     hot- and cold-rolled mild steel as bought; cast iron and stainless carry less.
 * Source    TEAM workshop problem 13 (COMPUMAG), table and formulas as given in tests/reference/field_iron.json.
 * Checked   tests/core/field/steel.test.ts
 */
export function steelFluxDensity(fieldStrength: number): number {
  const h = fieldStrength;
  if (h >= LAST[1]) {
    // The parabola touches 2.16 T a little before its top; past there steel adds no more.
    const top = -B / (2 * A);
    const polarization = h < top ? A * h * h + B * h + C : SATURATION;
    return MU_0 * h + Math.min(polarization, SATURATION);
  }
  let low = 0;
  let high = CURVE.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (CURVE[middle][1] <= h) low = middle;
    else high = middle;
  }
  const [b0, h0] = CURVE[low];
  const [b1, h1] = CURVE[high];
  return b0 + ((b1 - b0) * (h - h0)) / (h1 - h0);
}
