/** A wire that can be bought: bare diameter, and the greatest diameter over its covering. [m] */
export interface Gauge {
  label: string;
  conductorDiameter: number;
  overallDiameter: number;
}

/** A preferred metric size: its covering may be as thin as `leastOverallDiameter` allows. [m] */
export interface MetricGauge extends Gauge {
  grade: 1 | 2;
  leastOverallDiameter: number;
}

/**
 * IEC 60317-0-1, table 1, preferred sizes (R 20): nominal conductor; least increase and greatest overall diameter of grade 1; the same of grade 2. [mm]
 * From memory; a micrometer on the reel rules.
 */
const METRIC: [conductor: number, increase1: number, overall1: number, increase2: number, overall2: number][] = [
  [0.2, 0.014, 0.226, 0.027, 0.239],
  [0.224, 0.015, 0.252, 0.029, 0.266],
  [0.25, 0.017, 0.281, 0.032, 0.297],
  [0.28, 0.018, 0.312, 0.033, 0.329],
  [0.315, 0.019, 0.349, 0.035, 0.367],
  [0.355, 0.02, 0.392, 0.038, 0.411],
  [0.4, 0.021, 0.439, 0.04, 0.459],
  [0.45, 0.022, 0.491, 0.042, 0.513],
  [0.5, 0.024, 0.544, 0.045, 0.566],
  [0.56, 0.025, 0.606, 0.047, 0.63],
  [0.63, 0.027, 0.679, 0.05, 0.704],
  [0.71, 0.028, 0.762, 0.053, 0.789],
  [0.8, 0.03, 0.855, 0.056, 0.884],
  [0.9, 0.032, 0.959, 0.06, 0.989],
  [1, 0.034, 1.062, 0.063, 1.094],
  [1.12, 0.034, 1.184, 0.065, 1.217],
  [1.25, 0.035, 1.316, 0.067, 1.349],
  [1.4, 0.036, 1.468, 0.069, 1.502],
  [1.6, 0.038, 1.67, 0.071, 1.706],
  [1.8, 0.039, 1.872, 0.073, 1.909],
  [2, 0.04, 2.074, 0.075, 2.112],
  [2.24, 0.041, 2.316, 0.077, 2.355],
  [2.5, 0.042, 2.578, 0.079, 2.618],
  [2.8, 0.043, 2.88, 0.081, 2.922],
  [3.15, 0.045, 3.233, 0.084, 3.276],
  [3.55, 0.046, 3.635, 0.086, 3.679],
  [4, 0.047, 4.088, 0.089, 4.133],
  [4.5, 0.049, 4.591, 0.092, 4.637],
  [5, 0.05, 5.093, 0.094, 5.141],
];

const metric = (conductor: number, grade: 1 | 2, increase: number, overall: number): MetricGauge => ({
  label: `${conductor} mm, grade ${grade}`,
  grade,
  conductorDiameter: conductor / 1000,
  leastOverallDiameter: (conductor + increase) / 1000,
  overallDiameter: overall / 1000,
});

export const metricGauges: MetricGauge[] = METRIC.flatMap(([conductor, increase1, overall1, increase2, overall2]) => [
  metric(conductor, 1, increase1, overall1),
  metric(conductor, 2, increase2, overall2),
]);

/**
 * Diameter of an American wire gauge.
 *
 * @param gauge  n; 0 for 1/0, −1 for 2/0. [-]
 * @returns      Bare diameter. [m]
 *
 *   d = 0.127 mm · 92^((36 − n)/39)
 *
 * Source    ASTM B258.
 * Checked   tests/reference/wire-gauges.test.ts
 */
export function awgDiameter(gauge: number): number {
  return 0.127e-3 * 92 ** ((36 - gauge) / 39);
}

/** Heavy-build covering of AWG wire, taken as that of the nearest metric size in grade 2. Common practice, no source. */
export const awgGauges: Gauge[] = Array.from({ length: 29 }, (_, i) => i + 4).map((gauge) => {
  const conductorDiameter = awgDiameter(gauge);
  const off = (size: Gauge) => Math.abs(Math.log(size.conductorDiameter / conductorDiameter));
  const near = metricGauges.filter(({ grade }) => grade === 2).reduce((a, b) => (off(b) < off(a) ? b : a));
  return { label: `${gauge} AWG`, conductorDiameter, overallDiameter: conductorDiameter + near.overallDiameter - near.conductorDiameter };
});
