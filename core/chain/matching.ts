import type { SiteSection } from '../turbine/section';
import type { TurbineResult } from '../turbine/stage';
import { balances, settledSpeed } from '../turbine/match';
import type { LoadCurve } from './curve';
import type { Responder } from './responder';
import type { CurvePoint, MatchPoint } from './results';

const WINDS = 40;
const RPM = 60 / (2 * Math.PI);
/** Less than this share of the best power coefficient, on the slow side of it, is called stalled. Common practice, no source. */
const STALLED = 0.75;

const STANDSTILL: Omit<CurvePoint, 'coilTemperature'> = {
  rpm: 0,
  dcVolts: 0,
  dcAmps: 0,
  dcAmpsRms: 0,
  dcWatts: 0,
  phaseAmps: 0,
  copperLoss: 0,
  diodeLoss: 0,
  cableLoss: 0,
  eddyLoss: 0,
  bearingLoss: 0,
  shaftWatts: 0,
};

/** The greatest wind the curves go to: half as much again as rated, and no more than the gust. */
export function topWind({ ratedWind, gustWind }: SiteSection): number {
  return Math.min(1.5 * ratedWind, Math.max(gustWind, ratedWind));
}

/** Wheel and generator together at every wind. */
export function matchCurve(turbine: TurbineResult, curve: LoadCurve, cutIn: number | undefined, top: number): MatchPoint[] {
  return Array.from({ length: WINDS }, (_, i) => matchAt(turbine, curve, cutIn, (top * (i + 1)) / WINDS));
}

/** Wheel and generator together at one wind, read off the generator's curve. */
export function matchAt(turbine: TurbineResult, curve: LoadCurve, cutIn: number | undefined, wind: number): MatchPoint {
  const { wheel, best } = turbine;
  const found = balances(wheel, wind, curve.load, (turbine.runawayRatio * wind) / wheel.radius);
  const stands = found.map((each) => ({ rpm: each.speed * RPM, stable: each.stable }));
  const starts = turbine.startWind !== null && wind >= turbine.startWind;
  const speed = starts ? settledSpeed(found) : 0;
  if (speed === 0)
    return {
      ...STANDSTILL,
      coilTemperature: curve.responses[0].point.coilTemperature,
      wind,
      tipSpeedRatio: 0,
      state: 'still',
      balances: stands,
    };
  const { point, limited } = curve.at(speed);
  const tipSpeedRatio = (speed * wheel.radius) / wind;
  const slow = tipSpeedRatio < best.tipSpeedRatio && wheel.coefficient(tipSpeedRatio) < STALLED * best.coefficient;
  const idle = cutIn === undefined || speed < cutIn;
  return {
    ...point,
    wind,
    rpm: speed * RPM,
    tipSpeedRatio,
    state: idle ? 'idling' : slow ? 'stalled' : limited && tipSpeedRatio > best.tipSpeedRatio ? 'limited' : 'charging',
    balances: stands,
  };
}

/** As `matchAt`, the generator's side solved at that very speed. */
export function pointAt(respond: Responder, curve: LoadCurve, rpm: number): CurvePoint {
  return respond(rpm / RPM, curve.at(rpm / RPM)).point;
}
