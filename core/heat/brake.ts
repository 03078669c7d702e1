/**
 * Seconds until copper that keeps all its heat reaches its limit.
 *
 * @param loss          At the start. [W]
 * @param heatCapacity  Of the metal. [J/K]
 * @param from          [°C]
 * @param to            More than `from`. [°C]
 * @param coefficient   Of resistance at `from`: the loss grows with it at constant current. [1/K]
 * @returns             Time. [s]
 *
 *   C dT/dt = P₀ [1 + α (T − T₀)]  →  t = C/(α P₀) · ln[1 + α (T₁ − T₀)]
 *
 * Omits     heat into resin and air, which gives more time.
 * Source    adiabatic heating at constant current.
 * Checked   tests/core/heat/brake.test.ts
 */
export function adiabaticSeconds(loss: number, heatCapacity: number, from: number, to: number, coefficient: number): number {
  return (heatCapacity / (coefficient * loss)) * Math.log1p(coefficient * (to - from));
}
