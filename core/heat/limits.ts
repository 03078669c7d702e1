/** Temperature classes of winding insulation. IEC 60085:2007, table 1. [°C] */
export const THERMAL_CLASSES = [
  { letter: 'Y', temperature: 90 },
  { letter: 'A', temperature: 105 },
  { letter: 'E', temperature: 120 },
  { letter: 'B', temperature: 130 },
  { letter: 'F', temperature: 155 },
  { letter: 'H', temperature: 180 },
  { letter: 'N', temperature: 200 },
  { letter: 'R', temperature: 220 },
] as const;

/**
 * The lowest of the temperatures the copper must not pass, and which it is.
 *
 * @param thermalClass  Of the covering. [°C]
 * @param formerLimit   Of resin, plastic or glue. [°C]
 * @returns             Limit and the design entry that sets it. [°C]
 *
 * Source    the weakest material rules.
 * Checked   tests/core/heat/limits.test.ts
 */
export function coilLimit(thermalClass: number, formerLimit: number): { temperature: number; where: string } {
  return formerLimit <= thermalClass
    ? { temperature: formerLimit, where: 'surroundings.formerLimit' }
    : { temperature: thermalClass, where: 'winding.wire.thermalClass' };
}
