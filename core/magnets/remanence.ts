import type { MagnetsSection } from './section';
import { magnetField, shapeModel } from './shapes';

/**
 * Remanence at a temperature, within the reversible range.
 *
 *   B_r(T) = B_r20 · (1 + α (T − 20))
 *
 * @param remanence20  Remanence at 20 °C. [T]
 * @param coefficient  Temperature coefficient, α, negative for the usual materials. [1/K]
 * @param temperature  Magnet temperature, T. [°C]
 * @returns            Remanence; 0 where the straight line has run out of magnetism, which the stage reports. [T]
 *
 * Valid     −40 °C to the grade's limit.
 * Omits     lasting losses above the knee.
 * Source    IEC 60404-8-1 (from memory).
 * Checked   tests/core/magnets/remanence.test.ts
 */
export function remanenceAt(remanence20: number, coefficient: number, temperature: number): number {
  return Math.max(0, remanence20 * (1 + coefficient * (temperature - 20)));
}

/** Magnets on a winter's morning, when they are strongest. [°C] Common practice, no source. */
const COLDEST = -20;

/**
 * How much stronger magnets are on a winter's morning.
 *
 * @param remanence20  Remanence at 20 °C. [T]
 * @param coefficient  Temperature coefficient. [1/K]
 * @param warm         Remanence with which the field was worked out. [T]
 * @returns            Remanence at −20 °C over that one; 1 where that one is nothing, which the stage reports. [-]
 *
 * Source    remanenceAt.
 * Checked   tests/core/magnets/remanence.test.ts
 */
export const winterShare = (remanence20: number, coefficient: number, warm: number): number =>
  warm === 0 ? 1 : remanenceAt(remanence20, coefficient, COLDEST) / warm;

/** What a gaussmeter showed on a magnet's axis. */
export interface AxisReading {
  /** Sign disregarded. [T] */
  fluxDensity: number;
  /** From the pole face to the sensor's own element, which sits some way inside the probe. [m] */
  distance: number;
  /** Of the magnet. [°C] */
  temperature: number;
}

/**
 * Remanence at 20 °C from one gaussmeter reading on the magnet's axis, the magnet lying alone, away from steel and other magnets.
 *
 * @param of.shape                     Magnet. [m]
 * @param of.remanenceTempCoefficient  α. [1/K]
 * @param reading                      Flux density in T, distance in m, temperature in °C.
 * @returns                            Remanence at 20 °C; Infinity where the coefficient leaves none at the reading's temperature. [T]
 *
 * Omits     recoil permeability, which makes the value some 2 % too small for a flat magnet; the gap field is then the truer for it.
 * Source    magnetField, which is proportional to remanence; `remanenceAt`.
 * Checked   tests/core/magnets/remanence.test.ts
 */
export function remanenceFromReading(
  { shape, remanenceTempCoefficient }: Pick<MagnetsSection, 'shape' | 'remanenceTempCoefficient'>,
  { fluxDensity, distance, temperature }: AxisReading,
): number {
  const [x, y] = shapeModel(shape).centre(shape);
  const perTesla = Math.abs(magnetField(shape, remanenceAt(1, remanenceTempCoefficient, temperature))(x, y, shape.axial / 2 + distance)[2]);
  return Math.abs(fluxDensity) / perTesla;
}
