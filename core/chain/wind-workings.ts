import type { Design } from '../design/schema';
import { fixed, over, PI, plus, power, squared, times, type Formula, type Term } from '../formula';
import { written } from '../notation';
import { gamma, YEAR } from '../turbine/yearly';
import type { TurbineResult } from '../turbine/stage';
import { found, type Given, type Working } from '../working';
import type { Plant } from './operating-point';
import type { Results } from './results';

export const WHEEL_SOURCE = 'P = ½ρAv³Cp(ωR/v); equilibrium of two torques.';
const RPM = (2 * Math.PI) / 60;

/** What the wind makes of wheel and generator together. Source of each beside it. */
export function windWorkings(given: Given, design: Design, plant: Plant, turbine: TurbineResult, results: Results): Working[] {
  const { entry } = given;
  return [
    cutInWorking(given, plant, turbine, results),
    {
      result: 'rated.wind',
      formula: entry('site.ratedWind'),
      method: 'As entered.',
      limits: 'Steady wind.',
      source: 'By definition.',
    },
    speedWorking(given, turbine, results),
    yearWorking(given, design, results),
  ];
}

/** Power the wheel takes from a wind, at a shaft speed. */
export function wheelTakes({ entry }: Given, { wheel }: TurbineResult, wind: Term, speed: number): Formula {
  const ratio = (speed * wheel.radius) / wind.value;
  const coefficient = found(
    'C_p',
    `Power coefficient at a tip-speed ratio of ${ratio.toFixed(2)}`,
    wheel.coefficient(ratio),
    'ratio',
    'turbine.peakCp',
  );
  return times(over(entry('site.airDensity'), 2), PI, squared(over(entry('turbine.diameter'), 2)), power(wind, 3), coefficient);
}

function cutInWorking(given: Given, plant: Plant, turbine: TurbineResult, { cutIn }: Results): Working {
  const shared = {
    result: 'cutIn.wind',
    law: written('{ 1 / 2 } · ρ_air · π · { D^2 / 4 } · v^3 · C_p ( λ ) = P_eddy + P_b , λ = { ω · D / 2 · v }'),
    limits: 'The generator still without current; a wheel that must first start from standstill may need more.',
    source: WHEEL_SOURCE,
  } as const;
  if (cutIn.rpm === null || cutIn.wind === null)
    return { ...shared, method: 'There is no speed at which the load begins to draw, or no wind that brings the wheel there.' };
  const speed = cutIn.rpm * RPM;
  return {
    ...shared,
    method:
      'The least wind in which the wheel, held by bearings and eddy currents only, runs at the cut-in speed: halved in until it stands.',
    check: {
      says: 'The wheel gives just what the drag takes.',
      left: wheelTakes(given, turbine, given.result('cutIn.wind'), speed),
      sign: '≈',
      right: plus(
        found('P_eddy', 'Eddy loss at cut-in speed', plant.eddyLoss(speed), 'power', 'winding.wire.conductorDiameter'),
        found('P_b', 'Bearing drag at cut-in speed', plant.bearingLoss(speed), 'power', 'turbine.diameter'),
      ),
      unit: 'power',
      within: 1e-4,
    },
    from: ['cutIn.rpm', 'turbine.tipSpeedRatio', 'turbine.runawayRatio'],
  };
}

function speedWorking(given: Given, turbine: TurbineResult, { rated }: Results): Working {
  const shared = {
    result: 'rated.rpm',
    law: written('{ 1 / 2 } · ρ_air · π · { D^2 / 4 } · v^3 · C_p ( λ ) = P_shaft ( ω ) , λ = { ω · D / 2 · v }'),
    limits: 'Steady wind, no furling; the generator’s curve read between the speeds at which it was solved.',
    source: WHEEL_SOURCE,
  } as const;
  if (rated.rpm === 0) return { ...shared, method: 'The wheel cannot start against its load.', formula: fixed(0, 'speed') };
  return {
    ...shared,
    method:
      'The first speed, the wind having risen from calm, at which wheel and generator balance and a faster shaft is braked: halved in.',
    check: {
      says: 'The wheel gives what the shaft takes, as near as the straight pieces follow the curve.',
      left: wheelTakes(given, turbine, given.result('rated.wind'), rated.rpm * RPM),
      sign: '≈',
      right: given.result('stages.rated.shaftWatts'),
      unit: 'power',
      within: 0.02,
    },
    from: ['turbine.tipSpeedRatio', 'turbine.runawayRatio', 'load'],
  };
}

/** Slices of the wind's range over which the mean power is summed anew for the check. */
const SLICES = 800;

function yearWorking({ result }: Given, { site }: Design, { match }: Results): Working {
  const scale = site.meanWind / gamma(1 + 1 / site.weibullShape);
  const survival = (wind: number) => Math.exp(-((wind / scale) ** site.weibullShape));
  const curve = [{ wind: 0, dcWatts: 0 }, ...match];
  const wattsAt = (wind: number) => {
    const i = Math.max(
      1,
      curve.findIndex((point) => point.wind >= wind),
    );
    const [a, b] = [curve[i - 1], curve[i]];
    return a.dcWatts + ((b.dcWatts - a.dcWatts) * (wind - a.wind)) / (b.wind - a.wind);
  };
  const step = curve[curve.length - 1].wind / SLICES;
  const mean = Array.from({ length: SLICES }, (_, i) => wattsAt((i + 0.5) * step) * (survival(i * step) - survival((i + 1) * step)));
  return {
    result: 'year.energy',
    law: written(
      'W = t_year · ∫ P ( v ) · f ( v ) · d v , f = { k / c } · ( { v / c } )^k−1 · exp ( − ( { v / c } )^k ) , c = { v_mean / Γ ( 1 + { 1 / k } ) }',
    ),
    method: `The power at every wind, weighted by how often it blows; the scale c is ${scale.toFixed(2)} m/s here.`,
    check: {
      says: 'The mean power, summed anew over many thin slices of wind, all year long.',
      left: result('year.energy'),
      sign: '≈',
      right: times(
        found(
          'P_mean',
          'Mean power over all winds',
          mean.reduce((sum, part) => sum + part, 0),
          'power',
          'rated.dcWatts',
        ),
        found('t_year', 'A year', YEAR, 'duration'),
      ),
      unit: 'energy',
      within: 1e-3,
    },
    from: ['site.meanWind', 'site.weibullShape', 'rated.wind', 'site.gustWind'],
    limits: 'Nothing is counted above the greatest wind of the curve; no down time; steady winds.',
    source: 'Weibull distribution.',
  };
}
