import type { Caution } from '../problem';
import type { WindingSection } from '../winding/section';
import type { PhaseEmf } from './stage';
import { rms } from './waveform';
import { zeroSequence } from './zero-sequence';

/** Below such a share of the phase's EMF a stray EMF round a closed loop is within what hand winding gives anyway. */
const STRAY = 0.01;
const GRAVE = 0.1;
/** Beyond such a share of the volts misaligned discs are worth setting right. */
const COSTLY = 0.02;
const WORTH_TELLING = 0.0005;
const AT_1000_RPM = (1000 * 2 * Math.PI) / 60;

/** At 20 °C. [Ω] */
export interface LoopResistances {
  path: number;
  phase: number;
}

/**
 * EMFs that drive currents round closed loops of the winding itself, loaded or not. Amperes round parallel paths are those that resistance alone allows:
 * inductance takes some off again.
 */
export function emfCautions(
  winding: WindingSection,
  phaseEmf: PhaseEmf[],
  departures: number[],
  circulating?: number,
  ohms?: LoopResistances,
): Caution[] {
  return [
    ...pathCautions(winding, rms(phaseEmf[0]), departures, ohms),
    ...deltaCautions(winding, phaseEmf, circulating, ohms),
    ...stackCautions(winding, phaseEmf),
  ];
}

function pathCautions({ parallelPaths }: WindingSection, phase: number, departures: number[], ohms?: LoopResistances): Caution[] {
  const greatest = Math.max(...departures);
  if (parallelPaths === 1 || greatest <= STRAY * phase) return [];
  const meanSquare = departures.reduce((sum, d) => sum + d * d, 0);
  return [
    {
      severity: greatest > GRAVE * phase ? 'danger' : 'warning',
      where: 'winding.parallelPaths',
      message:
        `The parallel paths of a phase are not alike: one departs from their mean by ${volts(greatest)}, ` +
        `${driven(greatest, ohms?.path, meanSquare)} even with nothing connected. ` +
        `Their coils stand at different angles to the magnets; use a number of paths that gives each the same set.`,
    },
  ];
}

function deltaCautions({ connection, phases }: WindingSection, phaseEmf: PhaseEmf[], amperes?: number, ohms?: LoopResistances): Caution[] {
  if (connection !== 'delta' || phases === 1) return [];
  const share = rms(zeroSequence(phaseEmf));
  if (share <= STRAY * rms(phaseEmf[0])) return [];
  return [
    {
      severity: share > GRAVE * rms(phaseEmf[0]) ? 'warning' : 'note',
      where: 'winding.connection',
      message:
        `Round the closed delta ${volts(phases * share)} remain (third harmonics, or phases that differ), ` +
        `${amperes !== undefined && ohms ? `which drives ${short(amperes)} A and heats the winding with ${short(phases * ohms.phase * amperes ** 2)} W` : 'which drives a current'} even with nothing connected. In star they have no path.`,
    },
  ];
}

/** A stack's rings lie at different distances from the magnets. */
function stackCautions({ layout }: WindingSection, phaseEmf: PhaseEmf[]): Caution[] {
  if (layout.kind !== 'serpentine' || layout.placement !== 'stacked') return [];
  const sizes = phaseEmf.map(rms);
  const [least, greatest] = [Math.min(...sizes), Math.max(...sizes)];
  if (greatest - least <= 3 * STRAY * least) return [];
  return [
    {
      severity: greatest - least > GRAVE * least ? 'warning' : 'note',
      where: 'winding.layout.placement',
      message:
        `Rings nearer the magnets have more volts: ${volts(greatest)} against ${volts(least)}. ` +
        `The weaker phase carries less; thinner copper or interleaved legs even them out.`,
    },
  ];
}

/** Volts that turning one disc against the other costs: phase EMF as it is and as discs in line would give it. [V·s/rad] */
export function misalignmentCautions(angle: number, polePairs: number, phase: number, inLine: number): Caution[] {
  const lost = inLine > 0 ? 1 - phase / inLine : 0;
  if (lost < WORTH_TELLING) return [];
  const degrees = (radians: number) => `${short((radians * 180) / Math.PI)}°`;
  return [
    {
      severity: lost > COSTLY ? 'warning' : 'note',
      where: 'discs.misalignment',
      message:
        `The discs stand ${degrees(angle)} off each other, ${degrees(polePairs * angle)} electrical. That costs each phase ${volts(inLine - phase)}, ` +
        `${short(100 * lost)} % of what they give in line. Turn one disc back until their magnets face each other.`,
    },
  ];
}

/** Two digits, never as a power of ten. */
const short = (value: number) => String(Number(value.toPrecision(2)));
const volts = (perSpeed: number) => `${short(perSpeed * AT_1000_RPM)} V at 1000 rpm`;

/** What an EMF per branch drives through the branch's resistance, and the loss of all branches. */
function driven(perSpeed: number, resistance: number | undefined, sumOfSquares: number): string {
  if (!resistance) return 'which drives a current round them';
  const amperes = (perSpeed * AT_1000_RPM) / resistance;
  const watts = (sumOfSquares * AT_1000_RPM ** 2) / resistance;
  return `which drives up to ${short(amperes)} A and heats the winding with ${short(watts)} W`;
}
