import { crossing } from '../numeric/crossing';
import type { TurbineResult } from './stage';
import { wheelPower, windPower, type Wheel } from './wind';

/** One point of the generator's own curve as the turbine sees it. */
export interface LoadPoint {
  /** rad/s */
  speed: number;
  /** W at the shaft, all losses counted. */
  shaftWatts: number;
}

export interface Balance {
  speed: number;
  stable: boolean;
}

const PARTS = 6;
const HALVINGS = 40;
const MOST_DOUBLINGS = 20;

/**
 * Every speed at which wheel and generator balance in a steady wind.
 *
 * @param wheel  Wheel. [m, kg/m³, -]
 * @param wind   [m/s]
 * @param load   Generator's curve, speeds rising from near zero; straight between points. [rad/s, W]
 * @param top    Looked for up to this speed: beyond its run-away a wheel balances no load. [rad/s]
 * @returns      Balances, rising. [rad/s] Stable where a faster shaft is braked.
 *
 * Source    equilibrium of two torques; sign change and false position.
 * Checked   tests/core/turbine/match.test.ts
 */
export function balances({ radius, airDensity, coefficient }: Wheel, wind: number, load: readonly LoadPoint[], top = Infinity): Balance[] {
  const found: Balance[] = [];
  const passing = wind > 0 ? windPower(wind, radius, airDensity) : 0;
  const perSpeed = wind > 0 ? radius / wind : 0;
  const surplusAt = (speed: number, shaftWatts: number) => passing * coefficient(speed * perSpeed) - shaftWatts;
  let before = surplusAt(load[0].speed, load[0].shaftWatts);
  for (let i = 1; i < load.length && load[i - 1].speed <= top; i++) {
    const [width, rise] = [load[i].speed - load[i - 1].speed, load[i].shaftWatts - load[i - 1].shaftWatts];
    for (let part = 1; part <= PARTS; part++) {
      const share = part / PARTS;
      const here = surplusAt(load[i - 1].speed + share * width, load[i - 1].shaftWatts + share * rise);
      if (here > 0 !== before > 0) found.push(balanceBetween(surplusAt, load[i - 1], load[i], part, before > 0));
      before = here;
    }
  }
  return found;
}

/** On the straight from one point of the load to the next, in one of its parts. */
function balanceBetween(
  surplusAt: (speed: number, shaftWatts: number) => number,
  a: LoadPoint,
  b: LoadPoint,
  part: number,
  stable: boolean,
): Balance {
  const speedAt = (share: number) => a.speed + share * (b.speed - a.speed);
  const surplus = (share: number) => surplusAt(speedAt(share), a.shaftWatts + share * (b.shaftWatts - a.shaftWatts));
  const [low, high] = [(part - 1) / PARTS, part / PARTS];
  return { speed: speedAt(stable ? crossing((x) => -surplus(x), low, high) : crossing(surplus, low, high)), stable };
}

/**
 * Where the pair settles when the wind has risen slowly from calm: the first stable balance above standstill.
 *
 * @param found  All balances, rising. [rad/s]
 * @returns      Speed, 0 where the wheel cannot start. [rad/s]
 *
 * Source    as `balances`.
 * Checked   tests/core/turbine/match.test.ts
 */
export function settledSpeed(found: readonly Balance[]): number {
  return found[0]?.stable ? found[0].speed : 0;
}

/**
 * Where the pair settles when it is already turning.
 *
 * @param found  All balances, rising. [rad/s]
 * @param from   Speed it turns at. [rad/s]
 * @returns      Speed: the balance it is driven to, 0 when it is braked to a stop. [rad/s]
 *
 * Valid     a stable balance or no balance above `from`, as where `balances` was asked up to run-away.
 * Source    between two balances the shaft goes from the unstable one to the stable one.
 * Checked   tests/core/turbine/match.test.ts
 */
export function speedFrom(found: readonly Balance[], from: number): number {
  const above = found.find(({ speed }) => speed >= from);
  if (above?.stable) return above.speed;
  return found.findLast(({ speed }) => speed < from)?.speed ?? 0;
}

/**
 * The least wind in which the wheel, free but for drag, runs at a speed.
 *
 * @param turbine  Wheel and its run-away. [m, kg/m³, -]
 * @param speed    More than 0. [rad/s]
 * @param drag     Power of bearings and eddy currents at that speed. [W]
 * @returns        Wind, null for a wheel that gives no power or a speed without end. [m/s]
 *
 * Source    wheel power = drag on the fast side of the power coefficient, bisection.
 * Checked   tests/core/turbine/match.test.ts
 */
export function windToReach({ wheel, best, runawayRatio }: TurbineResult, speed: number, drag: number): number | null {
  if (best.coefficient <= 0 || !Number.isFinite(speed)) return null;
  let low = (speed * wheel.radius) / runawayRatio;
  let high = (speed * wheel.radius) / best.tipSpeedRatio;
  const bestPower = wheelPower(wheel, high, speed);
  if (bestPower < drag) {
    // Even at its best ratio this wind is too weak: the least that carries the drag holds the wheel at that ratio or slower.
    low = high;
    for (let i = 0; i < MOST_DOUBLINGS && wheelPower(wheel, high, speed) < drag; i++) high *= 2;
    if (wheelPower(wheel, high, speed) < drag) return null;
  }
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (wheelPower(wheel, middle, speed) < drag) low = middle;
    else high = middle;
  }
  return high;
}
