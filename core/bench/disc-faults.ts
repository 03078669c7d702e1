import type { PhaseEmf } from '../emf/stage';
import { coilEmf } from '../emf/waveform';
import type { BenchMachine } from './machine';
import type { Fault } from './hypotheses';

const eachEmf = (machine: BenchMachine, change: (emf: PhaseEmf, coil: number) => PhaseEmf): BenchMachine => ({
  ...machine,
  coils: machine.coils.map((coil, i) => ({ ...coil, emf: change(coil.emf, i) })),
});

const scaled = (machine: BenchMachine, factorOf: (harmonic: number) => number) =>
  eachEmf(machine, ({ cos, sin }) => ({ cos: cos.map((c, h) => c * factorOf(h)), sin: sin.map((s, h) => s * factorOf(h)) }));

/**
 * Two discs, each turned by half an angle against the other: every harmonic is the sum of two that stand apart by its order times that angle.
 *
 *   Z → Z · (cos φ − i (u − l) sin φ), φ = n p δ/2, u and l the discs' shares at the coil's height; on the mid-plane cos φ alone
 */
export function turnedDiscs(machine: BenchMachine, angle: number): BenchMachine {
  return eachEmf(machine, ({ cos, sin }, i) => {
    const upper = machine.plan.upperShare(machine.coils[i].height);
    const real = machine.orders.map((order) => Math.cos((order * angle) / 2));
    const imaginary = machine.orders.map((order, h) => -(2 * upper[h] - 1) * Math.sin((order * angle) / 2));
    // The wave is the real part of (cos − i sin) e^{inα}.
    return {
      cos: cos.map((c, h) => c * real[h] + sin[h] * imaginary[h]),
      sin: sin.map((s, h) => s * real[h] - cos[h] * imaginary[h]),
    };
  });
}

export function misalignedDiscs(machine: BenchMachine): Fault[] {
  const pitch = (2 * Math.PI) / machine.plan.poles;
  if (machine.plan.arrangement !== 'facing-pair') return [];
  return [
    {
      words: 'the two discs are turned against each other',
      subject: '',
      check:
        'Lay a straight edge from a magnet’s side on one disc to its partner on the other, or sight along the axle. Keep fingers clear: the discs pull.',
      freedom: { label: 'Angle', unit: 'angle', from: 0.02 * pitch, to: 0.95 * pitch, starts: [0.3 * pitch, 0.7 * pitch] },
      build: (angle) => turnedDiscs(machine, angle),
    },
  ];
}

export function likeToLikeDiscs(machine: BenchMachine): Fault[] {
  if (machine.plan.arrangement !== 'facing-pair') return [];
  return [
    {
      words: 'the discs stand like pole to like pole',
      subject: '',
      check: 'The discs push each other away instead of pulling. Turn one on by one magnet.',
      build: () => turnedDiscs(machine, (2 * Math.PI) / machine.plan.poles),
    },
  ];
}

/** Harmonics of one magnet weaker than this share of the strongest move no reading. */
const HEARD = 2e-3;

/** One magnet of one disc the wrong way up: twice its own share is missing from every coil's linkage as it passes, once a turn. */
export function flippedMagnets(machine: BenchMachine): Fault[] {
  const { plan } = machine;
  const share = plan.arrangement === 'facing-pair' ? 1 / 2 : 1;
  return [
    {
      words: 'a magnet is in upside down',
      subject: '',
      check: 'Go round each disc with a compass or a small magnet: poles must alternate all the way.',
      build: () => {
        const single = plan.singleMagnet();
        if (single.length === 0) return scaled(machine, () => 1 - (2 * share) / plan.poles);
        const sizes = single.map((l, i) => Math.abs(l) * (i + 1));
        const least = HEARD * Math.max(...sizes);
        const heard = sizes.flatMap((size, i) => (size > least ? [i + 1] : []));
        const orders = [...new Set([...heard, ...machine.orders])].sort((a, b) => a - b);
        const lost = orders.map((order) => -2 * share * (single[order - 1] ?? 0));
        const added = eachEmf(machine, (emf, coil) => {
          const missing = coilEmf(lost, orders, 1, plan.coilAngles[coil], plan.turns);
          const sum = (whole: readonly number[], part: readonly number[]) =>
            orders.map((order, h) => (whole[machine.orders.indexOf(order)] ?? 0) + part[h]);
          return { cos: sum(emf.cos, missing.cos), sin: sum(emf.sin, missing.sin) };
        });
        return { ...added, orders };
      },
    },
  ];
}

export function widerGap(machine: BenchMachine): Fault[] {
  const { gapLength, widened } = machine.plan;
  return [
    {
      words: 'the gap is wider than planned',
      subject: '',
      check: 'Measure from magnet face to magnet face at three places with a wooden or brass gauge.',
      freedom: { label: 'Wider by', unit: 'length', from: 0.02 * gapLength, to: 3 * gapLength, starts: [0.2 * gapLength, gapLength] },
      build: (more) => {
        const factors = widened(more);
        return scaled(machine, (h) => factors[h]);
      },
    },
  ];
}

export function weakerMagnets(machine: BenchMachine): Fault[] {
  return [
    {
      words: 'the magnets are weaker than planned',
      subject: '',
      check: 'Weigh one against the seller’s figure for its grade, or hold a gaussmeter on its face; ask whether they have been hot.',
      freedom: { label: 'Strength, of the plan’s', unit: 'percent', from: 0.2, to: 0.97, starts: [0.85] },
      build: (strength) => scaled(machine, () => strength),
    },
  ];
}

/** No harm in itself, but the plan no longer holds: volts, charging and run-away all rise with it. */
export function strongerField(machine: BenchMachine): Fault[] {
  return [
    {
      words: 'the field is stronger than planned',
      subject: '',
      check:
        'Measure the gap at three places with a wooden or brass gauge; ask which grade of magnet came. Then use the measured machine: run-away volts rise too.',
      freedom: { label: 'Strength, of the plan’s', unit: 'percent', from: 1.03, to: 1.8, starts: [1.15] },
      build: (strength) => scaled(machine, () => strength),
    },
  ];
}
