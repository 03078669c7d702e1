import type { Design } from '../design/schema';
import { fixed, minus, notBelowZero, over, plus, squared, times, type Formula } from '../formula';
import { written } from '../notation';
import { found, type Given, type Working } from '../working';
import type { Plant } from './operating-point';
import type { CurvePoint, Results } from './results';

/** Cut-in, and what flows at the rated point. Source of each beside it. */
export function electricalWorkings(given: Given, design: Design, plant: Plant, { cutIn, stages }: Results): Working[] {
  const { entry, result } = given;
  const flow = flowTerms(given, plant, stages.rated);
  return [
    {
      result: 'cutIn.rpm',
      law: written('K_dc = max_θ ( e_highest − e_lowest )'),
      ...(cutIn.rpm === null
        ? { method: 'The load never begins to draw: nothing sets the volts at which it would.' }
        : {
            method: 'The greatest difference between terminals over a turn, harmonics counted, must pass the load’s volts and the diodes’.',
            formula: over(plus(drawingVolts(given, design), thresholds(given, design)), flow.peak),
          }),
      from: ['winding.turns', 'winding.connection', 'rectifier.arrangement', 'load'],
      limits: 'Current that trickles through real diodes a little before is left out.',
      source: 'Peak of the rectified open-circuit EMF.',
    },
    voltsWorking(given, design, stages.rated, flow),
    ampsWorking(given, design, stages.rated, flow),
    {
      result: 'rated.dcWatts',
      formula: minus(
        result('stages.rated.shaftWatts'),
        result('stages.rated.bearingLoss'),
        result('stages.rated.eddyLoss'),
        result('stages.rated.copperLoss'),
        result('stages.rated.diodeLoss'),
        result('stages.rated.cableLoss'),
      ),
      method: 'What the wheel gives the shaft, less every loss on the way to the load.',
      from: ['rated.rpm', 'coils.phaseResistance', 'cable.length'],
      limits: LIMITS,
      source: 'Conservation of energy; each loss from the periodic steady state.',
    },
    {
      result: 'rated.currentDensity',
      formula: over(result('stages.rated.phaseAmps'), times(entry('winding.parallelPaths'), result('stages.wire.metalSection'))),
      limits: 'The current is spread evenly over the metal and over parallel paths.',
      source: 'By definition.',
    },
  ];
}

export const LIMITS = 'Steady wind, no furling; diodes as a threshold and a slope; magnets at their running temperature.';
const CIRCUIT = written('L · { d i / d t } + R · i + v_D + v_load = e ( t )');
const STEADY = 'Solved exactly from one diode event to the next until a period repeats itself, coils at their own temperature';

function flowTerms({ result }: Given, plant: Plant, point: CurvePoint) {
  return {
    peak: found('K_dc', 'Greatest rectified volts, open', plant.openPeak, 'emfConstant', 'emf.peakPerRadPerSecond'),
    speed: result('rated.rpm'),
    ripple: found('I_rms', 'DC current, root mean square', point.dcAmpsRms, 'current', 'rated.dcAmps'),
  };
}
type Flow = ReturnType<typeof flowTerms>;

/** Thresholds in the current's way: two diodes, or two for each bridge in series. */
export function thresholds({ entry }: Given, { winding, rectifier }: Design): Formula {
  const inSeries = rectifier.arrangement === 'bridges-in-series' && (winding.connection === 'separate' || winding.phases === 1);
  return inSeries ? times(2, entry('winding.phases'), entry('rectifier.diode.threshold')) : times(2, entry('rectifier.diode.threshold'));
}

/** At which volts a load begins to draw. */
function drawingVolts({ entry }: Given, { load }: Design): Formula {
  if (load.kind === 'battery') return entry('load.voltage');
  if (load.kind === 'threshold') return entry('load.turnOn');
  return load.kind === 'tracker' ? entry('controller.minInputVoltage') : fixed(0, 'voltage');
}

const resistanceOf = ({ entry }: Given, { load }: Design) => entry(load.kind === 'threshold' ? 'load.slope' : 'load.resistance');
const isFixed = ({ load }: Design) => load.kind === 'battery' || load.kind === 'threshold' || load.kind === 'resistor';

function voltsWorking(given: Given, design: Design, { dcAmps }: CurvePoint, flow: Flow): Working {
  const { entry, result } = given;
  const shared = { result: 'rated.dcVolts', limits: LIMITS, source: 'The load as an EMF behind a resistance (Thévenin).' } as const;
  if (isFixed(design)) {
    const drop = times(resistanceOf(given, design), result('rated.dcAmps'));
    return { ...shared, formula: design.load.kind === 'resistor' ? drop : plus(drawingVolts(given, design), drop), from: ['load'] };
  }
  if (dcAmps > 0)
    return {
      ...shared,
      law: written('P ( V ) = greatest'),
      method: 'The controller holds the volts at which most comes out, within its own limits and no more than the wheel gives at its best.',
      check: {
        says: 'No lower than the controller works at.',
        left: result('rated.dcVolts'),
        sign: '≥',
        right: entry('controller.minInputVoltage'),
        unit: 'voltage',
      },
      from: ['controller.maxInputVoltage', 'controller.maxPower', 'rated.dcWatts'],
      source: 'Search for the greatest power.',
    };
  return {
    ...shared,
    method: 'Nothing flows: the volts a meter with a reservoir would show.',
    formula: notBelowZero(minus(times(flow.peak, flow.speed), thresholds(given, design))),
    from: ['load'],
    source: 'Peak of the rectified open-circuit EMF.',
  };
}

function ampsWorking(given: Given, design: Design, { dcAmps }: CurvePoint, flow: Flow): Working {
  const { result } = given;
  const from: Working['from'] = [
    'emf.peakPerRadPerSecond',
    'coils.phaseResistance',
    'coils.phaseInductance',
    'rectifier.diode.slope',
    'cable.section',
    'rated.rpm',
  ];
  const shared = {
    result: 'rated.dcAmps',
    law: CIRCUIT,
    from,
    limits: LIMITS,
    source: 'Kirchhoff’s laws; periodic steady state.',
  } as const;
  const power = result('rated.dcWatts');
  if (dcAmps === 0) return { ...shared, formula: fixed(0, 'current'), method: 'The rectified volts do not pass those of the load.' };
  if (design.load.kind === 'resistor')
    return { ...shared, method: `${STEADY}; the mean over a period.`, formula: over(result('rated.dcVolts'), resistanceOf(given, design)) };
  if (!isFixed(design)) return { ...shared, method: `${STEADY}; the mean over a period.`, formula: over(power, result('rated.dcVolts')) };
  return {
    ...shared,
    method: `${STEADY}; the mean over a period, which is what the load’s EMF takes of the power.`,
    formula: over(minus(power, times(resistanceOf(given, design), squared(flow.ripple))), drawingVolts(given, design)),
  };
}
