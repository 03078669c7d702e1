import type { Caution } from '../problem';
import { roomBetweenCoils } from './concentrated';
import type { WindingSection } from './section';
import type { WindingResult } from './stage';

const mm = (metres: number) => `${(metres * 1000).toFixed(1)} mm`;

/** What a builder must know about where the copper lies and how it is joined. */
export function windingCautions(winding: WindingSection, poles: number, result: WindingResult): Caution[] {
  const { layout, phases, parallelPaths } = winding;
  const cautions: Caution[] = [];
  const add = (severity: Caution['severity'], where: string, message: string) => cautions.push({ severity, where, message });
  if (layout.kind === 'concentrated') {
    const room = roomBetweenCoils(layout);
    if (room !== undefined && room < 0)
      add(
        'danger',
        'winding.layout.legWidth',
        `Neighbouring coils overlap by ${mm(-room)}: make the legs ${mm(-room / 2)} narrower, the holes narrower, or the circle larger.`,
      );
    if (layout.coils % phases !== 0)
      add('danger', 'winding.layout.coils', `${layout.coils} coils do not share out over ${phases} phases: use a multiple of ${phases}.`);
  } else {
    add(
      'note',
      'winding.layout',
      'Fold the skein round every leg as drawn. Flattened so that both halves lie in one slot, its currents cancel and it gives nothing.',
    );
    const room = (2 * Math.PI * layout.innerRadius) / poles / (layout.placement === 'interleaved' ? phases : 1);
    if (layout.legWidth > room)
      add(
        'danger',
        'winding.layout.legWidth',
        `Legs ${mm(layout.legWidth)} wide do not go side by side at the inner radius, where each has ${mm(room)}.`,
      );
  }
  const perPhase = result.coils.length / phases;
  if (perPhase % parallelPaths !== 0)
    add(
      'danger',
      'winding.parallelPaths',
      `${perPhase} coils a phase do not share out over ${parallelPaths} parallel paths: use a divisor of ${perPhase}.`,
    );
  if (!result.balanced && phases > 1) {
    const better = result.nearestBalanced.length ? ` Balanced near by: ${result.nearestBalanced.join(', ')}.` : '';
    add(
      'warning',
      layout.kind === 'concentrated' ? 'winding.layout.coils' : 'winding.phases',
      `The phases differ by up to ${(100 * result.unbalance).toFixed(0)} %.${better}`,
    );
  }
  return cautions;
}
