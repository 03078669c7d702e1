import { dcSideOf } from '../charging/loads';
import { trackerPoint, type TrackerWindow } from '../charging/tracker';
import type { Design } from '../design/schema';
import { cutInSpeed, pathThreshold } from '../rectifier/open-circuit';
import { steadyState, type DcSide, type Source, type SteadyState } from '../rectifier/steady-state';
import { wheelPower } from '../turbine/wind';
import type { TurbineResult } from '../turbine/stage';
import { operatingPoint, type Electrical, type Plant, type Settling } from './operating-point';
import type { CurvePoint } from './results';

/** How the load answers at a speed. */
export interface Response {
  point: CurvePoint;
  /** A maximum-power controller takes less than the wheel could give. */
  limited: boolean;
  /** Where the currents began their period, for a case near by. [A] */
  start: readonly number[];
  settling: Settling;
}

/** Asked for a speed, with what is expected there: best from speeds near by. */
export type Responder = (speed: number, guess?: Response) => Response;

/** The machine on its load, as a function of speed. */
export function responderOf(plant: Plant, load: Design['load'], controller: Design['controller'], turbine: TurbineResult): Responder {
  const side = dcSideOf(load);
  if (side) return (speed, guess) => answer(plant, speed, fixed(plant, side, speed, guess?.start), guess);
  if (load.kind !== 'tracker' || !controller) return (speed, guess) => answer(plant, speed, openEnded(plant, speed, guess?.start), guess);
  const window: TrackerWindow = {
    minVolts: controller.minInputVoltage,
    maxVolts: controller.maxInputVoltage,
    maxAmps: controller.maxInputCurrent,
    maxWatts: Math.min(controller.maxPower, controller.maxChargeCurrent * controller.batteryVoltage),
  };
  return (speed, guess) => {
    let limited = false;
    let start = guess?.start;
    let volts = guess?.point.dcVolts ?? 0;
    const wanted = bestPower(turbine, speed) - plant.eddyLoss(speed) - plant.bearingLoss(speed);
    const drive = (source: Source): Electrical => {
      const open = openVolts(plant, source, speed);
      const draw = (v: number) => {
        const state = steadyState(source, plant.bridge, { emf: v, resistance: plant.dcCableResistance }, speed, start);
        start = state.start;
        return { state, dcAmps: state.dcAmps, dcWatts: v * state.dcAmps, shaftWatts: state.emfWatts };
      };
      const found = trackerPoint(draw, open, wanted, window, volts);
      if (!found) return openEnded(plant, speed, start)(source);
      volts = found.volts;
      limited = found.limited;
      return { state: found.drawn.state, load: { emf: volts, resistance: 0 } };
    };
    return { ...answer(plant, speed, drive, guess), limited };
  };
}

function answer(plant: Plant, speed: number, drive: (source: Source) => Electrical, guess: Response | undefined): Response {
  const { point, state, settling } = operatingPoint(plant, speed, drive, guess?.settling);
  return { point, limited: false, start: state.start, settling };
}

/** Speed at which the load begins to draw, undefined for a load that never does. */
export function loadCutIn(plant: Plant, load: Design['load'], controller: Design['controller']): number | undefined {
  const side = dcSideOf(load);
  const emf = side ? side.emf : load.kind === 'tracker' ? controller?.minInputVoltage : undefined;
  return emf === undefined ? undefined : cutInSpeed(plant.openPeak, pathThreshold(plant.sourceAt(plant.airTemperature), plant.bridge), emf);
}

function fixed(plant: Plant, load: DcSide, speed: number, guess?: readonly number[]): (source: Source) => Electrical {
  const dc = { emf: load.emf, resistance: load.resistance + plant.dcCableResistance };
  let start = guess;
  return (source) => {
    const state = steadyState(source, plant.bridge, dc, speed, start);
    start = state.start;
    return { state, load };
  };
}

/** No DC current: in a delta the circulating current still flows. The volts are those a meter with a reservoir would show. */
function openEnded(plant: Plant, speed: number, start?: readonly number[]): (source: Source) => Electrical {
  return (source) => {
    const volts = openVolts(plant, source, speed);
    const state: SteadyState = steadyState(source, plant.bridge, { emf: 2 * volts + 1, resistance: 0 }, speed, start);
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
