import type { Design } from '../design/schema';
import { evaluate, fixed, over, plus, squared, times } from '../formula';
import { written } from '../notation';
import { cableResistance } from '../rectifier/cable';
import { found, type Check, type Given, type Working } from '../working';
import { LIMITS, thresholds } from './electrical-workings';
import type { Plant } from './operating-point';
import type { CurvePoint } from './results';

const AT = (1000 * 2 * Math.PI) / 60;

/** Where the shaft's power goes at rated wind. Source of each beside it. */
export function lossWorkings(given: Given, design: Design, plant: Plant, point: CurvePoint): Working[] {
  const { result } = given;
  const speed = over(result('rated.rpm'), fixed(AT, 'speed'));
  const within = found('P_e', 'Power of the EMF', point.shaftWatts - point.eddyLoss - point.bearingLoss, 'power', 'rated.dcAmps');
  return [
    {
      result: 'stages.rated.shaftWatts',
      law: written('P_e = { 1 / t } · ∫_0^t Σ_j e_j · i_j · d t'),
      method: 'What the EMF of all phases gives to their currents over a period, and what drags beside it.',
      formula: plus(within, result('stages.rated.eddyLoss'), result('stages.rated.bearingLoss')),
      from: ['rated.rpm', 'rated.dcWatts'],
      limits: LIMITS,
      source: 'Conservation of energy.',
    },
    {
      result: 'stages.rated.bearingLoss',
      law: written('P_b = M_b · ω'),
      formula: times(found('P_1', 'Bearing loss at 1000 rpm', plant.bearingLoss(AT), 'power', 'turbine.diameter'), speed),
      limits: 'A torque that does not change with speed; a spun hub tells better.',
      source: '0.01 N·m for a wheel of 1 m, growing with its square: common practice, no source.',
    },
    {
      result: 'stages.rated.eddyLoss',
      law: written('P_eddy = { V_m · d^2 / 32 ρ } · Σ_n ( n · p · ω · B_n )^2'),
      formula: times(found('P_1', 'Eddy loss at 1000 rpm', plant.eddyLoss(AT), 'power', 'winding.wire.conductorDiameter'), squared(speed)),
      from: ['winding.wire.inHand', 'gap.fundamental', 'coils.wireMass'],
      limits: 'Strands thinner than twice the skin depth; currents round loops of several strands in hand are left out.',
      source: 'Carter 1967, The Electromagnetic Field in its Engineering Aspects (from memory).',
    },
    {
      result: 'stages.rated.phaseAmps',
      law: written('I_ph = √{ { 1 / t } · ∫_0^t i^2 · d t }'),
      method: 'From the same periodic steady state as the DC amps; the phase that carries most.',
      check: heating(given),
      from: ['rated.dcAmps', 'rated.rpm'],
      limits: LIMITS,
      source: 'Kirchhoff’s laws; periodic steady state.',
    },
    {
      result: 'stages.rated.copperLoss',
      law: written('P_cu = Σ_j R · I_j^2'),
      method: 'From the same periodic steady state as the DC amps.',
      check: heating(given),
      from: ['coils.phaseResistance', 'rated.coilTemperature', 'winding.turns'],
      limits: 'One temperature for all the wire; skin effect left out.',
      source: 'Joule’s law.',
    },
    {
      result: 'stages.rated.diodeLoss',
      law: written('P_D = Σ_k { 1 / t } · ∫_0^t ( V_D · i_k + R_D · i_k^2 ) · d t'),
      method: 'From the same periodic steady state as the DC amps.',
      check: {
        says: 'No less than the thresholds take of the mean current.',
        left: result('stages.rated.diodeLoss'),
        sign: '≥',
        right: times(thresholds(given, design), result('rated.dcAmps')),
        unit: 'power',
      },
      from: ['rectifier.diode.slope', 'rectifier.arrangement'],
      limits: 'Diodes as a threshold and a slope, at one temperature.',
      source: 'Straight-line model of a diode.',
    },
    cableWorking(given, design, plant, point),
  ];
}

/** Phases whose losses differ by less are told to carry alike. */
const EVEN = 1e-3;

function heating({ entry, result }: Given): Check {
  const loss = result('stages.rated.copperLoss');
  const even = times(entry('winding.phases'), result('coils.phaseResistance'), squared(result('stages.rated.phaseAmps')));
  const isEven = evaluate(even) - evaluate(loss) <= EVEN * evaluate(even);
  return {
    says: isEven ? 'The phases carry alike.' : 'No more than if every phase carried as much as the one that carries most.',
    left: loss,
    sign: isEven ? '≈' : '≤',
    right: even,
    unit: 'power',
    within: EVEN,
  };
}

function cableWorking({ entry, result }: Given, { cable, winding, surroundings }: Design, plant: Plant, point: CurvePoint): Working {
  const ripple = found('I_rms', 'DC current, root mean square', point.dcAmpsRms, 'current', 'rated.dcAmps');
  const shared = {
    result: 'stages.rated.cableLoss',
    from: ['cable.length', 'cable.section', 'cable.metal', 'cable.side'],
    limits: 'At the air’s temperature; joints and the cable’s inductance left out.',
  } satisfies Partial<Working>;
  if (cable.side === 'dc')
    return {
      ...shared,
      formula: times(found('R_cable', 'Resistance there and back', plant.dcCableResistance, 'resistance', 'cable.length'), squared(ripple)),
      source: 'Joule’s law; IEC 60028 for the metal.',
    };
  const { acLine } = cableResistance(cable, surroundings.airTemperature);
  const lines = winding.connection === 'separate' || winding.phases === 1 ? times(2, entry('winding.phases')) : entry('winding.phases');
  return {
    ...shared,
    law: written('P_cable = Σ_k R_line · I_k^2'),
    method: 'From the same periodic steady state as the DC amps.',
    check: {
      says: 'No less than if all lines always shared the DC current evenly, half of them there and half back.',
      left: result('stages.rated.cableLoss'),
      sign: '≥',
      right: over(times(4, found('R_line', 'Resistance of a line', acLine, 'resistance', 'cable.length'), squared(ripple)), lines),
      unit: 'power',
    },
    source: 'Joule’s law; IEC 60028 for the metal.',
  };
}
