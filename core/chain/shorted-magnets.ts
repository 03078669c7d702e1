import type { Design } from '../design/schema';
import type { EmfResult } from '../emf/stage';
import { poleAmpereTurns, shortedPeak } from '../emf/short-circuit';
import { harmonicPeak } from '../emf/waveform';
import type { FieldResult } from '../field/stage';
import { armatureField, KNEE } from '../magnets/demagnetization';
import type { MagnetsResult } from '../magnets/stage';
import type { Caution } from '../problem';
import type { Plant } from './operating-point';

/**
 * Whether the magnets stand a short across the terminals at run-away, cold copper, when the current is greatest: a warning where it goes on, a note where
 * only its first crest passes the knee. Nothing is said where they lose strength without it.
 */
export function shortedMagnets(
  { magnets, discs, winding }: Pick<Design, 'magnets' | 'discs' | 'winding'>,
  plant: Plant,
  emf: EmfResult,
  field: FieldResult,
  { intrinsicCoercivity }: MagnetsResult,
  runaway: number,
): Caution[] {
  if (intrinsicCoercivity === undefined) return [];
  const [own, neighbour = 0] = emf.inductance[0];
  const reactance = emf.polePairs * runaway * (own - neighbour);
  const { resistance } = plant.sourceAt(plant.airTemperature);
  const peak = harmonicPeak(emf.phaseEmf[0], 0) * runaway;
  const height = (discs.arrangement === 'facing-pair' ? 2 : 1) * magnets.shape.axial;
  const armature = (amps: number) => {
    const ampereTurns = poleAmpereTurns(winding.layout, winding.phases, winding.turns, amps / winding.parallelPaths);
    return armatureField(ampereTurns, field.gapLength, height, magnets.recoilPermeability);
  };
  const knee = KNEE * intrinsicCoercivity;
  const crest = shortedPeak(peak, resistance, reactance);
  const passes = (amps: number) => field.demagnetizingField + armature(amps) > knee;
  if (field.demagnetizingField > knee || !passes(crest)) return [];
  return [
    {
      severity: passes(peak / Math.hypot(resistance, reactance)) ? 'warning' : 'note',
      where: 'magnets.intrinsicCoercivity',
      message:
        `Shorted at ${((runaway * 60) / (2 * Math.PI)).toFixed(0)} rpm, its speed let go in a gust, the winding carries for an instant up to ${Number(crest.toPrecision(2))} A, which can put ` +
        `${kilo(armature(crest))} on to the ${kilo(Math.max(0, field.demagnetizingField))} that the magnets stand anyway, past their knee at ${kilo(knee)}: they may lose ` +
        'strength for good. Never short it at speed, keep the magnets cooler, or take a grade of higher coercivity.',
    },
  ];
}

const kilo = (fieldStrength: number) => `${(fieldStrength / 1000).toFixed(0)} kA/m`;
