import { OPEN_OHMS } from '../constants';
import type { PhaseEmf } from '../emf/stage';
import { combined } from '../emf/waveform';
import type { BenchCoil, BenchMachine } from './machine';

/** Two terminals: an EMF behind a resistance; infinite where nothing connects them. [V·s/rad, Ω at 20 °C] */
export interface Branch {
  emf: PhaseEmf;
  resistance20: number;
}

/** Where an AC meter or an ohmmeter stands. */
export type Place =
  | { on: 'coil'; coil: number }
  | { on: 'run'; from: number; to: number }
  | { on: 'phase'; phase: number }
  | { on: 'line'; phase: number };

const nothing = (orders: readonly number[]): PhaseEmf => ({ cos: orders.map(() => 0), sin: orders.map(() => 0) });

function inSeries(coils: readonly BenchCoil[], orders: readonly number[]): Branch {
  if (coils.length === 0 || coils.some(({ isOpen }) => isOpen)) return { emf: nothing(orders), resistance20: Infinity };
  return {
    emf: combined(
      coils.map(({ emf }) => emf),
      coils.map(({ direction }) => direction),
    ),
    resistance20: coils.reduce((sum, { resistance20 }) => sum + resistance20, 0),
  };
}

/**
 * A phase from its beginning to its end, leads counted.
 *
 * @param machine  Machine. [-]
 * @param phase    From 1. [-]
 * @returns        EMF and resistance; paths side by side share by their conductances. [V·s/rad, Ω]
 *
 * Omits     inductance, which on the bench is small beside resistance.
 * Source    Millman's theorem.
 * Checked   tests/core/bench/circuit.test.ts
 */
export function phaseBranch(machine: BenchMachine, phase: number): Branch {
  const { coils, orders } = machine;
  const own = coils.filter((coil) => coil.phase === phase);
  const paths = [...new Set(own.map(({ path }) => path))]
    .map((path) =>
      inSeries(
        own.filter((coil) => coil.path === path),
        orders,
      ),
    )
    .filter(({ resistance20 }) => Number.isFinite(resistance20));
  if (paths.length === 0) return { emf: nothing(orders), resistance20: Infinity };
  const conductances = paths.map(({ resistance20 }) => 1 / resistance20);
  const sum = conductances.reduce((a, b) => a + b, 0);
  const sense = machine.swapped.includes(phase) ? -1 : 1;
  return {
    emf: combined(
      paths.map(({ emf }) => emf),
      conductances.map((g) => (sense * g) / sum),
    ),
    resistance20: 1 / sum + machine.leadResistance20,
  };
}

/**
 * What stands between the two places of a meter, nothing else connected.
 *
 * @param machine  Machine. [-]
 * @param place    Coils and runs of coils before they are joined further; in delta a phase with its corners open. [-]
 * @returns        EMF and resistance. [V·s/rad, Ω]
 *
 * Source    Kirchhoff's laws; in a closed delta v_j = e_j − R_j Σe / ΣR.
 * Checked   tests/core/bench/circuit.test.ts
 */
export function branchAt(machine: BenchMachine, place: Place): Branch {
  switch (place.on) {
    case 'coil': {
      const { emf, resistance20, isOpen } = machine.coils[place.coil - 1];
      return isOpen ? { emf: nothing(machine.orders), resistance20: Infinity } : { emf, resistance20 };
    }
    case 'run':
      return inSeries(runOf(machine, place.from, place.to), machine.orders);
    case 'phase':
      return phaseBranch(machine, place.phase);
    case 'line':
      return lineBranch(machine, place.phase);
  }
}

/** Coils between two of the same path, both counted; none where they are not of one path. */
export function runOf({ coils }: BenchMachine, from: number, to: number): BenchCoil[] {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const first = coils[low - 1];
  const run = coils.filter((coil, i) => i + 1 >= low && i + 1 <= high && coil.phase === first.phase && coil.path === first.path);
  return run.includes(coils[high - 1]) ? run : [];
}

function lineBranch(machine: BenchMachine, phase: number): Branch {
  const { phases, connection, orders } = machine;
  const here = phaseBranch(machine, phase);
  if (connection === 'separate') return here;
  if (connection === 'star') {
    const there = phaseBranch(machine, (phase % phases) + 1);
    const resistance20 = here.resistance20 + there.resistance20;
    return { emf: Number.isFinite(resistance20) ? combined([here.emf, there.emf], [1, -1]) : nothing(orders), resistance20 };
  }
  const all = Array.from({ length: phases }, (_, j) => phaseBranch(machine, j + 1));
  const others = all.filter((_, j) => j + 1 !== phase);
  const rest = others.reduce((sum, { resistance20 }) => sum + resistance20, 0);
  if (!Number.isFinite(here.resistance20)) {
    const emf = Number.isFinite(rest)
      ? combined(
          others.map(({ emf }) => emf),
          others.map(() => -1),
        )
      : nothing(orders);
    return { emf, resistance20: rest };
  }
  if (!Number.isFinite(rest)) return here;
  const share = here.resistance20 / (here.resistance20 + rest);
  return {
    emf: combined(
      all.map(({ emf }) => emf),
      all.map((_, j) => (j + 1 === phase ? 1 : 0) - share),
    ),
    resistance20: (here.resistance20 * rest) / (here.resistance20 + rest),
  };
}

/** An open circuit counts as so many times what was planned: far off, and still a number. */
const OPEN_COUNTS = 20;

/** Ohms as they are compared: whatever shows no end of ohms counts alike. */
export const comparedOhms = (ohms: number, planned: number): number =>
  ohms >= OPEN_OHMS ? OPEN_COUNTS * planned : Math.min(ohms, OPEN_COUNTS * planned);
