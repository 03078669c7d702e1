import type { Bridge, DcSide, Source, SteadyState } from '../rectifier/steady-state';
import { HOTTEST } from '../heat/cooling';
import type { CurvePoint } from './results';

/** The machine with its rectifier, cable and cooling, ready to be turned at any speed into any DC side. */
export interface Plant {
  /** The source with its copper at a temperature. [°C] */
  sourceAt: (coilTemperature: number) => Source;
  bridge: Bridge;
  /** Open-circuit DC volts over the shaft's speed, before thresholds. [V·s/rad] */
  openPeak: number;
  /** There and back, a DC-side cable. [Ω] */
  dcCableResistance: number;
  /** Eddy loss at a shaft speed. [rad/s → W] */
  eddyLoss: (speed: number) => number;
  bearingLoss: (speed: number) => number;
  /** Temperature at which a loss in the coils settles. [W, rad/s → °C] */
  settle: (loss: number, speed: number) => number;
  airTemperature: number;
}

/** One electrical answer: the steady state and the load's own share of the DC side. */
export interface Electrical {
  state: SteadyState;
  load: DcSide;
}

/** By how much the temperature may differ from the one its losses lead to. [K] */
export const SETTLED = 0.4;
const MOST_ROUNDS = 25;

/**
 * The one loop between copper loss and copper temperature.
 *
 * `drive` works out the electrical side for a source; it is asked again until the temperature it was given is the one its losses lead to (secant
 * steps, because with hot copper either less or more may be lost). `guess` is best the temperature at a neighbouring speed.
 */
export function operatingPoint(plant: Plant, speed: number, drive: (source: Source) => Electrical, guess: number): CurvePoint {
  const eddy = plant.eddyLoss(speed);
  let temperature = guess;
  let before: { temperature: number; excess: number } | undefined;
  let electrical = drive(plant.sourceAt(temperature));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const excess = plant.settle(electrical.state.copperLoss + eddy, speed) - temperature;
    if (Math.abs(excess) < SETTLED) break;
    const slope = before ? (excess - before.excess) / (temperature - before.temperature) : -1;
    before = { temperature, excess };
    temperature = Math.min(HOTTEST, Math.max(plant.airTemperature, temperature - excess / Math.min(slope, -0.3)));
    if (temperature === before.temperature) break;
    electrical = drive(plant.sourceAt(temperature));
  }
  return curvePoint(plant, speed, electrical, temperature, eddy);
}

function curvePoint(plant: Plant, speed: number, { state, load }: Electrical, coilTemperature: number, eddyLoss: number): CurvePoint {
  const bearingLoss = plant.bearingLoss(speed);
  const dcCableLoss = state.dcAmpsRms ** 2 * plant.dcCableResistance;
  return {
    rpm: (speed * 60) / (2 * Math.PI),
    dcVolts: load.emf + load.resistance * state.dcAmps,
    dcAmps: state.dcAmps,
    dcAmpsRms: state.dcAmpsRms,
    dcWatts: state.dcWatts - dcCableLoss,
    phaseAmps: Math.max(...state.phaseAmps),
    copperLoss: state.copperLoss,
    diodeLoss: state.diodeLoss,
    cableLoss: state.lineLoss + dcCableLoss,
    eddyLoss,
    bearingLoss,
    shaftWatts: state.emfWatts + eddyLoss + bearingLoss,
    coilTemperature,
  };
}
