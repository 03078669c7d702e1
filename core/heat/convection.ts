import { airAt } from './air';

const GRAVITY = 9.81;
const STEFAN_BOLTZMANN = 5.670374e-8; // W/(m²·K⁴), CODATA 2018

/**
 * Natural convection from a vertical face.
 *
 * @param height   Of the face. [m]
 * @param surface  Its temperature. [°C]
 * @param air      Temperature of the air. [°C]
 * @returns        Mean coefficient. [W/(m²·K)]
 *
 * Valid     Ra below 1e12, a face open to the room.
 * Source    Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1323; air at the mean of surface and air.
 * Checked   tests/reference/heat.test.ts
 */
export function naturalConvection(height: number, surface: number, air: number): number {
  const film = (surface + air) / 2;
  const { conductivity, viscosity, prandtl } = airAt(film);
  const rayleigh = (GRAVITY * Math.abs(surface - air) * height ** 3 * prandtl) / ((film + 273.15) * viscosity ** 2);
  const nusselt = (0.825 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2;
  return (nusselt * conductivity) / height;
}

/** Re at which the flow on a free disc turns turbulent. Cobb & Saunders 1956. */
const TURBULENT = 2.4e5;

/**
 * Convection on a disc that turns in free air.
 *
 * @param radius  Of the disc, R. [m]
 * @param speed   Of the shaft, ω. [rad/s]
 * @param film    Temperature of the air at the face. [°C]
 * @returns       Mean coefficient. [W/(m²·K)]
 *
 *   Re = ωR²/ν      Nu = hR/k = 0.36 Re^0.5, and with c = 2.4e5/Re below 1: 0.36 Re^0.5 · c + 0.015 Re^0.8 (1 − c^1.3)
 *
 * Source    Cobb & Saunders 1956, Proc. R. Soc. A 236, 343; laminar centre and turbulent rim put together as in Kreith, Principles of Heat Transfer
 *           (both from memory). Wagner 1948 calculates 0.335 for the laminar factor.
 * Checked   tests/reference/heat.test.ts
 */
export function stirredConvection(radius: number, speed: number, film: number): number {
  const { conductivity, viscosity } = airAt(film);
  const reynolds = (Math.abs(speed) * radius ** 2) / viscosity;
  const laminar = 0.36 * Math.sqrt(reynolds);
  const core = TURBULENT / reynolds;
  const nusselt = core >= 1 ? laminar : laminar * core + 0.015 * reynolds ** 0.8 * (1 - core ** 1.3);
  return (nusselt * conductivity) / radius;
}

/**
 * Radiation to surroundings as warm as the air, over the difference of temperatures.
 *
 * @param emissivity  ε. [-]
 * @param surface     Temperature of the face. [°C]
 * @param air         [°C]
 * @returns           Coefficient, εσ(T² + T_air²)(T + T_air). [W/(m²·K)]
 *
 * Source    Stefan–Boltzmann law.
 * Checked   tests/reference/heat.test.ts
 */
export function radiation(emissivity: number, surface: number, air: number): number {
  const [hot, cold] = [surface + 273.15, air + 273.15];
  return emissivity * STEFAN_BOLTZMANN * (hot ** 2 + cold ** 2) * (hot + cold);
}
