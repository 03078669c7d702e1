/** A winding with its terminals shorted. */
export interface ShortedWinding {
  /** Of one phase, RMS. [V] */
  emf: number;
  phases: number;
  /** Of one phase, ωL. [Ω] */
  reactance: number;
  /** Of one phase over temperature. [°C → Ω] */
  resistanceAt: (temperature: number) => number;
}

/**
 * Copper loss of a generator shorted to brake the wheel.
 *
 * @param winding      Shorted winding at one speed. [V, Ω]
 * @param temperature  Of the copper. [°C]
 * @returns            Loss in all phases, m E² R/(R² + X²). [W]
 *
 * Omits     harmonics, the field's weakening by the current, the short's own resistance.
 * Source    Ohm's law for the fundamental.
 * Checked   tests/core/heat/brake.test.ts
 */
export function shortedLoss({ emf, phases, reactance, resistanceAt }: ShortedWinding, temperature: number): number {
  const resistance = resistanceAt(temperature);
  return (phases * emf ** 2 * resistance) / (resistance ** 2 + reactance ** 2);
}

/**
 * Seconds until copper that keeps all its heat reaches its limit.
 *
 * @param loss          At the start, P₀. [W]
 * @param heatCapacity  Of the metal, C. [J/K]
 * @param from          T₀. [°C]
 * @param to            T₁, more than `from`. [°C]
 * @param coefficient   Of resistance at `from`, α: the loss grows with it at constant current. [1/K]
 * @returns             Time. [s]
 *
 *   C dT/dt = P₀ [1 + α (T − T₀)]  →  t = C/(α P₀) · ln[1 + α (T₁ − T₀)]
 *
 * Omits     heat into resin and air, which gives more time; a shorted winding's current falling as it warms, which does too.
 * Source    adiabatic heating at constant current.
 * Checked   tests/core/heat/brake.test.ts
 */
export function adiabaticSeconds(loss: number, heatCapacity: number, from: number, to: number, coefficient: number): number {
  return (heatCapacity / (coefficient * loss)) * Math.log1p(coefficient * (to - from));
}
