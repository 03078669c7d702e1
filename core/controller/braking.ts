import type { Caution } from '../problem';
import { balances, speedFrom } from '../turbine/match';
import type { TurbineResult } from '../turbine/stage';

const HALVINGS = 10;
const POINTS = 60;
/** A wheel held below this share of its best tip-speed ratio is stalled: it creeps. Common practice, no source. */
const CREEPS = 0.5;
/** A brake that holds only in less wind than this does not brake. [m/s] Common practice, no source. */
const CALM = 1;

/**
 * The greatest wind in which shorting brings the wheel down from run-away and holds it at a creep.
 *
 * @param turbine  Wheel and its run-away. [m, kg/m³, -]
 * @param brake    Power the shorted machine takes from the shaft over speed, drag and eddy loss too. [rad/s → W]
 * @param top      Greatest wind of interest. [m/s]
 * @returns        Wind, near 0 when shorting hardly brakes, `top` when it stops the wheel in all. [m/s]
 *
 * Omits     the copper warming while it brakes; furling.
 * Source    equilibrium of wheel and brake; bisection, as at any speed more wind gives more power.
 * Checked   tests/core/controller/braking.test.ts
 */
export function brakingWind({ wheel, best, runawayRatio }: TurbineResult, brake: (speed: number) => number, top: number): number {
  const stops = (wind: number) => {
    const runaway = (runawayRatio * wind) / wheel.radius;
    const speeds = Array.from({ length: POINTS }, (_, i) => (runaway * (i + 0.5)) / (POINTS - 0.5));
    const load = speeds.map((speed) => ({ speed, shaftWatts: brake(speed) }));
    return speedFrom(balances(wheel, wind, load), runaway) <= (CREEPS * best.tipSpeedRatio * wind) / wheel.radius;
  };
  if (stops(top)) return top;
  let low = 0;
  let high = top;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (stops(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** What a winding shorted to brake the wheel does. */
export interface Braking {
  /** Wind up to which it stops the wheel. [m/s] */
  stopsTo: number;
  gustWind: number;
  /** In the coils at rated speed. [A] */
  amps: number;
  /** To the coils' limit from the rated point, turning on as fast, all heat kept in the metal. [s] */
  seconds: number;
}

/** What to say of braking by shorting. */
export function brakeCautions({ stopsTo, gustWind, amps, seconds }: Braking): Caution[] {
  const time = seconds < 10 ? seconds.toFixed(1) : seconds.toFixed(0);
  const heats = `At rated speed the coils carry ${amps.toFixed(0)} A and reach their limit in about ${time} s if the wheel does not slow down.`;
  const holds = stopsTo >= gustWind;
  const stops = holds
    ? `Shorting the coils stops the wheel in any wind up to the gust of ${gustWind} m/s.`
    : stopsTo > CALM
      ? `Shorting the coils stops a wheel that runs free only up to ${stopsTo.toFixed(1)} m/s; in more wind it runs on and burns them. Furl or brake it by other means there.`
      : 'Shorting the coils does not stop this wheel: it runs on and burns them. Furl or brake it by other means.';
  return [{ severity: holds ? 'note' : 'warning', where: 'site.gustWind', message: `${stops} ${heats}` }];
}
