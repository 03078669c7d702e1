export interface Air {
  /** [W/(m·K)] */
  conductivity: number;
  /** Kinematic. [m²/s] */
  viscosity: number;
  prandtl: number;
}

const PRESSURE = 101325; // Pa
const GAS_CONSTANT = 287.05; // J/(kg·K)
const SPECIFIC_HEAT = 1009; // J/(kg·K)

/**
 * Dry air at sea level.
 *
 * @param temperature  [°C]
 * @returns            Conductivity, kinematic viscosity and Prandtl number. [W/(m·K), m²/s, -]
 *
 *   μ = 1.716e-5 (T/273.15)^1.5 · (273.15 + 110.4)/(T + 110.4)      k = 0.0241 (T/273.15)^1.5 · (273.15 + 194)/(T + 194)      T in kelvin
 *
 * Valid     −100…1000 °C, within 3 % of the handbook.
 * Omits     height of the site: thinner air cools less, about 5 % a kilometre.
 * Source    Sutherland's law; coefficients from White, Viscous Fluid Flow, tables 1-2 and 1-3 (from memory).
 * Checked   tests/reference/heat.test.ts
 */
export function airAt(temperature: number): Air {
  const kelvin = temperature + 273.15;
  const growth = (kelvin / 273.15) * Math.sqrt(kelvin / 273.15);
  const dynamic = (1.716e-5 * growth * (273.15 + 110.4)) / (kelvin + 110.4);
  const conductivity = (0.0241 * growth * (273.15 + 194)) / (kelvin + 194);
  return { conductivity, viscosity: (dynamic * GAS_CONSTANT * kelvin) / PRESSURE, prandtl: (dynamic * SPECIFIC_HEAT) / conductivity };
}
