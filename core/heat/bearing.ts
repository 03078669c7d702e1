/**
 * Drag of the shaft's bearings and seals, taken constant over speed.
 *
 * @param wheelDiameter  It goes with the size of the hub. [m]
 * @returns              Torque. [N·m]
 *
 * Source    0.01 N·m for a wheel of 1 m, growing with its square: common practice, no source; a spun hub tells better.
 * Checked   tests/core/heat/eddy.test.ts
 */
export function bearingTorque(wheelDiameter: number): number {
  return 0.01 * wheelDiameter ** 2;
}
