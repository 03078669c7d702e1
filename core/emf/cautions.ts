import type { Caution } from '../problem';
import type { WindingSection } from '../winding/section';
import type { PhaseEmf } from './stage';
import { combined, rms } from './waveform';

/** Below such a share of the phase's EMF a stray EMF round a closed loop is within what hand winding gives anyway. */
const STRAY = 0.01;

/** EMFs that drive currents round closed loops of the winding itself, loaded or not. */
export function emfCautions({ connection, phases, parallelPaths }: WindingSection, phaseEmf: PhaseEmf[], circulating: number): Caution[] {
  const cautions: Caution[] = [];
  const at1000rpm = (1000 * 2 * Math.PI) / 60;
  const volts = (perSpeed: number) => `${(perSpeed * at1000rpm).toPrecision(2)} V at 1000 rpm`;
  const phase = rms(phaseEmf[0]);
  if (parallelPaths > 1 && circulating > STRAY * phase)
    cautions.push({
      severity: circulating > 0.1 * phase ? 'danger' : 'warning',
      where: 'winding.parallelPaths',
      message:
        `The parallel paths of a phase differ by ${volts(circulating)}, which drives a current round them even with nothing connected. ` +
        `Their coils stand at different angles to the magnets; use a number of paths that gives each the same set.`,
    });
  if (connection === 'delta' && phases > 1) {
    const round = rms(
      combined(
        phaseEmf,
        phaseEmf.map(() => 1),
      ),
    );
    if (round > STRAY * phase)
      cautions.push({
        severity: round > 0.1 * phase ? 'warning' : 'note',
        where: 'winding.connection',
        message: `Round the closed delta ${volts(round)} remain (third harmonics, or phases that differ), which drive a current even with nothing connected. Star has none.`,
      });
  }
  return cautions;
}
