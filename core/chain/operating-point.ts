import type { Bridge, DcSide, Source, SteadyState } from '../rectifier/steady-state';
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
  /** Temperature at which a loss in the coils settles, near a guess. [W, rad/s, °C → °C] */
  settle: (loss: number, speed: number, guess: number) => number;
  airTemperature: number;
  /** Melting point of the winding's metal: no coil settles above. [°C] */
  melts: number;
}

/** Whether a temperature found is no balance but where the metal melts. [°C] */
export const runsAway = ({ melts }: Plant, coilTemperature: number): boolean => coilTemperature > melts - 1;

/** One electrical answer: the steady state and the load's own share of the DC side. */
export interface Electrical {
  state: SteadyState;
  load: DcSide;
}

/** By how much the temperature may differ from the one its losses lead to. [K] */
export const SETTLED = 0.3;
const MOST_ROUNDS = 25;
/** Change, per kelvin, of what a temperature lacks to the one its losses lead to; −1 where losses do not care, flatter where hot copper loses more. */
export const INDIFFERENT = -1;
export const FLATTEST = -0.3;

/** What is expected at a speed, and what was found there. */
export interface Settling {
  /** [°C] */
  temperature: number;
  /** Of the lack of temperature over temperature. [K/K] */
  slope: number;
}

/**
 * The one loop between copper loss and copper temperature.
 *
 * `drive` works out the electrical side for a source; it is asked again until the temperature it was given is the one its losses lead to (secant
 * steps, because with hot copper either less or more may be lost). `guess` is best what was found at neighbouring speeds.
 */
export function operatingPoint(
  plant: Plant,
  speed: number,
  drive: (source: Source) => Electrical,
  guess: Settling = { temperature: plant.airTemperature, slope: INDIFFERENT },
): { point: CurvePoint; state: SteadyState; settling: Settling } {
  const eddy = plant.eddyLoss(speed);
  const sane = (temperature: number) => Math.min(plant.melts, Math.max(plant.airTemperature, temperature));
  let temperature = sane(guess.temperature);
  let { slope } = guess;
  let before: { temperature: number; lack: number } | undefined;
  let electrical = drive(plant.sourceAt(temperature));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const lack = plant.settle(electrical.state.copperLoss + eddy, speed, temperature) - temperature;
    if (before) slope = Math.min((lack - before.lack) / (temperature - before.temperature), FLATTEST);
    if (Math.abs(lack) < SETTLED) break;
    before = { temperature, lack };
    temperature = sane(temperature - lack / slope);
    if (temperature === before.temperature) break;
    electrical = drive(plant.sourceAt(temperature));
  }
  return { point: curvePoint(plant, speed, electrical, temperature, eddy), state: electrical.state, settling: { temperature, slope } };
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
