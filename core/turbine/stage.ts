import { bearingTorque } from '../heat/bearing';
import type { Caution } from '../problem';
import { turbineCautions } from './cautions';
import { measuredCoefficient, peakedCoefficient } from './power-coefficient';
import type { SiteSection, TurbineSection } from './section';
import { startWind, type Wheel } from './wind';

export interface TurbineResult {
  wheel: Wheel;
  /** Best power coefficient and where it is. [-] */
  best: { coefficient: number; tipSpeedRatio: number };
  /** Where the unloaded wheel settles. [-] */
  runawayRatio: number;
  /** Least wind that starts it from standstill against its bearings, null when none does. [m/s] */
  startWind: number | null;
  cautions: Caution[];
}

/** The wind wheel of a design. Functions, so never sent to a worker or kept in a cache. */
export function turbineStage(turbine: TurbineSection, site: Pick<SiteSection, 'airDensity'>): TurbineResult {
  const { curve } = turbine;
  const coefficient = curve ? measuredCoefficient(curve) : peakedCoefficient(turbine.peakCp, turbine.tipSpeedRatio, turbine.runawayRatio);
  const best = curve
    ? curve.reduce((top, [ratio, cp]) => (cp > top.coefficient ? { coefficient: cp, tipSpeedRatio: ratio } : top), {
        coefficient: 0,
        tipSpeedRatio: turbine.tipSpeedRatio,
      })
    : { coefficient: turbine.peakCp, tipSpeedRatio: turbine.tipSpeedRatio };
  const wheel: Wheel = { radius: turbine.diameter / 2, airDensity: site.airDensity, coefficient };
  const starts = startWind(wheel, bearingTorque(turbine.diameter));
  return {
    wheel,
    best,
    runawayRatio: runaway(coefficient, best.tipSpeedRatio),
    startWind: starts,
    cautions: turbineCautions(turbine, best.coefficient, starts),
  };
}

function runaway(coefficient: (ratio: number) => number, from: number): number {
  let low = from;
  let high = from + 1;
  while (coefficient(high) > 0 && high < 1000) high += 1;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (coefficient(middle) > 0) low = middle;
    else high = middle;
  }
  return high;
}
