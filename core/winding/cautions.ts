import { type Caution, inMm, told, type Words } from '../problem';
import { coilSpan, roomBetweenCoils } from './concentrated';
import type { Layout, WindingSection } from './section';
import { roomForLeg } from './serpentine';
import type { WindingResult } from './stage';

type Of<K extends Layout['kind']> = Extract<Layout, { kind: K }>;

const mm = (metres: number) => inMm(metres, (metres * 1000).toFixed(1));
const caution = (severity: Caution['severity'], where: string, words: Words): Caution => ({ severity, where, ...words });

/** What a builder must know about where the copper lies and how it is joined. */
export function windingCautions(winding: WindingSection, poles: number, result: WindingResult): Caution[] {
  const { layout, phases } = winding;
  return [
    ...(layout.kind === 'concentrated' ? coilCautions(layout, poles, phases) : ringCautions(layout, poles, phases)),
    ...sharingCautions(winding, result.coils.length),
    ...balanceCautions(winding, result),
  ];
}

/** Sine of half the span below which most of a coil's EMF cancels within it. Common practice, no source. */
const POOR_PITCH = 0.5;

function coilCautions(layout: Of<'concentrated'>, poles: number, phases: number): Caution[] {
  const { coils } = layout;
  const cautions: Caution[] = [];
  const room = roomBetweenCoils(layout);
  if (room !== undefined && room < 0)
    cautions.push(
      caution(
        'danger',
        'winding.layout.legWidth',
        told`Neighbouring coils overlap by ${mm(-room)}: make the legs ${mm(-room / 2)} narrower, the holes narrower, or the circle larger.`,
      ),
    );
  if (coils % phases !== 0) {
    const below = coils - (coils % phases);
    cautions.push(
      caution(
        'danger',
        'winding.layout.coils',
        told`${coils} coils do not share out over ${phases} phases: use ${below > 0 ? `${below} or ` : ''}${below + phases}.`,
      ),
    );
  }
  const pitches = (coilSpan(layout) * poles) / (2 * Math.PI);
  if (Math.abs(Math.sin((Math.PI * pitches) / 2)) < POOR_PITCH)
    cautions.push(
      caution(
        'warning',
        'winding.layout.holeOuterWidth',
        told`A coil spans ${pitches.toFixed(2)} pole pitches, so that the EMFs of its two legs all but cancel. About one is best.`,
      ),
    );
  return cautions;
}

function ringCautions({ innerRadius, legWidth, placement }: Of<'serpentine'>, poles: number, phases: number): Caution[] {
  const cautions = [
    caution(
      'note',
      'winding.layout',
      told`Fold the skein round every leg as drawn. Flattened so that both halves lie in one slot, its currents cancel and it gives nothing.`,
    ),
  ];
  const interleaved = placement === 'interleaved' && phases > 1;
  const room = roomForLeg(innerRadius, poles, interleaved ? phases : 1);
  if (legWidth > room)
    cautions.push(
      caution(
        'danger',
        'winding.layout.legWidth',
        told`Legs ${mm(legWidth)} wide do not go side by side: at the inner radius each has ${mm(room)}${interleaved ? `, a part in ${phases} of the pole pitch` : ''}. Make them ${mm(legWidth - room)} narrower, or the inner radius larger.`,
      ),
    );
  if (interleaved && phases > 2 && phases % 2 === 0)
    cautions.push(
      caution(
        'danger',
        'winding.layout.placement',
        told`With ${phases} phases, ring 1 and ring ${phases / 2 + 1} have their legs in the same places: stack the rings, or use an odd number of phases.`,
      ),
    );
  else if (interleaved)
    cautions.push(
      caution(
        'note',
        'winding.layout.placement',
        told`Rings side by side cross at their ends and stand thicker there: bend the ends clear of the magnets, or leave the discs room.`,
      ),
    );
  return cautions;
}

function sharingCautions({ layout, phases, parallelPaths }: WindingSection, count: number): Caution[] {
  const perPhase = Math.floor(count / phases);
  if (parallelPaths === 1 || (perPhase > 0 && perPhase % parallelPaths === 0)) return [];
  const divisors = Array.from({ length: perPhase }, (_, i) => i + 1).filter((n) => perPhase % n === 0);
  const possible = divisors.length > 1 ? `possible: ${divisors.join(', ')}` : 'only 1 is possible';
  const what = layout.kind === 'serpentine' ? 'A ring is one coil: it does' : `${perPhase} coils a phase do`;
  return [caution('danger', 'winding.parallelPaths', told`${what} not share out over ${parallelPaths} parallel paths; ${possible}.`)];
}

function balanceCautions({ layout, phases }: WindingSection, { balanced, unbalance, nearestBalanced }: WindingResult): Caution[] {
  if (balanced || phases === 1) return [];
  const better = nearestBalanced.length ? ` Balanced near by: ${nearestBalanced.join(', ')}.` : '';
  return [
    caution(
      'warning',
      layout.kind === 'concentrated' ? 'winding.layout.coils' : 'winding.phases',
      told`The phases’ EMFs are up to ${(100 * unbalance).toFixed(0)} % from equal and evenly spaced.${better}`,
    ),
  ];
}
