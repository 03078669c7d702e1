import { MU_0 } from '../constants';
import { gapAdmittance, layerPotentials, magnetHarmonic, plateAdmittance } from './layers';
import type { UnrolledMachine } from './recoil';
import { steelFluxDensity } from './steel';

/** Flux density up to which a mild-steel plate is lightly loaded (common practice, no source). [T] */
export const PLATE_LIMIT = 1.6;

const ORDERS = [1, 3, 5, 7, 9, 11, 13, 15];
const SINES = Array.from({ length: 16 }, (_, i) => Math.sin(((i + 0.5) * Math.PI) / 32));

/**
 * Permeability of steel to a field varying as a sine along the plate: the fundamental of its flux over the field.
 *
 * @param amplitude  Peak field strength along the plate. [A/m]
 * @returns          Relative permeability. [-]
 *
 * Source    describing function (harmonic balance), steel.ts.
 * Checked   tests/reference/field-iron.test.ts
 */
function sinePermeability(amplitude: number): number {
  let sum = 0;
  for (const sine of SINES) sum += steelFluxDensity(amplitude * sine) * sine;
  return (2 * sum) / SINES.length / (MU_0 * amplitude);
}

/**
 * The steel plate behind the magnets: how much flux it carries and how much its saturation takes from the gap.
 *
 * The machine unrolled along the pitch circle, one harmonic at a time, with a plate of one permeability and open air behind it. That permeability is the
 * one at which the plate's own field, as a sine between two poles, gives back the flux it was worked out with.
 *
 * @param machine    Unrolled machine, `steel` disregarded. [m]
 * @param remanence  Remanence; for a real disc, that which gives the unrolled machine the real fundamental at pitch radius. [T]
 * @param thickness  Plate. [m]
 * @returns          Mean flux density across the plate's section between two poles [T], permeability there and factor on the gap field [-], thickness
 *                   that would carry the flux at 1.6 T [m].
 *
 * Valid     plates of mild steel. Fundamental within 3 % of finite elements from 2 mm (a third of the field lost) to 30 mm.
 * Omits     the plate's width beyond the magnets, which helps it.
 * Source    magnetic circuit of distributed reluctance; layers.ts.
 * Checked   tests/reference/field-iron.test.ts
 */
export function steelPlate(machine: UnrolledMachine, remanence: number, thickness: number) {
  const { arrangement, polePitch, magnetWidth, magnetHeight: height, gapLength, recoilPermeability } = machine;
  const cover = magnetWidth / polePitch;
  /** Potential at the magnets' faces, and the mean flux density in the plate between two poles, per unit of remanence, for one order. */
  const state = (order: number, permeability: number) => {
    const wave = (order * Math.PI) / polePitch;
    const back = permeability === Infinity ? Infinity : plateAdmittance(permeability, wave, thickness);
    const layer = layerPotentials({ wave, height, recoilPermeability, back, front: gapAdmittance(arrangement, wave, gapLength) });
    const leak = -layer.back / (Math.cosh(wave * thickness) + Math.sinh(wave * thickness) / permeability);
    return { front: layer.front, carried: (magnetHarmonic(order, cover) * (layer.through - leak)) / (wave * thickness) };
  };
  const betweenPoles = (permeability: number) =>
    Math.abs(ORDERS.reduce((sum, order) => sum + state(order, permeability).carried * Math.sin((order * Math.PI) / 2), 0)) * remanence;

  let low = 0;
  let high = Math.log(1e5);
  for (let pass = 0; pass < 40; pass++) {
    const middle = (low + high) / 2;
    const permeability = Math.exp(middle);
    const amplitude = (state(1, permeability).carried * remanence) / (MU_0 * permeability);
    if (amplitude === 0 || sinePermeability(amplitude) > permeability) low = middle;
    else high = middle;
  }
  const permeability = Math.exp((low + high) / 2);
  return {
    fluxDensity: betweenPoles(permeability),
    permeability,
    saturation: state(1, permeability).front / state(1, Infinity).front,
    thicknessNeeded: (betweenPoles(Infinity) * thickness) / PLATE_LIMIT,
  };
}
