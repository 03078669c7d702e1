import type { SiteSection } from '../turbine/section';
import type { TurbineResult } from '../turbine/stage';
import { balances, settledSpeed, type LoadPoint } from '../turbine/match';
import type { Responder, Response } from './curve';
import type { CurvePoint, MatchPoint } from './results';

const WINDS = 40;
const RPM = 60 / (2 * Math.PI);
/** Less than this share of the best power coefficient, on the slow side of it, is called stalled. Common practice, no source. */
const STALLED = 0.75;

/** The greatest wind the curves go to: half as much again as rated, and no more than the gust. */
export function topWind({ ratedWind, gustWind }: SiteSection): number {
  return Math.min(1.5 * ratedWind, Math.max(gustWind, ratedWind));
}

/** Wheel and generator together at every wind. */
export function matchCurve(turbine: TurbineResult, curve: readonly Response[], cutIn: number | undefined, top: number): MatchPoint[] {
  return Array.from({ length: WINDS }, (_, i) => matchAt(turbine, curve, cutIn, (top * (i + 1)) / WINDS));
}

/** Wheel and generator together at one wind, read off the generator's curve. */
export function matchAt(turbine: TurbineResult, curve: readonly Response[], cutIn: number | undefined, wind: number): MatchPoint {
  const { wheel, best } = turbine;
  const speed = settledSpeed(balances(wheel, wind, loadPoints(curve)));
  if (speed === 0)
    return {
      wind,
      rpm: 0,
      tipSpeedRatio: 0,
      dcVolts: 0,
      dcAmps: 0,
      dcWatts: 0,
      shaftWatts: 0,
      coilTemperature: curve[0].point.coilTemperature,
      state: 'still',
    };
  const { low, share } = placeOf(curve, speed * RPM);
  const between = (key: keyof CurvePoint) => curve[low].point[key] + share * (curve[low + 1].point[key] - curve[low].point[key]);
  const tipSpeedRatio = (speed * wheel.radius) / wind;
  const slow = tipSpeedRatio < best.tipSpeedRatio && wheel.coefficient(tipSpeedRatio) < STALLED * best.coefficient;
  const idle = cutIn === undefined || speed < cutIn;
  return {
    wind,
    rpm: speed * RPM,
    tipSpeedRatio,
    dcVolts: between('dcVolts'),
    dcAmps: between('dcAmps'),
    dcWatts: between('dcWatts'),
    shaftWatts: between('shaftWatts'),
    coilTemperature: between('coilTemperature'),
    state: idle
      ? 'idling'
      : slow
        ? 'stalled'
        : curve[low].limited && curve[low + 1].limited && tipSpeedRatio > best.tipSpeedRatio
          ? 'limited'
          : 'charging',
  };
}

/** As `matchAt`, the generator's side solved at that very speed. */
export function pointAt(respond: Responder, curve: readonly Response[], rpm: number): CurvePoint {
  const { low } = placeOf(curve, rpm);
  const near = curve[low].point;
  return respond(rpm / RPM, { temperature: near.coilTemperature, volts: (near.dcVolts * rpm) / Math.max(near.rpm, 1e-9) }).point;
}

const loadPoints = (curve: readonly Response[]): LoadPoint[] =>
  curve.map(({ point }) => ({ speed: point.rpm / RPM, shaftWatts: point.shaftWatts }));

function placeOf(curve: readonly Response[], rpm: number): { low: number; share: number } {
  let low = 0;
  while (low < curve.length - 2 && curve[low + 1].point.rpm < rpm) low++;
  const [a, b] = [curve[low].point.rpm, curve[low + 1].point.rpm];
  return { low, share: Math.min(1, Math.max(0, (rpm - a) / (b - a))) };
}
