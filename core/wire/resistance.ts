import { METALS } from '../constants';
import type { Metal } from './section';

/**
 * Direct-current resistance of a wire at its temperature.
 *
 *   R = ρ₂₀ · [1 + α₂₀ (T − 20)] · ℓ / A
 *
 * @param metal        Copper or aluminium. [-]
 * @param length       ℓ. [m]
 * @param section      Of metal, all strands, A. [m²]
 * @param temperature  T. [°C]
 * @returns            Resistance. [Ω]
 *
 * Valid     −50…250 °C.
 * Omits     skin and proximity effect: at these frequencies and sizes in heat/eddy.ts.
 * Source    IEC 60028 (copper), IEC 60889 (aluminium), by way of constants.ts.
 * Checked   tests/reference/wire-resistance.test.ts
 */
export function wireResistance(metal: Metal, length: number, section: number, temperature: number): number {
  return (METALS[metal].resistivity * temperatureFactor(metal, temperature) * length) / section;
}

/**
 * Resistance at a temperature over that at 20 °C.
 *
 * @param metal        Copper or aluminium. [-]
 * @param temperature  T. [°C]
 * @returns            1 + α₂₀ (T − 20). [-]
 *
 * Source    as `wireResistance`.
 * Checked   tests/reference/wire-resistance.test.ts
 */
export function temperatureFactor(metal: Metal, temperature: number): number {
  return 1 + METALS[metal].temperatureCoefficient * (temperature - 20);
}
