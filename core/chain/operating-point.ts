import type { Bridge, DcSide, Source, SteadyState } from '../rectifier/steady-state';
import type { CurvePoint } from './results';

/** The machine with its rectifier, cable and cooling, ready to be turned at any speed into any DC side. */
export interface Plant {
  /** The source with its copper at a temperature. [°C] */
  sourceAt: (coilTemperature: number) => Source;
  bridge: Bridge;
  /** There and back, a DC-side cable. [Ω] */
  dcCableResistance: number;
  /** Eddy loss at a shaft speed. [rad/s → W] */
  eddyLoss: (speed: number) => number;
  bearingLoss: (speed: number) => number;
  /** Temperature the coils settle at for a loss that depends on it. [°C] */
  settle: (lossAt: (coilTemperature: number) => number, speed: number) => number;
  airTemperature: number;
}

/** One electrical answer: the steady state and the load's own share of the DC side. */
export interface Electrical {
  state: SteadyState;
  load: DcSide;
}

const SETTLED = 0.05; // K
const MOST_ROUNDS = 40;

/**
 * The one loop between copper loss and copper temperature.
 *
 * @param drive  Works out the electrical side for a source. It is asked again until the temperature it was given is the one its losses lead to.
 * @param guess  Where to start from, best the temperature at a neighbouring speed. [°C]
 * @returns      One point of the curve, energy books closed at the settled temperature.
 */
export function operatingPoint(plant: Plant, speed: number, drive: (source: Source) => Electrical, guess: number): CurvePoint {
  const eddy = plant.eddyLoss(speed);
  let temperature = guess;
  let electrical = drive(plant.sourceAt(temperature));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const copper = electrical.state.copperLoss;
    const resistance = plant.sourceAt(temperature).resistance;
    const next = plant.settle((t) => (copper * plant.sourceAt(t).resistance) / resistance + eddy, speed);
    const moved = Math.abs(next - temperature);
    temperature = next;
    if (moved < SETTLED) break;
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
