/** Dry air at about 60 °C film temperature. Conductivity [W/(m·K)], kinematic viscosity [m²/s], Prandtl number [-]. Incropera et al., table A.4 (from memory). */
const AIR = { conductivity: 0.0287, viscosity: 18.9e-6, prandtl: 0.703 };
const GRAVITY = 9.81;

/**
 * Natural convection from a vertical face.
 *
 * @param height       Of the face. [m]
 * @param surface      Its temperature. [°C]
 * @param air          Temperature of the air. [°C]
 * @returns            Mean coefficient. [W/(m²·K)]
 *
 * Valid     Ra below 1e12; the narrow gap between two discs hinders it, which stirring by the discs more than makes up once they turn.
 * Source    Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1323.
 * Checked   tests/reference/heat.test.ts
 */
export function naturalConvection(height: number, surface: number, air: number): number {
  const film = (surface + air) / 2 + 273.15;
  const rayleigh = (GRAVITY * Math.abs(surface - air) * height ** 3 * AIR.prandtl) / (film * AIR.viscosity ** 2);
  const nusselt = (0.825 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.492 / AIR.prandtl) ** (9 / 16)) ** (8 / 27)) ** 2;
  return (nusselt * AIR.conductivity) / height;
}

/**
 * Convection stirred by a disc that turns close to the face.
 *
 * @param radius  Of the disc. [m]
 * @param speed   Of the shaft. [rad/s]
 * @returns       Mean coefficient. [W/(m²·K)]
 *
 * Source    free rotating disc: Nu = 0.36 Re^0.5, laminar (Wagner 1948), Nu = 0.015 Re^0.8 above Re = 2.4e5 (Cobb & Saunders 1956), both from
 *           memory; that the still face opposite is cooled as the turning one is, common practice.
 * Checked   tests/reference/heat.test.ts
 */
export function stirredConvection(radius: number, speed: number): number {
  const reynolds = (Math.abs(speed) * radius ** 2) / AIR.viscosity;
  const nusselt = Math.max(0.36 * Math.sqrt(reynolds), reynolds > 2.4e5 ? 0.015 * reynolds ** 0.8 : 0);
  return (nusselt * AIR.conductivity) / radius;
}
