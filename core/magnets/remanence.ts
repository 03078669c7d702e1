import type { MagnetShape } from './section';
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

/**
 * Remanence from one gaussmeter reading on the magnet's axis, the magnet lying alone, away from steel and other magnets.
 *
 * @param shape     Magnet. [m]
 * @param reading   Flux density read, sign disregarded. [T]
 * @param distance  From the pole face to the sensor's own element, which sits some way inside the probe. [m]
 * @returns         Remanence at the temperature of the reading. [T]
 *
 * Omits     recoil permeability, which makes the value some 2 % too small for a flat magnet; the gap field is then the truer for it.
 * Source    magnetField, which is proportional to remanence.
 * Checked   tests/core/magnets/remanence.test.ts
 */
export function remanenceFromReading(shape: MagnetShape, reading: number, distance: number): number {
  const [x, y] = shapeModel(shape).centre(shape);
  return Math.abs(reading) / Math.abs(magnetField(shape, 1)(x, y, shape.axial / 2 + distance)[2]);
}
