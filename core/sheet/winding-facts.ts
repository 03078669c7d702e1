import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { bareMm, kilograms, many, metres, mm, percent, wireMm } from './figures';
import { strandToCut } from './winding-steps';

/** What is looked up most often while winding. */
export function windingFacts({ winding }: Design, results: Results): [string, string][] {
  const { wire, layout } = winding;
  const { coils, stages } = results;
  const pegs = stages.winding.pegs;
  return [
    [layout.kind === 'concentrated' ? 'Coils' : 'Rings', String(coils.count)],
    ['Turns in each', String(winding.turns)],
    ['Wire', `${wire.metal}, ${wireMm(wire.conductorDiameter)} bare, ${wireMm(wire.overallDiameter)} over the covering`],
    ['Wires in hand', String(wire.inHand)],
    ...(pegs ? ([['Pegs', `${mm(pegs.distance)} between centres, ∅ ${bareMm(pegs.diameter)}`]] as [string, string][]) : []),
    [
      'Cut for each',
      `${wire.inHand === 1 ? '' : `${wire.inHand} × `}${metres(strandToCut(results))} (${metres(stages.wire.coilLength)} wound)`,
    ],
    ['Leads', `${metres(winding.leadLength)} per phase`],
    ['Wire in all', `${metres(coils.wireLength)}, ${kilograms(coils.wireMass)}`],
    ['Mean turn', mm(stages.winding.meanTurn)],
    ['Fill', `${percent(coils.fill)}${coils.fits ? '' : `: it does not fit; take out ${many(stages.wire.turnsTooMany, 'turn')}`}`],
  ];
}
