export type PowerCoefficient = (tipSpeedRatio: number) => number;

/** Torque coefficient at standstill over that at the best power. Common practice for three to six blades, no source. */
const START_TORQUE = 0.2;

/**
 * Greatest power coefficient of n actuator discs in a row.
 *
 * @param rows  Wind wheels one behind the other, n. [-]
 * @returns     Ceiling. [-] 16/27 for one, 0.64 for two, towards 2/3 for many.
 *
 * Source    Newman 1986, J. Wind Eng. Ind. Aerodyn. 24, 215: 8n(n+1)/(3(2n+1)²).
 * Checked   tests/reference/wind.test.ts
 */
export function powerCeiling(rows: number): number {
  return (8 * rows * (rows + 1)) / (3 * (2 * rows + 1) ** 2);
}

/**
 * Power coefficient from its peak and its run-away: a cubic up to the peak, a parabola beyond, smooth where they meet, negative past run-away.
 *
 * @param peakCp         Greatest value. [-]
 * @param tipSpeedRatio  Where it is reached. [-]
 * @param runawayRatio   Where it falls to zero, more than `tipSpeedRatio`. [-]
 * @returns              Cp(λ). [-]
 *
 * Source    shape: common practice, no source; it meets the three numbers exactly.
 * Checked   tests/core/turbine/power-coefficient.test.ts
 */
export function peakedCoefficient(peakCp: number, tipSpeedRatio: number, runawayRatio: number): PowerCoefficient {
  const width = runawayRatio / tipSpeedRatio - 1;
  return (ratio) => {
    const x = ratio / tipSpeedRatio;
    if (x > 1) return peakCp * (1 - ((x - 1) / width) ** 2);
    return peakCp * x * (START_TORQUE + x * (3 - 2 * START_TORQUE + x * (START_TORQUE - 2)));
  };
}

/**
 * Power coefficient through measured points, straight between them. Below the first point it falls to zero at standstill, beyond the last it goes on
 * along the last slope, so that a wheel always has a run-away.
 *
 * @param points  [λ, Cp], λ rising, at least two. [-]
 * @returns       Cp(λ). [-]
 *
 * Source    linear interpolation.
 * Checked   tests/core/turbine/power-coefficient.test.ts
 */
export function measuredCoefficient(points: readonly (readonly [number, number])[]): PowerCoefficient {
  const all = points[0][0] > 0 ? [[0, 0] as const, ...points] : points;
  const last = all.length - 1;
  return (ratio) => {
    let i = 1;
    while (i < last && all[i][0] < ratio) i++;
    const [x0, y0] = all[i - 1];
    const [x1, y1] = all[i];
    const slope = i === last && ratio > x1 ? Math.min((y1 - y0) / (x1 - x0), -y1 / x1) : (y1 - y0) / (x1 - x0);
    return y1 + slope * (ratio - x1);
  };
}
