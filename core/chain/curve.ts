import { dcSideOf } from '../charging/loads';
import { trackerPoint, type TrackerWindow } from '../charging/tracker';
import type { Design } from '../design/schema';
import { cutInSpeed, pathThreshold } from '../rectifier/open-circuit';
import { steadyState, type DcSide, type Source, type SteadyState } from '../rectifier/steady-state';
import { wheelPower } from '../turbine/wind';
import type { TurbineResult } from '../turbine/stage';
import { operatingPoint, type Electrical, type Plant } from './operating-point';
import type { CurvePoint } from './results';

const POINTS = 60;
/** Speeds crowd towards cut-in, where the curve bends. */
const CROWDING = 1.6;

/** How the load answers at a speed. `limited` says that a maximum-power controller takes less than the wheel could give. */
export interface Response {
  point: CurvePoint;
  limited: boolean;
}

/** Where to start looking: best from a neighbouring speed. */
export interface Guess {
  temperature: number;
  volts: number;
}

export type Responder = (speed: number, guess: Guess) => Response;

/** The machine on its load, as a function of speed. */
export function responderOf(plant: Plant, load: Design['load'], controller: Design['controller'], turbine: TurbineResult): Responder {
  const side = dcSideOf(load);
  if (side)
    return (speed, guess) => ({ point: operatingPoint(plant, speed, fixed(plant, side, speed), guess.temperature), limited: false });
  if (load.kind !== 'tracker' || !controller)
    return (speed, guess) => ({ point: operatingPoint(plant, speed, openEnded(plant, speed), guess.temperature), limited: false });
  const window: TrackerWindow = {
    minVolts: controller.minInputVoltage,
    maxVolts: controller.maxInputVoltage,
    maxAmps: controller.maxInputCurrent,
    maxWatts: Math.min(controller.maxPower, controller.maxChargeCurrent * controller.batteryVoltage),
  };
  return (speed, guess) => {
    let limited = false;
    let start: number[] | undefined;
    let volts = guess.volts;
    const wanted = bestPower(turbine, speed) - plant.eddyLoss(speed) - plant.bearingLoss(speed);
    const drive = (source: Source): Electrical => {
      const open = openVolts(plant, source, speed);
      const draw = (v: number) => {
        const state = steadyState(source, plant.bridge, { emf: v, resistance: plant.dcCableResistance }, speed, start);
        start = state.start;
        return { state, dcAmps: state.dcAmps, dcWatts: v * state.dcAmps, shaftWatts: state.emfWatts };
      };
      const found = trackerPoint(draw, open, wanted, window, volts);
      if (!found) return openEnded(plant, speed)(source);
      volts = found.volts;
      limited = found.limited;
      return { state: found.drawn.state, load: { emf: volts, resistance: 0 } };
    };
    return { point: operatingPoint(plant, speed, drive, guess.temperature), limited };
  };
}

/** Speed at which the load begins to draw, undefined for a load that never does. */
export function loadCutIn(plant: Plant, load: Design['load'], controller: Design['controller']): number | undefined {
  const side = dcSideOf(load);
  const emf = side ? side.emf : load.kind === 'tracker' ? controller?.minInputVoltage : undefined;
  return emf === undefined ? undefined : cutInSpeed(plant.sourceAt(plant.airTemperature), plant.bridge, emf);
}

/** The curve against speed, from near standstill to `top`. [rad/s] */
export function loadCurve(respond: Responder, cutIn: number | undefined, top: number, airTemperature: number): Response[] {
  const from = cutIn !== undefined && cutIn < 0.9 * top ? cutIn : 0;
  const idle = from > 0 ? 6 : 0;
  const speeds = Array.from({ length: POINTS }, (_, i) =>
    i < idle
      ? (from * (i + 0.5)) / idle
      : from + (top - from) * ((i - idle + (from > 0 ? 0 : 0.5)) / (POINTS - 1 - idle + (from > 0 ? 0 : 0.5))) ** CROWDING,
  );
  let before = { speed: 0, temperature: airTemperature };
  let last = before;
  let ratio = 0;
  return speeds.map((speed) => {
    const rise =
      last.speed > before.speed ? ((last.temperature - before.temperature) / (last.speed - before.speed)) * (speed - last.speed) : 0;
    const response = respond(speed, { temperature: last.temperature + rise, volts: ratio * speed });
    before = last;
    last = { speed, temperature: response.point.coilTemperature };
    ratio = response.point.dcVolts / speed;
    return response;
  });
}

function fixed(plant: Plant, load: DcSide, speed: number): (source: Source) => Electrical {
  const dc = { emf: load.emf, resistance: load.resistance + plant.dcCableResistance };
  let start: number[] | undefined;
  return (source) => {
    const state = steadyState(source, plant.bridge, dc, speed, start);
    start = state.start;
    return { state, load };
  };
}

/** No DC current: in a delta the circulating current still flows. The volts are those a meter with a reservoir would show. */
function openEnded(plant: Plant, speed: number): (source: Source) => Electrical {
  return (source) => {
    const volts = openVolts(plant, source, speed);
    const state: SteadyState = steadyState(source, plant.bridge, { emf: 2 * volts + 1, resistance: 0 }, speed);
    return { state, load: { emf: volts, resistance: 0 } };
  };
}

function openVolts(plant: Plant, source: Source, speed: number): number {
  return Math.max(0, plant.openPeak * speed - pathThreshold(source, plant.bridge));
}

/** Shaft power at this speed of the wheel at its best tip-speed ratio. */
function bestPower({ wheel, best }: TurbineResult, speed: number): number {
  return wheelPower(wheel, (speed * wheel.radius) / best.tipSpeedRatio, speed);
}
