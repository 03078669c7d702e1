import { naturalConvection, stirredConvection } from './convection';

/** Thermal conductivity of unfilled resin and printed plastic. [W/(m·K)] Handbook range 0.17–0.35 (from memory). */
const SKIN_CONDUCTIVITY = 0.2;

/** What carries the heat away from the copper. */
export interface Cooling {
  /** Both faces of the copper. [m²] */
  area: number;
  /** Height of the winding as a plate, its outer diameter. [m] */
  height: number;
  discRadius: number;
  /** Former or resin over the copper, each face. [m] */
  skin: number;
}

/**
 * Heat conductance from copper to air, through the skin and the air film of both faces.
 *
 * @param cooling      Geometry. [m², m]
 * @param speed        Of the shaft. [rad/s]
 * @param temperature  Of the copper; the face is taken a third cooler than the copper is above the air. [°C]
 * @param air          [°C]
 * @returns            Conductance. [W/K]
 *
 * Omits     radiation (the discs in sight are warm), the resin between the coils, the air blown through by the wind.
 * Source    convection.ts; natural and stirred part combined by the cube rule (Churchill 1977).
 * Checked   tests/core/heat/cooling.test.ts
 */
export function coolingConductance(cooling: Cooling, speed: number, temperature: number, air: number): number {
  const rise = Math.max(temperature - air, 1);
  const natural = naturalConvection(cooling.height, air + (2 / 3) * rise, air);
  const film = Math.cbrt(natural ** 3 + stirredConvection(cooling.discRadius, speed) ** 3);
  return cooling.area / (1 / film + cooling.skin / SKIN_CONDUCTIVITY);
}

/** Past this copper is no winding any more; a machine that would settle higher has run away thermally. [°C] */
export const HOTTEST = 1000;

/**
 * Temperature at which a steady loss settles.
 *
 * @param loss     In the copper. [W]
 * @param air      [°C]
 * @param cooling  Geometry. [m², m]
 * @param speed    Of the shaft. [rad/s]
 * @returns        Copper temperature, at most `HOTTEST`. [°C]
 *
 * Source    loss = conductance · rise, bisection.
 * Checked   tests/core/heat/cooling.test.ts
 */
export function settledTemperature(loss: number, air: number, cooling: Cooling, speed: number): number {
  if (loss <= 0) return air;
  let low = air;
  let high = HOTTEST;
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (coolingConductance(cooling, speed, middle, air) * (middle - air) < loss) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
