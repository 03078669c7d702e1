import { monotoneCurve } from '../numeric/monotone';

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
 * Power coefficient through measured points. Between standstill and the first point that turns it goes straight, which is a steady torque; beyond the last
 * point along the last slope, and if that does not fall, down to zero at twice the last ratio, so that a wheel always has a run-away.
 *
 * @param points  [λ, Cp], λ rising, at least two above 0. [-]
 * @returns       Cp(λ), 0 at standstill. [-]
 *
 * Source    monotone cubic (numeric/monotone.ts).
 * Checked   tests/core/turbine/power-coefficient.test.ts
 */
export function measuredCoefficient(points: readonly (readonly [number, number])[]): PowerCoefficient {
  const turning = points.filter(([ratio]) => ratio > 0);
  const curve = monotoneCurve(
    turning.map(([ratio]) => ratio),
    turning.map(([, coefficient]) => coefficient),
  );
  const [first, firstValue] = turning[0];
  const [end, endValue] = turning[turning.length - 1];
  const endSlope = Math.min(curve(end + 1) - endValue, -Math.abs(endValue) / end);
  return (ratio) => {
    if (ratio < first) return (firstValue * ratio) / first;
    return ratio > end ? endValue + endSlope * (ratio - end) : curve(ratio);
  };
}
