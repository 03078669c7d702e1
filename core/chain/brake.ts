import { METALS } from '../constants';
import { brakingWind, type Braking } from '../controller/braking';
import type { EmfResult } from '../emf/stage';
import { harmonicPeak } from '../emf/waveform';
import { shortedLoss, shortedSeconds, type ShortedWinding } from '../heat/brake';
import type { TurbineResult } from '../turbine/stage';
import type { Metal } from '../wire/section';
import type { WireResult } from '../wire/stage';
import type { Plant } from './operating-point';

/** Where braking starts from: the rated point. */
export interface BrakingFrom {
  /** rad/s */
  speed: number;
  coilTemperature: number;
  limit: number;
  gustWind: number;
}

/**
 * What happens when the winding is shorted to brake the wheel: up to which wind it holds, and how long the coils stand it; none for a wheel that does not
 * turn, or coils past their limit already.
 */
export function brakingOf(
  plant: Plant,
  turbine: TurbineResult,
  emf: EmfResult,
  wire: WireResult,
  metal: Metal,
  from: BrakingFrom,
): Braking | undefined {
  const { speed, coilTemperature, limit, gustWind } = from;
  if (speed <= 0 || coilTemperature >= limit) return undefined;
  const winding = shortedWinding(plant, emf);
  const brake = (at: number) => shortedLoss(winding, at, coilTemperature) + plant.eddyLoss(at) + plant.bearingLoss(at);
  return {
    stopsTo: brakingWind(turbine, brake, gustWind),
    gustWind,
    amps: (winding.emf * speed) / Math.hypot(winding.resistanceAt(coilTemperature), winding.reactance * speed),
    seconds: shortedSeconds(winding, speed, wire.wireMass * METALS[metal].specificHeat, coilTemperature, limit),
  };
}

/** Phases shorted in star: each with its own inductance less that shared with a neighbour. */
export function shortedWinding(plant: Plant, emf: EmfResult): ShortedWinding {
  const [own, neighbour = 0] = emf.inductance[0];
  return {
    phases: emf.phaseEmf.length,
    emf: harmonicPeak(emf.phaseEmf[0], 0) / Math.SQRT2,
    reactance: emf.polePairs * (own - neighbour),
    resistanceAt: (temperature) => plant.sourceAt(temperature).resistance,
  };
}
