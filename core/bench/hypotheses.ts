import type { UnitKind } from '../quantities';
import {
  coilsInWrongPhase,
  deadDiodes,
  exchangedCoils,
  openCoils,
  reversedCoils,
  shortedTurns,
  swappedPhases,
  thickerWire,
  thinnerWire,
} from './coil-faults';
import { flippedMagnets, likeToLikeDiscs, misalignedDiscs, strongerField, weakerMagnets, widerGap } from './disc-faults';
import type { BenchMachine } from './machine';

/** What of a fault the readings have to settle. */
export interface Freedom {
  label: string;
  unit: UnitKind;
  from: number;
  to: number;
  /** Where to begin looking. */
  starts: number[];
}

/** One thing that may be wrong, as something the model can work out. */
export interface Fault {
  /** As in "coil 3 is open". */
  words: string;
  /** Which coil, phase or diode, as in "3"; empty where the whole machine is meant. */
  subject: string;
  /** How to see it without more readings. */
  check: string;
  freedom?: Freedom;
  build: (amount: number) => BenchMachine;
}

interface Family {
  title: string;
  faults: (machine: BenchMachine) => Fault[];
}

/** The registry of hypotheses: a new one is a function that makes it and a line here. */
export const families = {
  healthy: {
    title: 'As planned',
    faults: (machine) => [{ words: 'the machine is as planned', subject: '', check: '', build: () => machine }],
  },
  open: { title: 'Open coil', faults: openCoils },
  shorted: { title: 'Shorted or missing turns', faults: shortedTurns },
  reversed: { title: 'Coil reversed', faults: reversedCoils },
  'wrong-phase': { title: 'Coil in the wrong phase', faults: coilsInWrongPhase },
  exchanged: { title: 'Coils exchanged', faults: exchangedCoils },
  swapped: { title: 'Phase joined finish for start', faults: swappedPhases },
  'dead-diode': { title: 'Dead diode', faults: deadDiodes },
  'flipped-magnet': { title: 'Magnet upside down', faults: flippedMagnets },
  misaligned: { title: 'Discs turned against each other', faults: misalignedDiscs },
  'like-to-like': { title: 'Discs like to like', faults: likeToLikeDiscs },
  'thinner-wire': { title: 'Wire too thin', faults: thinnerWire },
  'thicker-wire': { title: 'Wire too thick', faults: thickerWire },
  'wider-gap': { title: 'Gap too wide', faults: widerGap },
  'weaker-magnets': { title: 'Magnets too weak', faults: weakerMagnets },
  'stronger-field': { title: 'Field too strong', faults: strongerField },
} satisfies Record<string, Family>;

export type FamilyName = keyof typeof families;

export interface Hypothesis extends Fault {
  family: FamilyName;
  /** Share of belief before any reading. */
  prior: number;
}

/** Half of all machines that come to the bench are as planned; the rest have any kind of fault alike. Common practice, no source. */
const HEALTHY_PRIOR = 0.5;

/** A fault without freedom makes one machine, however often it is asked for. */
function once(build: Fault['build']): Fault['build'] {
  let made: BenchMachine | undefined;
  return () => (made ??= build(0));
}

/** Everything that may be so with a machine. */
export function hypothesesOf(machine: BenchMachine): Hypothesis[] {
  const named = Object.entries<Family>(families).map(([family, { faults }]) => ({ family: family as FamilyName, faults: faults(machine) }));
  const kinds = named.filter(({ family, faults }) => family !== 'healthy' && faults.length > 0).length;
  return named.flatMap(({ family, faults }) =>
    faults.map((fault) => ({
      ...fault,
      ...(fault.freedom ? {} : { build: once(fault.build) }),
      family,
      prior: family === 'healthy' ? HEALTHY_PRIOR : (1 - HEALTHY_PRIOR) / kinds / faults.length,
    })),
  );
}
