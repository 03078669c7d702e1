/** Room above the greatest output, for wear and warm resistors. Common practice, no source. */
const MARGIN = 1.25;

/**
 * The resistor that takes all of the machine when the battery is full.
 *
 * @param watts  Greatest output into the battery. [W]
 * @param volts  At which the battery is held while it is full. [V]
 * @returns      Watts it must stand and the most ohms it may have, a quarter to spare. [W, Ω]
 *
 * Source    R = V²/P; the quarter is common practice, no source.
 * Checked   tests/core/charging/diversion.test.ts
 */
export function diversionLoad(watts: number, volts: number): { watts: number; resistance: number } {
  return { watts: MARGIN * watts, resistance: volts ** 2 / (MARGIN * watts) };
}
