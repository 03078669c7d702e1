import { METALS } from '../constants';
import type { Design } from '../design/schema';
import { fixed, minus, over, PI, plus, power, root, squared, times } from '../formula';
import { coolingConductance } from '../heat/cooling';
import { shortedLoss } from '../heat/brake';
import { written } from '../notation';
import type { TurbineResult } from '../turbine/stage';
import { startTorque } from '../turbine/wind';
import { found, type Check, type Given, type Working } from '../working';
import { shortedWinding } from './brake';
import { windingCapacity } from './gust';
import type { Plant } from './operating-point';
import { coolingOf } from './plant';
import type { Results } from './results';
import { WHEEL_SOURCE, wheelTakes } from './wind-workings';

const RPM = (2 * Math.PI) / 60;
const WARMING = written('C · { d T / d t } = P_cu ( T ) + P_eddy − G · ( T − T_air )');
/** The curve is read between the speeds at which it was solved. */
const READ = 0.03;

/** How the wheel starts, and how long the coils stand a gust or a short. Source of each beside it. */
export function enduranceWorkings(given: Given, design: Design, plant: Plant, turbine: TurbineResult, results: Results): Working[] {
  return [
    startWorking(given, plant, turbine, results),
    ...gustWorkings(given, design, turbine, results),
    ...(results.stages.braking ? brakingWorkings(given, design, plant, results) : []),
  ];
}

function startWorking({ entry }: Given, plant: Plant, { wheel }: TurbineResult, { stages }: Results): Working {
  const shared = {
    result: 'stages.start.wind',
    limits: 'No cogging, which coils without iron have none of; stiction of new seals is left out.',
    source: 'Balance of two torques; 0.01 N·m for a wheel of 1 m, growing with its square: common practice, no source.',
  } as const;
  if (stages.start.wind === null) return { ...shared, method: 'By its curve the wheel has no torque at standstill: it must be spun up.' };
  const perSquare = startTorque(wheel, 1);
  const slope = perSquare / (0.5 * wheel.airDensity * Math.PI * wheel.radius ** 3);
  const drag = found('P_1', 'Bearing loss at 1000 rpm', plant.bearingLoss(1000 * RPM), 'power', 'turbine.diameter');
  return {
    ...shared,
    law: written('{ 1 / 2 } · ρ_air · π · { D^3 / 8 } · v^2 · { d C_p / d λ } = M_b'),
    method: 'The wind in which the torque at standstill is that of the bearings.',
    formula: root(
      over(
        over(drag, fixed(1000 * RPM, 'speed')),
        times(
          over(entry('site.airDensity'), 2),
          PI,
          power(over(entry('turbine.diameter'), 2), 3),
          found('c_0', 'Slope of the power coefficient at standstill', slope, 'ratio', 'turbine.peakCp'),
        ),
      ),
    ),
    from: ['turbine.tipSpeedRatio'],
  };
}

function gustWorkings(given: Given, design: Design, turbine: TurbineResult, { stages }: Results): Working[] {
  const { entry, result } = given;
  const { gust } = stages;
  const air = design.surroundings.airTemperature;
  const shared = { limits: 'A steady wind as strong as the gust; neither furling nor a brake.' } as const;
  const conductance = coolingConductance(coolingOf(design, stages.winding), gust.rpm * RPM, gust.coilTemperature, air);
  return [
    {
      ...shared,
      result: 'stages.gust.rpm',
      law: written('{ 1 / 2 } · ρ_air · π · { D^2 / 4 } · v^3 · C_p ( λ ) = P_shaft ( ω ) , λ = { ω · D / 2 · v }'),
      ...(gust.rpm === 0
        ? { method: 'The wheel does not turn against its load.', formula: fixed(0, 'speed') }
        : {
            method: 'The balance that the wheel is driven to from its rated speed.',
            check: {
              says: 'The wheel gives what the shaft takes, as near as the curve is read.',
              left: wheelTakes(given, turbine, entry('site.gustWind'), gust.rpm * RPM),
              sign: '≈',
              right: found('P_shaft', 'Shaft power taken', gust.shaftWatts, 'power', 'rated.dcWatts'),
              unit: 'power',
              within: READ,
            } satisfies Check,
          }),
      from: ['turbine.runawayRatio', 'load'],
      source: WHEEL_SOURCE,
    },
    {
      ...shared,
      result: 'stages.gust.coilTemperature',
      method: gust.runsAway
        ? 'No temperature at which the metal is still solid carries the heat away: thermal runaway.'
        : 'As at rated wind: what is lost and what is carried away agree.',
      check: {
        says: 'The rise over the air is the heat over what both faces carry away for each kelvin.',
        left: minus(result('stages.gust.coilTemperature'), entry('surroundings.airTemperature')),
        sign: gust.runsAway ? '≤' : '≈',
        right: over(
          found('P_heat', 'Heat in the copper', gust.heat, 'power', 'coils.phaseResistance'),
          found('G', 'Heat carried away for each kelvin', conductance, 'thermalConductance', 'winding.skin'),
        ),
        unit: 'temperatureDifference',
        within: 2 * READ,
      },
      source: 'As the coil temperature at rated wind.',
    },
    {
      result: 'stages.gust.seconds',
      law: WARMING,
      ...(gust.seconds === 0
        ? { method: 'The coils are past their limit already at rated wind.', formula: fixed(0, 'time') }
        : gust.seconds === null
          ? { method: 'The coils settle below their limit.' }
          : {
              method: 'Integrated from the rated temperature to the limit, the loss growing with the temperature.',
              check: noSooner(given, 'stages.gust.seconds', {
                capacity: windingCapacity(design.winding.wire.metal, stages.wire, stages.winding, design.winding.turns),
                heat: gust.mostHeat,
              }),
            }),
      from: ['rated.coilTemperature', 'stages.gust.rpm', 'site.gustWind'],
      limits: `Turning on at ${gust.rpm.toFixed(0)} rpm; metal and resin are as warm as each other.`,
      source: 'One thermal mass; mass times specific heat.',
    },
  ];
}

/** Cooling only makes it later. */
function noSooner(
  { result }: Given,
  path: 'stages.gust.seconds' | 'stages.braking.seconds',
  { capacity, heat }: { capacity: number; heat: number },
): Check {
  return {
    says: 'No sooner than if the greatest heat on the way were made from the start, and all of it kept.',
    left: result(path),
    sign: '≥',
    right: over(
      times(
        found('C', 'Heat capacity', capacity, 'heatCapacity', 'coils.wireMass'),
        minus(result('rated.limitTemperature'), result('rated.coilTemperature')),
      ),
      found('P_most', 'Greatest heat on the way', heat, 'power', 'coils.phaseResistance'),
    ),
    unit: 'time',
  };
}

const SAMPLES = 40;

function brakingWorkings(given: Given, design: Design, plant: Plant, { rated, stages }: Results): Working[] {
  const { entry, result } = given;
  const winding = shortedWinding(plant, stages.emf);
  const { metal } = design.winding.wire;
  const step = (rated.limitTemperature - rated.coilTemperature) / SAMPLES;
  const heats = Array.from({ length: SAMPLES + 1 }, (_, i) => shortedLoss(winding, rated.rpm * RPM, rated.coilTemperature + i * step));
  const ofSpeed = times(
    found('p', 'Pole pairs', stages.emf.polePairs, 'count', 'discs.poles'),
    found(
      'L_s',
      'Inductance of a phase, less that shared with its neighbour',
      winding.reactance / stages.emf.polePairs,
      'inductance',
      'coils.phaseInductance',
    ),
    result('rated.rpm'),
  );
  return [
    {
      result: 'stages.braking.stopsTo',
      law: written('P_sc = { m · ( K · ω )^2 · R / R^2 + ( p · L_s · ω )^2 }'),
      method:
        'The greatest wind, halved in, in which the shorted winding brings a wheel that runs free down to half its best tip-speed ratio and less; no more than the gust.',
      check: {
        says: 'Looked for up to the gust.',
        left: result('stages.braking.stopsTo'),
        sign: '≤',
        right: entry('site.gustWind'),
        unit: 'windSpeed',
      },
      from: ['coils.phaseResistance', 'emf.phaseRmsPer1000rpm', 'turbine.tipSpeedRatio'],
      limits: 'The copper does not warm while it brakes; only the fundamental; half the best ratio is common practice, no source.',
      source: 'Equilibrium of wheel and brake; Ohm’s law for the fundamental.',
    },
    {
      result: 'stages.braking.amps',
      formula: over(
        times(
          found('K', 'EMF of a phase, RMS of the fundamental', winding.emf, 'emfConstant', 'emf.peakPerRadPerSecond'),
          result('rated.rpm'),
        ),
        root(plus(squared(result('coils.phaseResistance')), squared(ofSpeed))),
      ),
      from: ['rated.rpm'],
      limits: 'The moment of shorting and harmonics are left out.',
      source: 'Ohm’s law for the fundamental.',
    },
    {
      result: 'stages.braking.seconds',
      law: written('C · { d T / d t } = P_sc ( T )'),
      method: 'Integrated from the rated temperature to the limit; as the copper warms the current falls.',
      check: noSooner(given, 'stages.braking.seconds', {
        capacity: stages.wire.wireMass * METALS[metal].specificHeat,
        heat: Math.max(...heats),
      }),
      from: ['stages.braking.amps', 'coils.wireMass'],
      limits: 'The wheel does not slow down and no heat leaves the metal: both give more time.',
      source: 'Adiabatic heating, as in IEC 60364-4-43 for cables.',
    },
  ];
}
