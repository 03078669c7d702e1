import { secondsToReach } from './network';

/** A winding with its terminals shorted. */
export interface ShortedWinding {
  phases: number;
  /** Of one phase, RMS over the shaft's speed. [V·s/rad] */
  emf: number;
  /** Of one phase over the shaft's speed, pL. [Ω·s/rad] */
  reactance: number;
  /** Of one phase over temperature. [°C → Ω] */
  resistanceAt: (temperature: number) => number;
}

/**
 * Copper loss of a generator shorted to brake the wheel: all of it is taken from the shaft.
 *
 * @param winding      Shorted winding. [V·s/rad, Ω·s/rad, Ω]
 * @param speed        Of the shaft. [rad/s]
 * @param temperature  Of the copper. [°C]
 * @returns            Loss in all phases, m E² R/(R² + X²). [W]
 *
 * Omits     harmonics, the field's weakening by the current, the short's own resistance.
 * Source    Ohm's law for the fundamental.
 * Checked   tests/core/heat/brake.test.ts
 */
export function shortedLoss({ phases, emf, reactance, resistanceAt }: ShortedWinding, speed: number, temperature: number): number {
  const resistance = resistanceAt(temperature);
  return (phases * (emf * speed) ** 2 * resistance) / (resistance ** 2 + (reactance * speed) ** 2);
}

/**
 * Seconds until a shorted winding that keeps all its heat and goes on turning reaches its limit.
 *
 * @param winding       Shorted winding. [V·s/rad, Ω·s/rad, Ω]
 * @param speed         Of the shaft, more than 0. [rad/s]
 * @param heatCapacity  Of the metal. [J/K]
 * @param from          Temperature of the copper. [°C]
 * @param to            Its limit. [°C]
 * @returns             Time, 0 when it is there already. [s]
 *
 * Omits     heat into resin and air, which gives more time; the wheel slowing down, which gives more still.
 * Source    adiabatic heating, network.ts; less current as the copper warms counted.
 * Checked   tests/core/heat/brake.test.ts
 */
export function shortedSeconds(winding: ShortedWinding, speed: number, heatCapacity: number, from: number, to: number): number {
  const balance = { lossAt: (t: number) => shortedLoss(winding, speed, t), conductance: () => 0, airTemperature: from };
  return secondsToReach(balance, heatCapacity, from, to) ?? 0;
}
