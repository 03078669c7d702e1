import { MU_0 } from '../constants';
import type { MagnetShape } from './section';
import { magnetField, shapeModel } from './shapes';

/** Share of the intrinsic coercivity at which the knee begins. Makers call H_k/H_cJ the squareness and sell 0.9 or better (from memory). */
export const KNEE = 0.9;

/**
 * Demagnetising field of a magnet lying alone, at the middle of a pole face: the worst a magnet meets before it is built in. Steel behind it and a magnet
 * facing it make it less.
 *
 *   H = (B − B_r) / μ₀, with B of the closed form
 *
 * @param shape      Magnet. [m]
 * @param remanence  Remanence at temperature. [T]
 * @returns          Magnitude of the field against the polarisation. [A/m]
 *
 * Omits     recoil permeability, which lowers it by a few percent.
 * Source    Furlani 2001, ch. 1 and 4 (from memory).
 * Checked   tests/core/magnets/demagnetization.test.ts
 */
export function selfDemagnetizingField(shape: MagnetShape, remanence: number): number {
  return (remanence - faceFluxDensity(shape, remanence)) / MU_0;
}

/**
 * Permeance coefficient of a magnet lying alone: the slope of its load line, B / μ₀H, at the middle of a pole face.
 *
 * @param shape  Magnet. [m]
 * @returns      Permeance coefficient. [-]
 *
 * Source    as `selfDemagnetizingField`.
 * Checked   tests/core/magnets/demagnetization.test.ts
 */
export function permeanceCoefficient(shape: MagnetShape): number {
  const b = faceFluxDensity(shape, 1);
  return b / (1 - b);
}

/**
 * Field with which the winding's current works against the magnets, all its ampere-turns taken to act on one pole and no leakage: a bound, for the shorted
 * winding.
 *
 *   H = N I / (g + n h / μ_r)
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

function faceFluxDensity(shape: MagnetShape, remanence: number): number {
  const [x, y] = shapeModel(shape).centre(shape);
  return magnetField(shape, remanence)(x, y, shape.axial / 2)[2];
}
