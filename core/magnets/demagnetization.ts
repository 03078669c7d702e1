import { MU_0 } from '../constants';
import type { MagnetShape } from './section';
import { magnetField, shapeModel } from './shapes';

/** Share of the intrinsic coercivity at which the knee begins. Makers call H_k/H_cJ the squareness and sell 0.9 or better (from memory). */
export const KNEE = 0.9;

/**
 * Permeance coefficient of a magnet lying alone: the slope of its load line, B / μ₀H, at the middle of a pole face.
 *
 * @param shape  Magnet. [m]
 * @returns      Permeance coefficient. [-]
 *
 * Source    closed-form field; load line as in Furlani 2001, ch. 1 (from memory).
 * Checked   tests/core/magnets/demagnetization.test.ts
 */
export function permeanceCoefficient(shape: MagnetShape): number {
  const [x, y] = shapeModel(shape).centre(shape);
  const b = magnetField(shape, 1)(x, y, shape.axial / 2)[2];
  return b / (1 - b);
}

/**
 * Demagnetising field where the load line meets the straight recoil line.
 *
 *   H = B_r / (μ₀ (μ_r + P))
 *
 * @param remanence           Remanence at temperature, B_r. [T]
 * @param permeance           Permeance coefficient, P. [-]
 * @param recoilPermeability  μ_r. [-]
 * @returns                   Magnitude of the field against the polarisation. [A/m]
 *
 * Source    Furlani 2001, ch. 1 (from memory).
 * Checked   tests/core/magnets/demagnetization.test.ts
 */
export function loadLineField(remanence: number, permeance: number, recoilPermeability: number): number {
  return remanence / (MU_0 * (recoilPermeability + permeance));
}

/**
 * Demagnetising field at a place in a magnet whose flux density is known.
 *
 *   H = (B_r − B) / (μ₀ μ_r)
 *
 * @param remanence           Remanence at temperature, B_r. [T]
 * @param fluxDensity         Flux density there, along the polarisation, B. [T]
 * @param recoilPermeability  μ_r. [-]
 * @returns                   Field against the polarisation; below 0 where the rest of the machine magnetises it further. [A/m]
 *
 * Source    straight recoil line, by definition.
 * Checked   tests/core/magnets/demagnetization.test.ts
 */
export function demagnetizingField(remanence: number, fluxDensity: number, recoilPermeability: number): number {
  return (remanence - fluxDensity) / (MU_0 * recoilPermeability);
}

/**
 * Field with which the winding's current works against the magnets, all its ampere-turns taken to act on one pole and no leakage: a bound, for the shorted
 * winding.
 *
 *   H = N I / (μ_r g + n h)
 *
 * @param ampereTurns         Turns linked by one pole times peak current, N I. [A]
 * @param gapLength           Gap, g. [m]
 * @param magnetHeight        Height of magnet crossed by the flux, n h, both discs' together. [m]
 * @param recoilPermeability  μ_r of the magnets. [-]
 * @returns                   Field in the magnets. [A/m]
 *
 * Source    magnetic circuit (common practice, no source).
 * Checked   tests/core/magnets/demagnetization.test.ts
 */
export function armatureField(ampereTurns: number, gapLength: number, magnetHeight: number, recoilPermeability: number): number {
  return ampereTurns / (gapLength * recoilPermeability + magnetHeight);
}

/**
 * Intrinsic coercivity at a temperature.
 *
 *   H_cJ(T) = H_cJ20 · (1 + β (T − 20))
 *
 * @param coercivity20  At 20 °C. [A/m]
 * @param coefficient   Temperature coefficient, β. [1/K]
 * @param temperature   Magnet temperature, T. [°C]
 * @returns             Intrinsic coercivity, not below 0. [A/m]
 *
 * Source    IEC 60404-8-1 (from memory).
 * Checked   tests/core/magnets/demagnetization.test.ts
 */
export function coercivityAt(coercivity20: number, coefficient: number, temperature: number): number {
  return Math.max(0, coercivity20 * (1 + coefficient * (temperature - 20)));
}
