import { type Caution, inMm, told, type Words } from '../problem';
import type { WindingSection } from '../winding/section';
import { fillOf, HAND_FILL, mostTurns, PATTERN_FILL } from './fill';
import type { WireSection } from './section';

const mm = (metres: number) => inMm(metres, (metres * 1000).toFixed(1));
const fine = (metres: number) => inMm(metres, (metres * 1000).toFixed(3));
const danger = (where: string, words: Words): Caution => ({ severity: 'danger', where, ...words });

/** Whether the wire goes into the leg, and what to change when it does not. */
export function wireCautions({ turns, layout, thickness }: WindingSection, wire: WireSection, turnsTooMany: number): Caution[] {
  const { conductorDiameter, overallDiameter, inHand } = wire;
  const cautions: Caution[] = [];
  if (overallDiameter < conductorDiameter)
    cautions.push(
      danger(
        'winding.wire.overallDiameter',
        told`The diameter over the covering, ${fine(overallDiameter)}, is less than the bare conductor’s ${fine(conductorDiameter)}.`,
      ),
    );
  const room = Math.min(layout.legWidth, thickness);
  if (overallDiameter > room)
    return [
      ...cautions,
      danger(
        'winding.wire.overallDiameter',
        told`A wire ${fine(overallDiameter)} thick does not go into a leg ${mm(layout.legWidth)} wide and ${mm(thickness)} thick: take ${fine(room)} at most, or several in hand.`,
      ),
    ];
  if (turnsTooMany === 0) return cautions;
  const fill = fillOf(turns, inHand, overallDiameter, layout.legWidth * thickness);
  // Rounded to the safe side, so that whoever follows the advice is done.
  const wider = Math.ceil(layout.legWidth * (fill / HAND_FILL - 1) * 1e4) / 1e4;
  const thinner = Math.floor(overallDiameter * Math.sqrt(HAND_FILL / fill) * 1e6) / 1e6;
  const most = mostTurns(inHand, overallDiameter, layout.legWidth, thickness);
  const limit = limitPassed(fill);
  const takeOut = most > 0 ? `take out ${turnsTooMany} turn${turnsTooMany > 1 ? 's' : ''} (${most} go in), ` : '';
  return [
    ...cautions,
    danger(
      'winding.turns',
      told`The turns fill ${fill.toFixed(2)} of the leg, ${limit}: ${takeOut}make the leg ${mm(wider)} wider, or use wire of at most ${fine(thinner)} over its covering.`,
    ),
  ];
}

function limitPassed(fill: number): string {
  if (fill > PATTERN_FILL.hexagonal) return 'more than round wires take however they lie';
  if (fill > PATTERN_FILL.square) return 'more than wires laid in rows one above the other';
  return `more than the ${HAND_FILL.toFixed(2)} a hand reaches`;
}
