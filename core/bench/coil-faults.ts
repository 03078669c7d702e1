import type { BenchCoil, BenchMachine } from './machine';
import type { Fault, Freedom } from './hypotheses';

const letter = (phase: number) => String.fromCharCode(64 + phase);
const numbers = ({ coils }: BenchMachine) => coils.map((_, i) => i + 1);

const withCoil = (machine: BenchMachine, number: number, change: (coil: BenchCoil) => Partial<BenchCoil>): BenchMachine => ({
  ...machine,
  coils: machine.coils.map((coil, i) => (i + 1 === number ? { ...coil, ...change(coil) } : coil)),
});

/** Coils that are not alone in their path: one taken out of it leaves something. */
const inCompany = (machine: BenchMachine) =>
  numbers(machine).filter((k) => {
    const { phase, path } = machine.coils[k - 1];
    return machine.coils.filter((coil) => coil.phase === phase && coil.path === path).length > 1;
  });

const share: Freedom = { label: 'Share of the turns', unit: 'percent', from: 0.02, to: 1, starts: [0.3] };

export function openCoils(machine: BenchMachine): Fault[] {
  return numbers(machine).map((k) => ({
    words: `coil ${k} is open`,
    subject: `${k}`,
    check: `Ohms across coil ${k} by itself: no end of them. Look for a nicked wire or enamel left under a joint.`,
    build: () => withCoil(machine, k, () => ({ isOpen: true })),
  }));
}

/** A short across part of a coil: those turns add neither volts nor ohms. The current they carry is left out; it makes that coil hot and heavy to turn. */
export function shortedTurns(machine: BenchMachine): Fault[] {
  return numbers(machine).map((k) => ({
    words: `coil ${k} has shorted or missing turns`,
    subject: `${k}`,
    check: `Turn the shaft with coil ${k} open: shorted turns drag and warm it; with turns missing it spins freely. Weigh it against a good one.`,
    freedom: share,
    build: (lost) =>
      withCoil(machine, k, ({ emf, resistance20 }) => ({
        emf: { cos: emf.cos.map((c) => c * (1 - lost)), sin: emf.sin.map((s) => s * (1 - lost)) },
        resistance20: resistance20 * (1 - lost),
      })),
  }));
}

export function reversedCoils(machine: BenchMachine): Fault[] {
  return inCompany(machine).map((k) => ({
    words: `coil ${k} is joined the wrong way round`,
    subject: `${k}`,
    check: `Follow start and finish of coil ${k} against the connection table.`,
    build: () => withCoil(machine, k, ({ direction }) => ({ direction: direction === 1 ? -1 : 1 })),
  }));
}

export function coilsInWrongPhase(machine: BenchMachine): Fault[] {
  return inCompany(machine).flatMap((k) =>
    Array.from({ length: machine.phases }, (_, j) => j + 1)
      .filter((phase) => phase !== machine.coils[k - 1].phase)
      .map((phase) => ({
        words: `coil ${k} is joined into phase ${letter(phase)} instead of ${letter(machine.coils[k - 1].phase)}`,
        subject: `${k} in ${letter(phase)}`,
        check: `With the star point or corners open, ohms from each end of coil ${k} to the terminals tell whose it is.`,
        build: () => withCoil(machine, k, () => ({ phase })),
      })),
  );
}

export function exchangedCoils(machine: BenchMachine): Fault[] {
  const { coils } = machine;
  return numbers(machine).flatMap((k) =>
    numbers(machine)
      .filter((l) => l > k && coils[l - 1].phase !== coils[k - 1].phase)
      .map((l) => {
        const put = (from: BenchCoil, at: BenchCoil): BenchCoil => ({ ...from, phase: at.phase, path: at.path, direction: at.direction });
        return {
          words: `coils ${k} and ${l} stand in each other’s phase`,
          subject: `${k} and ${l}`,
          check: `With the star point or corners open, ohms from coils ${k} and ${l} to the terminals tell whose they are.`,
          build: () => ({
            ...machine,
            coils: coils.map((coil, i) => (i + 1 === k ? put(coil, coils[l - 1]) : i + 1 === l ? put(coil, coils[k - 1]) : coil)),
          }),
        };
      }),
  );
}

export function swappedPhases(machine: BenchMachine): Fault[] {
  if (machine.phases === 1) return [];
  return Array.from({ length: machine.phases }, (_, j) => ({
    words: `phase ${letter(j + 1)} is joined finish for start`,
    subject: letter(j + 1),
    check: `Exchange the two ends of phase ${letter(j + 1)} and read all lines again.${machine.connection === 'delta' ? ' Do not turn a delta so joined: a current of its own runs round it.' : ''}`,
    build: () => ({ ...machine, swapped: [j + 1] }),
  }));
}

export function deadDiodes(machine: BenchMachine): Fault[] {
  const ends = machine.connection === 'separate' ? (['begin', 'end'] as const) : (['begin'] as const);
  return Array.from({ length: machine.phases }, (_, j) => j + 1).flatMap((phase) =>
    ends.flatMap((end) =>
      (['plus', 'minus'] as const).map((rail) => ({
        words: `the diode from phase ${letter(phase)}${machine.connection === 'separate' ? (end === 'begin' ? '1' : '2') : ''} to ${rail} does not conduct`,
        subject: `${letter(phase)}${machine.connection === 'separate' ? (end === 'begin' ? '1' : '2') : ''} ${rail}`,
        check: 'Machine at rest, load off, bridge free of the winding: each diode in turn with the meter’s diode test, both ways.',
        build: () => ({ ...machine, dead: [{ phase, end, rail }] }),
      })),
    ),
  );
}

/** Other wire of the same length, coils and leads. */
const otherWire = (machine: BenchMachine, words: string, range: Pick<Freedom, 'from' | 'to' | 'starts'>): Fault => ({
  words,
  subject: '',
  check: 'Burn the enamel off an end and measure the metal with a micrometer; count the strands.',
  freedom: { label: 'Diameter, of the plan’s', unit: 'percent', ...range },
  build: (diameter) => ({
    ...machine,
    leadResistance20: machine.leadResistance20 / diameter ** 2,
    coils: machine.coils.map((coil) => ({ ...coil, resistance20: coil.resistance20 / diameter ** 2 })),
  }),
});

export function thinnerWire(machine: BenchMachine): Fault[] {
  return [otherWire(machine, 'the wire is thinner than planned', { from: 0.4, to: 0.985, starts: [0.9] })];
}

export function thickerWire(machine: BenchMachine): Fault[] {
  return [otherWire(machine, 'the wire is thicker than planned', { from: 1.015, to: 1.6, starts: [1.1] })];
}
