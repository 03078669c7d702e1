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
    `Join the ends as in the connection table, tick every join, solder and sleeve it. Scrape or burn off the enamel first. Solder leads to the terminals, ${metres(winding.leadLength)} in all to a phase and no thinner than the winding’s wire.`,
    'Before any resin: read ohms and, turning by hand, volts against the table of expected readings. A wrong sense or a swapped pair is put right now or never.',
    `Finish the winding ${thick} mm thick: ${bareMm(results.stages.winding.copperHeight)} of copper under a skin of ${bareMm(winding.skin)} on each face. Nothing may stand proud of it.`,
  ];
}

/** Layers of wires side by side, as they come where nothing is said against it: square, each on the one below. */
function layerWords({ turns, thickness, wire }: Design['winding']): string {
  const across = Math.max(1, Math.floor(thickness / wire.overallDiameter + 1e-9));
  const full = Math.floor((turns * wire.inHand) / across);
  const over = turns * wire.inHand - full * across;
  const last = over > 0 ? `${full > 0 ? ' and ' : ''}${many(over, 'wire')} in ${full > 0 ? 'the last' : 'one layer'}` : '';
  return `${full > 0 ? `${many(full, 'layer')} of ${many(across, 'wire')}` : ''}${last}, side by side over ${mm(thickness)}`;
}

function coil({ winding }: Design, results: Results, hands: string): string[] {
  const { layout, wire } = winding;
  if (layout.kind !== 'concentrated') return [];
  return [
    `Make the former: a core ${bareMm(layout.holeInnerWidth)} to ${bareMm(layout.holeOuterWidth)} mm wide, ${bareMm(layout.holeOuterRadius - layout.holeInnerRadius)} mm long and ${bareMm(winding.thickness)} mm thick between two cheeks, edges broken, waxed.`,
    `Cut ${wire.inHand === 1 ? 'a wire' : `${wire.inHand} wires`} of ${metres(strandToCut(results))} for each of ${many(results.coils.count, 'coil')}: ${metres(results.stages.wire.coilLength)} and ${mm(TAIL)} at each end.`,
    `Tape ${mm(TAIL)} of the start to the upper cheek. It leaves the core at the end away from the axle, where it crosses the copper on the upper face, clear of the magnets.`,
    `Wind ${many(winding.turns, 'turn')} with ${hands}, counter-clockwise seen from above from start to finish: about ${layerWords(winding)}. Wind every coil the same way round.`,
    `The copper must not stand deeper than ${mm(layout.legWidth)} nor thicker than ${mm(winding.thickness)}. Tie it in four places before it leaves the former, then lay a turn of tape round the leg where start and finish come out, so that neither can pull a turn loose.`,
  ];
}

function skein({ winding }: Design, results: Results, hands: string): string[] {
  const pegs = results.stages.winding.pegs;
  const { wire } = winding;
  return [
    ...(pegs ? [`Set two pegs of ${mm(pegs.diameter)} diameter on a board, ${mm(pegs.distance)} from centre to centre.`] : []),
    `Have ${wire.inHand === 1 ? 'a wire' : `${wire.inHand} wires`} of ${metres(strandToCut(results))} for each of ${many(results.coils.count, 'ring')}: ${metres(results.stages.wire.coilLength)} and ${mm(TAIL)} at each end. A joint inside a skein is a fault to come: run it off the reel.`,
    `Tape ${mm(TAIL)} of the start to the board and wind ${many(winding.turns, 'turn')} round both pegs with ${hands}, all the same way round, evenly tight: about ${layerWords(winding)}, ${pegs ? `${bareMm(pegs.bundleDepth)} mm deep` : 'as deep as a leg is wide'} on the pegs, neither more nor less. Tie the skein every ${count(100)} mm.`,
  ];
}

function foldings(design: Design, { stages }: Results): string[] {
  const { winding, discs } = design;
  const { layout } = winding;
  if (layout.kind !== 'serpentine') return [];
  const { coils } = stages.winding;
  const arc = (radius: number) => bareMm((2 * Math.PI * radius) / discs.poles);
  const leg = bareMm(layout.outerRadius - layout.innerRadius);
  return [
    `Mark the bends along the middle of the skein, the first half an outer arc from where its ends leave: leg ${leg}, inner arc ${arc(layout.innerRadius)}, leg ${leg}, outer arc ${arc(layout.outerRadius)} mm, ${discs.poles / 2} times. A turn of tape at each mark holds the bundle while it is bent.`,
    `Open the skein to a ring and fold it on to the jig: ${discs.poles} straight legs from ${bareMm(layout.innerRadius)} to ${bareMm(layout.outerRadius)} mm, arcs alternately outside and inside, one leg in each space. Start and finish leave on the upper face, outwards from the middle of an outer arc. Never flatten the loop so that both its halves run in one slot: their currents cancel.`,
    `Press the bundle to ${bareMm(layout.legWidth)} mm wide and ${bareMm(winding.thickness)} mm thick, and tape it to that size at every leg.`,
    ...(coils.length > 1
      ? [
          `Lay each further ring turned by ${turnWords(coils)} counter-clockwise from the one before, as in the plan, ${layout.placement === 'stacked' ? 'on top of it' : 'its legs beside the others in the same layer; where arcs cross, bend one over the other outside the magnets'}.`,
        ]
      : []),
  ];
}

/** The angle from one ring to the next. */
export const turnWords = (coils: Results['stages']['winding']['coils']) =>
  `${Number((((coils[1].angle - coils[0].angle) * 180) / Math.PI).toFixed(2))}°`;

function layings({ winding }: Design, { coils }: Results): string[] {
  if (winding.layout.kind !== 'concentrated') return [];
  const step = 360 / coils.count;
  return [
    `Lay coil 1 on the mark and the others counter-clockwise in order, ${Number(step.toFixed(3))}° from one to the next, the same face up, the hole beginning ${mm(winding.layout.holeInnerRadius)} from the axle.`,
  ];
}
