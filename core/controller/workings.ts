import { over, times } from '../formula';
import { written } from '../notation';
import type { EntryPath } from '../quantities';
import { found, type Given, type Working } from '../working';

/** Of the machine run away with nothing connected. */
export interface Unloaded {
  /** Greatest rectified volts over the shaft's speed. [V·s/rad] */
  openPeak: number;
  /** Tip-speed ratio at which the free wheel settles. [-] */
  runawayRatio: number;
  /** Remanence on a winter's morning over that of the field. [-] */
  cold: number;
}

/** How the demands on a controller come about. Source of each beside it. */
export function demandWorkings({ entry, result }: Given, { openPeak, runawayRatio, cold }: Unloaded): Working[] {
  const peak = found('K_dc', 'Greatest rectified volts, open', openPeak, 'emfConstant', 'emf.peakPerRadPerSecond');
  const ratio = found('λ_run', 'Tip-speed ratio of the free wheel', runawayRatio, 'ratio', 'turbine.runawayRatio');
  const winter = found('k_cold', 'Remanence at −20 °C over the warm one', cold, 'ratio', 'magnets.remanenceTempCoefficient');
  const open = (path: Working['result'], wind: EntryPath, more: (typeof peak)[] = []): Working => ({
    result: path,
    law: written('V = K_dc · ω , ω = { 2 · λ_run · v / D }'),
    formula: over(times(2, peak, ...more, ratio, entry(wind)), entry('turbine.diameter')),
    method: 'The wheel runs free and the meter has a reservoir, as a controller’s input has.',
    limits: 'Neither furling nor a brake; bearings and eddy currents do not hold the wheel; the diodes’ threshold is left out.',
    source: 'Peak of the rectified open-circuit EMF.',
  });
  return [
    open('stages.demands.gustVolts', 'site.gustWind', [winter]),
    open('stages.demands.ratedOpenVolts', 'site.ratedWind'),
    open('stages.demands.lightVolts', 'site.meanWind'),
    {
      result: 'stages.demands.greatestWatts',
      law: written('P_most = max_v P ( v ) , v ≤ v_r'),
      method: 'The greatest of the powers worked out at each wind from calm to the rated one.',
      check: {
        says: 'No less than at rated wind.',
        left: result('stages.demands.greatestWatts'),
        sign: '≥',
        right: result('rated.dcWatts'),
        unit: 'power',
      },
      from: ['site.ratedWind', 'rated.dcWatts'],
      limits: 'Steady wind, no furling.',
      source: 'By definition.',
    },
  ];
}
