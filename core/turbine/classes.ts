export interface TurbineClass {
  name: 'I' | 'II' | 'III' | 'IV';
  /** Mean of ten minutes, once in fifty years, V_ref. [m/s] */
  referenceWind: number;
  /** Mean of the year at the hub, V_ave. [m/s] */
  meanWind: number;
}

/** Wind classes of small turbines. IEC 61400-2:2013, table 1 (from memory). */
export const TURBINE_CLASSES: TurbineClass[] = [
  { name: 'I', referenceWind: 50, meanWind: 10 },
  { name: 'II', referenceWind: 42.5, meanWind: 8.5 },
  { name: 'III', referenceWind: 37.5, meanWind: 7.5 },
  { name: 'IV', referenceWind: 30, meanWind: 6 },
];

/** A gust of three seconds over the ten-minute mean, both once in fifty years. IEC 61400-2:2013, 6.3.3.2 (from memory). */
export const GUST_FACTOR = 1.4;

/**
 * The mildest class of small turbine that covers a site.
 *
 * @param meanWind  Of the year, at the hub. [m/s]
 * @param gustWind  Greatest three-second gust in fifty years. [m/s]
 * @returns         Class, undefined for a site beyond class I: there the standard asks for a design of its own, class S. [-]
 *
 * Source    IEC 61400-2:2013.
 * Checked   tests/core/turbine/classes.test.ts
 */
export function turbineClass(meanWind: number, gustWind: number): TurbineClass | undefined {
  return TURBINE_CLASSES.findLast((each) => meanWind <= each.meanWind && gustWind <= GUST_FACTOR * each.referenceWind);
}
