import { least, minus, over, plus } from '../formula';
import { written } from '../notation';
import { found, type Given, type Working } from '../working';
import { coolingConductance, type Cooling } from './cooling';

/** The coils at the rated point. [rad/s, °C] */
export interface Warming {
  speed: number;
  coilTemperature: number;
  airTemperature: number;
  /** No temperature at which the metal is still solid is a balance. */
  runsAway: boolean;
  /** By how much the loop over losses and temperature may be out. [K] */
  settledTo: number;
}

/** How the coils' temperature and its limit come about. Source of each beside it. */
export function heatWorkings({ entry, result }: Given, cooling: Cooling, warming: Warming): Working[] {
  const { coilTemperature, airTemperature, speed, settledTo, runsAway: ranAway } = warming;
  const conductance = coolingConductance(cooling, speed, coilTemperature, airTemperature);
  const rise = coilTemperature - airTemperature;
  return [
    {
      result: 'rated.coilTemperature',
      law: written('G = { A_f / { 1 / h } + { s / λ_s } } , h = ∛ ( h_still^3 + h_stirred^3 )'),
      method: ranAway
        ? 'No temperature at which the metal is still solid carries the heat away: thermal runaway.'
        : 'Tried again and again, the copper’s loss with its temperature, until what is lost and what is carried away agree.',
      check: {
        says: 'The rise over the air is the heat over what both faces carry away for each kelvin.',
        left: minus(result('rated.coilTemperature'), entry('surroundings.airTemperature')),
        sign: ranAway ? '≤' : '≈',
        right: over(
          plus(result('stages.rated.copperLoss'), result('stages.rated.eddyLoss')),
          found('G', 'Heat carried away for each kelvin', conductance, 'thermalConductance', 'winding.skin'),
        ),
        unit: 'temperatureDifference',
        within: rise > 0 ? Math.min(1, (2 * settledTo) / rise) : 0,
      },
      from: ['winding.skin', 'discs.runningClearance', 'stages.winding.meanTurn', 'rated.rpm', 'rated.dcAmps'],
      limits:
        'Both faces cooled across the clearance by still and stirred air and by radiation; wind blown through the machine is left out.',
      source: 'Churchill & Chu 1975; Cobb & Saunders 1956; cube rule of Churchill 1977; eddy loss Carter 1967 (from memory).',
    },
    {
      result: 'rated.limitTemperature',
      formula: least(entry('winding.wire.thermalClass'), entry('surroundings.formerLimit')),
      limits: 'The weakest material rules; magnets have a limit of their own.',
      source: 'Classes of IEC 60085; limits of resins and plastics by their makers.',
    },
  ];
}
