import { coolingConductance, type Cooling } from '../heat/cooling';
import { heatCapacity, secondsToReach } from '../heat/network';
import { crossing } from '../numeric/crossing';
import { balances, speedFrom } from '../turbine/match';
import type { TurbineResult } from '../turbine/stage';
import { wheelPower } from '../turbine/wind';
import type { WindingResult } from '../winding/stage';
import type { Metal } from '../wire/section';
import type { WireResult } from '../wire/stage';
import type { LoadCurve } from './curve';
import { INDIFFERENT, runsAway, type Plant } from './operating-point';
import type { Responder, Response } from './responder';

/** The machine held in its greatest gust, its load connected. */
export interface Gust {
  rpm: number;
  /** Where the coils would settle. [°C] */
  coilTemperature: number;
  /** They settle nowhere: the metal melts. */
  runsAway: boolean;
  /** Taken from the shaft, and made in the coils, there. [W] */
  shaftWatts: number;
  heat: number;
  /** Greatest made in the coils on the way to their limit. [W] */
  mostHeat: number;
  /** From the rated point to the coils' limit; null when they never reach it. [s] */
  seconds: number | null;
}

/** What the gust finds: the rated point, and how the winding warms. */
export interface GustFrom {
  wind: number;
  /** rad/s */
  speed: number;
  coilTemperature: number;
  limit: number;
  cooling: Cooling;
  /** J/K */
  capacity: number;
}

const RPM = 60 / (2 * Math.PI);
/** A power sought by the controller is found no closer. */
const CLOSE = 2e-3;
const MOST_ROUNDS = 12;

const standstill = (airTemperature: number): Gust => ({
  rpm: 0,
  coilTemperature: airTemperature,
  runsAway: false,
  shaftWatts: 0,
  heat: 0,
  mostHeat: 0,
  seconds: null,
});

/** Speed, heat and time in a gust that lasts. `respondOf` makes the load's answer for a plant. */
export function gustOf(
  plant: Plant,
  turbine: TurbineResult,
  loaded: LoadCurve,
  respondOf: (plant: Plant) => Responder,
  from: GustFrom,
): Gust {
  const met = gustPoint(plant, turbine, loaded, respondOf, from);
  if (!met) return standstill(plant.airTemperature);
  const speed = met.point.rpm / RPM;
  const { coilTemperature, shaftWatts, copperLoss, eddyLoss } = met.point;
  return {
    rpm: speed * RPM,
    coilTemperature,
    runsAway: runsAway(plant, coilTemperature),
    shaftWatts,
    heat: copperLoss + eddyLoss,
    ...warming(plant, respondOf, speed, met, from),
  };
}

/** What the load answers where the wheel settles that was turning at its rated speed: on the curve, or beyond its end; nothing where it stops. */
function gustPoint(
  plant: Plant,
  { wheel, runawayRatio }: TurbineResult,
  { load, responses, at }: LoadCurve,
  respondOf: (plant: Plant) => Responder,
  { wind, speed }: GustFrom,
): Response | undefined {
  const found = balances(wheel, wind, load);
  const top = load[load.length - 1];
  if (found.some((each) => each.stable && each.speed >= speed) || wheelPower(wheel, wind, top.speed) <= top.shaftWatts) {
    const settled = speedFrom(found, speed);
    return settled > 0 ? at(settled) : undefined;
  }
  const respond = respondOf(plant);
  // Beyond its end the load is taken to go on straight through the last two speeds at which it was asked: a secant, the wheel's side exact.
  const runaway = (runawayRatio * wind) / wheel.radius;
  let [before, last] = responses.slice(-2);
  for (let round = 0; round < MOST_ROUNDS && last.point.rpm !== before.point.rpm; round++) {
    const [near, far] = [before.point, last.point];
    const rise = (far.shaftWatts - near.shaftWatts) / (far.rpm - near.rpm);
    const line = (x: number) => Math.max(0, far.shaftWatts + rise * (x * RPM - far.rpm));
    const speed = crossing((x) => line(x) - wheelPower(wheel, wind, x), top.speed, runaway);
    [before, last] = [last, respond(speed, last)];
    if (Math.abs(last.point.shaftWatts - line(speed)) <= CLOSE * last.point.shaftWatts) break;
  }
  return last;
}

/** The loss over temperature is a parabola through three at which the coils are held. */
function warming(
  plant: Plant,
  respondOf: (plant: Plant) => Responder,
  speed: number,
  guess: Response,
  { coilTemperature, limit, cooling, capacity }: GustFrom,
): Pick<Gust, 'seconds' | 'mostHeat'> {
  if (coilTemperature >= limit) return { seconds: 0, mostHeat: guess.point.copperLoss + guess.point.eddyLoss };
  const temperatures = [coilTemperature, (coilTemperature + limit) / 2, limit];
  const losses = temperatures.map((temperature) => {
    const held = respondOf({ ...plant, settle: () => temperature });
    const { point } = held(speed, { ...guess, settling: { temperature, slope: INDIFFERENT } });
    return point.copperLoss + point.eddyLoss;
  });
  const { airTemperature } = plant;
  const balance = {
    lossAt: parabola(temperatures, losses),
    conductance: (temperature: number) => coolingConductance(cooling, speed, temperature, airTemperature),
    airTemperature,
  };
  return { seconds: secondsToReach(balance, capacity, coilTemperature, limit) ?? null, mostHeat: Math.max(...losses) };
}

/** Through three places a like distance apart. */
function parabola([x0, x1, x2]: number[], [y0, y1, y2]: number[]): (x: number) => number {
  return (x) => {
    const t = (2 * (x - x1)) / (x2 - x0);
    return y1 + (t * (y2 - y0)) / 2 + (t * t * (y2 - 2 * y1 + y0)) / 2;
  };
}

/** Heat that warms metal and resin of the winding by one kelvin: all of the window that is not metal is taken for resin. [J/K] */
export function windingCapacity(metal: Metal, wire: WireResult, { coils, meanTurn, windowArea }: WindingResult, turns: number): number {
  const resin = coils.length * meanTurn * Math.max(0, windowArea - turns * wire.metalSection);
  return heatCapacity(metal, wire.wireMass, resin);
}
