import type { PowerCoefficient } from './power-coefficient';

/** A wind wheel in air: what turns wind and speed into shaft power. */
export interface Wheel {
  radius: number;
  airDensity: number;
  coefficient: PowerCoefficient;
}

/**
 * Power of the wind through the wheel's circle, ½ρAv³.
 *
 * @param wind        v. [m/s]
 * @param radius      Of the wheel. [m]
 * @param airDensity  ρ. [kg/m³]
 * @returns           Power. [W]
 *
 * Source    kinetic energy flux.
 * Checked   tests/reference/wind.test.ts
 */
export function windPower(wind: number, radius: number, airDensity: number): number {
  return 0.5 * airDensity * Math.PI * radius ** 2 * wind ** 3;
}

/**
 * Power the wheel gives its shaft.
 *
 * @param wheel  Radius, air and coefficient. [m, kg/m³, -]
 * @param wind   [m/s]
 * @param speed  Of the shaft. [rad/s]
 * @returns      Power, negative where the wheel brakes. [W]
 *
 * Source    P = ½ρAv³Cp(ωR/v).
 * Checked   tests/laws/turbine.test.ts
 */
export function wheelPower(wheel: Wheel, wind: number, speed: number): number {
  if (wind <= 0) return 0;
  return windPower(wind, wheel.radius, wheel.airDensity) * wheel.coefficient((speed * wheel.radius) / wind);
}

/** Near enough to standstill for the slope of the power coefficient. */
const SLOW = 1e-4;

/**
 * Torque with which the wheel pulls away from standstill.
 *
 * @param wheel  Radius, air and coefficient. [m, kg/m³, -]
 * @param wind   [m/s]
 * @returns      ½ρAv²R · dCp/dλ at λ = 0. [N·m]
 *
 * Source    torque is power over speed, in the limit.
 * Checked   tests/core/turbine/wind.test.ts
 */
export function startTorque(wheel: Wheel, wind: number): number {
  if (wind <= 0) return 0;
  return ((windPower(wind, wheel.radius, wheel.airDensity) * wheel.radius) / wind) * (wheel.coefficient(SLOW) / SLOW);
}

/**
 * The least wind that starts the wheel from standstill.
 *
 * @param wheel  Radius, air and coefficient. [m, kg/m³, -]
 * @param drag   Of bearings and seals. [N·m]
 * @returns      Wind, null for a wheel that does not start by itself. [m/s]
 *
 * Omits     cogging, which coreless machines have none of; stiction of new seals.
 * Source    start torque, which goes with the square of the wind, equal to the drag.
 * Checked   tests/core/turbine/wind.test.ts
 */
export function startWind(wheel: Wheel, drag: number): number | null {
  const perSquare = startTorque(wheel, 1);
  return perSquare > 0 ? Math.sqrt(drag / perSquare) : null;
}
