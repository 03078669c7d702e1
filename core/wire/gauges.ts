/** A wire that can be bought: bare diameter, and the diameter over its covering. [m] */
export interface Gauge {
  label: string;
  conductorDiameter: number;
  overallDiameter: number;
}

/**
 * IEC 60317-0-1 preferred sizes: nominal conductor, least and greatest overall diameter of grade 1 (the greatest) and grade 2 (the greatest), mm.
 * Table values from memory; a micrometer on the reel rules.
 */
const METRIC: [conductor: number, grade1: number, grade2: number][] = [
  [0.2, 0.226, 0.239],
  [0.25, 0.281, 0.297],
  [0.315, 0.349, 0.367],
  [0.4, 0.439, 0.459],
  [0.5, 0.544, 0.566],
  [0.56, 0.606, 0.63],
  [0.63, 0.679, 0.704],
  [0.71, 0.762, 0.789],
  [0.8, 0.855, 0.884],
  [0.9, 0.959, 0.989],
  [1, 1.062, 1.094],
  [1.12, 1.184, 1.217],
  [1.25, 1.316, 1.349],
  [1.4, 1.468, 1.502],
  [1.6, 1.67, 1.706],
  [1.8, 1.872, 1.909],
  [2, 2.074, 2.112],
  [2.24, 2.316, 2.355],
  [2.5, 2.578, 2.618],
  [2.8, 2.88, 2.922],
  [3.15, 3.233, 3.276],
  [3.55, 3.635, 3.679],
  [4, 4.088, 4.133],
  [4.5, 4.591, 4.637],
  [5, 5.093, 5.141],
];

export const metricGauges: (Gauge & { grade: 1 | 2 })[] = METRIC.flatMap(([conductor, one, two]) =>
  ([1, 2] as const).map((grade) => ({
    label: `${conductor} mm, grade ${grade}`,
    grade,
    conductorDiameter: conductor / 1000,
    overallDiameter: (grade === 1 ? one : two) / 1000,
  })),
);

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

/** Covering of AWG magnet wire, heavy build, taken as the grade 2 covering of the nearest metric size. Common practice, no source. */
export const awgGauges: Gauge[] = Array.from({ length: 29 }, (_, i) => i + 4).map((gauge) => {
  const conductorDiameter = awgDiameter(gauge);
  const [near, , two] = METRIC.reduce((a, b) =>
    Math.abs(b[0] / 1000 - conductorDiameter) < Math.abs(a[0] / 1000 - conductorDiameter) ? b : a,
  );
  return { label: `${gauge} AWG`, conductorDiameter, overallDiameter: conductorDiameter + (two - near) / 1000 };
});
