import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { bareMm, count, many, metres, mm, ohms } from './figures';
import { expectedReadings } from './expected-readings';

/** Left hanging at each end of a coil to join it by. Common practice. [m] */
export const TAIL = 0.15;

/** One strand of one coil with its two tails. [m] */
export const strandToCut = ({ stages }: Results) => stages.wire.coilLength + 2 * TAIL;

/** The work in order, in words. */
export function windingSteps(design: Design, results: Results): string[] {
  const { winding } = design;
  const hands = winding.wire.inHand === 1 ? 'one wire' : `${winding.wire.inHand} wires in hand, side by side and not twisted`;
  const reading = ohms(expectedReadings(design, results).ohms.coil);
  const thick = bareMm(results.stages.winding.copperHeight + 2 * winding.skin);
  return [
    ...(winding.layout.kind === 'serpentine' ? skein(design, results, hands) : coil(design, results, hands)),
    `Mark the wire you began with S and the end F, and tie a tag with the number on. The meter must read ${reading} on each${winding.wire.inHand > 1 ? ', its strands joined at both ends' : ''}.`,
    ...(winding.layout.kind === 'serpentine' ? foldings(design, results) : layings(design, results)),
    'Join the ends as in the connection table, tick every join, solder and sleeve it. Scrape or burn off the enamel first.',
    'Before any resin: read ohms and, turning by hand, volts against the table of expected readings. A wrong sense or a swapped pair is put right now or never.',
    `Finish the winding ${thick} mm thick: ${bareMm(results.stages.winding.copperHeight)} of copper under a skin of ${bareMm(winding.skin)} on each face. Nothing may stand proud of it.`,
  ];
}

function coil({ winding }: Design, results: Results, hands: string): string[] {
  const { layout, wire } = winding;
  if (layout.kind !== 'concentrated') return [];
  const perLayer = Math.max(1, Math.floor(winding.thickness / wire.overallDiameter));
  const layers = Math.ceil((winding.turns * wire.inHand) / perLayer);
  return [
    `Make the former: a core ${bareMm(layout.holeInnerWidth)} to ${bareMm(layout.holeOuterWidth)} mm wide, ${bareMm(layout.holeOuterRadius - layout.holeInnerRadius)} mm long and ${bareMm(winding.thickness)} mm thick between two cheeks, edges broken, waxed.`,
    `Cut ${wire.inHand === 1 ? 'a wire' : `${wire.inHand} wires`} of ${metres(strandToCut(results))} for each of ${many(results.coils.count, 'coil')}: ${metres(results.stages.wire.coilLength)} and ${mm(TAIL)} at each end.`,
    `Wind ${many(winding.turns, 'turn')} with ${hands}, counter-clockwise seen from above from start to finish, about ${count(perLayer)} wires to a layer and ${many(layers, 'layer')}. Wind every coil the same way round.`,
    `The copper must not stand deeper than ${mm(layout.legWidth)} nor thicker than ${mm(winding.thickness)}. Tie it in four places before it leaves the former.`,
  ];
}

function skein({ winding }: Design, results: Results, hands: string): string[] {
  const pegs = results.stages.winding.pegs;
  const { wire } = winding;
  return [
    ...(pegs ? [`Set two pegs of ${mm(pegs.diameter)} diameter on a board, ${mm(pegs.distance)} from centre to centre.`] : []),
    `Have ${wire.inHand === 1 ? 'a wire' : `${wire.inHand} wires`} of ${metres(strandToCut(results))} for each of ${many(results.coils.count, 'ring')}: ${metres(results.stages.wire.coilLength)} and ${mm(TAIL)} at each end. A joint inside a skein is a fault to come: run it off the reel.`,
    `Wind ${many(winding.turns, 'turn')} round both pegs with ${hands}, all turns the same way round, evenly tight. Tie the skein every ${count(100)} mm.`,
  ];
}

function foldings(design: Design, { stages }: Results): string[] {
  const { winding, discs } = design;
  if (winding.layout.kind !== 'serpentine') return [];
  const shift = ((stages.winding.coils[1]?.angle ?? 0) * 180) / Math.PI;
  return [
    `Open the skein to a ring and fold it on to the jig: ${discs.poles} straight legs from ${bareMm(winding.layout.innerRadius)} to ${bareMm(winding.layout.outerRadius)} mm, arcs alternately outside and inside, one leg in each space. Never flatten the loop so that both its halves run in one slot: their currents cancel.`,
    `Press the bundle to ${bareMm(winding.layout.legWidth)} mm wide and ${bareMm(winding.thickness)} mm thick.`,
    ...(stages.winding.coils.length > 1
      ? [
          `Lay each further ring turned by ${Number(shift.toFixed(2))}° counter-clockwise from the one before, ${winding.layout.placement === 'stacked' ? 'on top of it' : 'its legs beside the others in the same layer'}.`,
        ]
      : []),
  ];
}

function layings({ winding }: Design, { coils }: Results): string[] {
  if (winding.layout.kind !== 'concentrated') return [];
  const step = 360 / coils.count;
  return [
    `Lay coil 1 on the mark and the others counter-clockwise in order, ${Number(step.toFixed(3))}° from one to the next, the same face up, the hole beginning ${mm(winding.layout.holeInnerRadius)} from the axle.`,
  ];
}
