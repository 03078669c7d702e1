import { crossing } from '../numeric/crossing';
import { airAt } from './air';
import { naturalConvection, radiation, stirredConvection } from './convection';

/** Thermal conductivity of unfilled resin and printed plastic. [W/(m·K)] Handbook range 0.17–0.35 (from memory). */
const SKIN_CONDUCTIVITY = 0.2;
/** Of resin, paint, plastic and rusty steel alike. [-] Handbook range 0.85–0.95 (from memory). */
const EMISSIVITY = 0.9;

/** The face's temperature depends on its own film; two passes find the film to 1 % under a skin of 10 mm. */
const FACE_PASSES = 2;

/** What carries the heat away from the copper. */
export interface Cooling {
  /** Both faces of the copper. [m²] */
  area: number;
  /** Height of the winding as a plate, its outer diameter. [m] */
  height: number;
  discRadius: number;
  /** Former or resin over the copper, each face. [m] */
  skin: number;
  /** Free air between a face and its disc, 0 for a face in the open. [m] */
  clearance?: number;
}

/**
 * Heat conductance from copper to air, through the skin and the air film of both faces.
 *
 * @param cooling      Geometry. [m², m]
 * @param speed        Of the shaft. [rad/s]
 * @param temperature  Of the copper. [°C]
 * @param air          [°C]
 * @returns            Conductance. [W/K]
 *
 * Valid     gaps of a hundredth of the disc's radius and wider. In still air the heat crosses the gap by conduction and leaves the disc by natural
 *           convection and radiation; what the discs stir is added by the cube rule.
 * Omits     wind blown through the machine, which cools more; heat through arcs and leads; the disc warming while it stirs.
 * Source    convection.ts; cube rule of Churchill 1977, AIChE J. 23, 10; a still face beside a turning disc cooled as the disc is: common practice,
 *           no source.
 * Checked   tests/core/heat/cooling.test.ts
 */
export function coolingConductance(cooling: Cooling, speed: number, temperature: number, air: number): number {
  const { area, height, discRadius, skin, clearance = 0 } = cooling;
  const skinResistance = skin / SKIN_CONDUCTIVITY;
  const filmAt = (face: number) => {
    const film = (face + air) / 2;
    const open = naturalConvection(height, face, air) + radiation(EMISSIVITY, face, air);
    const still = 1 / (1 / open + clearance / airAt(film).conductivity);
    return Math.cbrt(still ** 3 + stirredConvection(discRadius, speed, film) ** 3);
  };
  let film = filmAt(temperature);
  for (let pass = 0; pass < FACE_PASSES; pass++) film = filmAt(air + (temperature - air) / (1 + film * skinResistance));
  return area / (1 / film + skinResistance);
}

/** A temperature nearer than this to the one its loss leads to has settled but for a last, small step. [K] */
const SETTLED = 1e-4;
/** Of the lack of temperature over temperature, to begin with: the film carries off a little more per kelvin the warmer it is. */
const USUAL_SLOPE = -1.2;
const FLATTEST = -0.2;
const MOST_SECANTS = 8;

/**
 * Temperature at which a steady loss settles.
 *
 * @param loss     In the copper. [W]
 * @param air      [°C]
 * @param cooling  Geometry. [m², m]
 * @param speed    Of the shaft. [rad/s]
 * @param melts    Melting point of the metal. [°C]
 * @param guess    Where to look first. [°C]
 * @returns        Metal's temperature, `melts` for one that would settle at no temperature below it. [°C]
 *
 * Source    loss = conductance · rise; secant steps from the guess, false position between air and melting point where they lead nowhere.
 * Checked   tests/core/heat/cooling.test.ts
 */
export function settledTemperature(loss: number, air: number, cooling: Cooling, speed: number, melts: number, guess = air): number {
  if (loss <= 0) return air;
  const lack = (temperature: number) => air + loss / coolingConductance(cooling, speed, temperature, air) - temperature;
  let temperature = guess;
  let here = lack(temperature);
  let slope = USUAL_SLOPE;
  for (let step = 0; step < MOST_SECANTS && slope < FLATTEST; step++) {
    const next = temperature - here / slope;
    if (!(next > air && next < melts)) break;
    if (Math.abs(here) < SETTLED) return next;
    const there = lack(next);
    slope = (there - here) / (next - temperature);
    [temperature, here] = [next, there];
  }
  const surplus = (t: number) => coolingConductance(cooling, speed, t, air) * (t - air) - loss;
  return surplus(melts) <= 0 ? melts : crossing(surplus, air, melts);
}
