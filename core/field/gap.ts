/**
 * Length of the gap, magnet face to magnet face or to the return plate; for a single disc twice the distance from its face to the winding's middle.
 *
 *   g = t · (phases, when stacked) + 2 · skin + 2 · clearance
 *
 * @param of.thickness        One layer of copper along the axle, t. [m]
 * @param of.phases           Phases. [-]
 * @param of.stacked          Whether the phases lie one on the other. [-]
 * @param of.skin             Former or resin over the copper, each face. [m]
 * @param of.runningClearance Free air, each side. [m]
 * @returns                     Gap length. [m]
 *
 * Omits     waviness of discs and stator, which the running clearance must cover.
 * Source    geometry.
 * Checked   tests/core/field/gap.test.ts
 */
export function gapLength(of: { thickness: number; phases: number; stacked: boolean; skin: number; runningClearance: number }): number {
  return of.thickness * (of.stacked ? of.phases : 1) + 2 * of.skin + 2 * of.runningClearance;
}
