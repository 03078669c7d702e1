import { benchMachine } from '../../../core/bench/machine';
import { families, type FamilyName } from '../../../core/bench/hypotheses';
import { questionOf } from '../../../core/bench/predict';
import { diagnosis, type Diagnosis } from '../../../core/bench/rank';
import { measurementsOf } from '../../../core/bench/readings';
import type { Reading } from '../../../core/design/readings';
import { createRandom } from '../../../core/numeric/random';
import { built, readOff, type Injected } from './built';
import { randomGeometry, randomWinding, woundOn, type Geometry } from './random-machines';

export interface Trial {
  fault: Injected;
  /** What was read: everything, or the terminals alone. */
  isFull: boolean;
  said: Diagnosis;
  /** Said of the same machine with meters that make no error; of a healthy one, the same as said. */
  exact: Diagnosis;
}

const NOISE = 0.02;
const letter = (phase: number) => String.fromCharCode(64 + phase);

/** Machines with one fault each (or none), read with meters of 2 %, and what the bench says. */
export function trials(count: number, seed: number, kinds: readonly FamilyName[]): Trial[] {
  const chance = createRandom(seed);
  const [random, normal] = [() => chance.uniform(), () => chance.normal()];
  const geometries = Array.from({ length: Math.max(1, Math.round(count / 14)) }, () => randomGeometry(random));
  return Array.from({ length: count }, (_, i) => {
    const geometry = geometries[i % geometries.length];
    return trial(geometry, kinds, random, normal);
  });
}

function trial(geometry: Geometry, kinds: readonly FamilyName[], random: () => number, normal: () => number): Trial {
  const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)];
  const { phases, layout } = geometry.design.winding;
  const coils = layout.kind === 'concentrated' ? layout.coils : phases;
  const possible = kinds.filter((kind) => phases > 1 || !['wrong-phase', 'exchanged', 'swapped'].includes(kind));
  const family = pick(possible);
  const isFull = random() < 0.7;
  const winding = randomWinding(random);
  if (family === 'dead-diode') winding.connection = 'star';
  const { design, results } = woundOn(geometry, winding);
  const machine = benchMachine(design, results);
  const fault = injected(family);

  const delta = design.winding.connection === 'delta' && phases > 1;
  const speed = 8 + 14 * random();
  const hertz = (speed * machine.polePairs) / (2 * Math.PI);
  const meter = pick(['average', 'rms'] as const);
  const turned = { speed, hertz, meter, volts: 0, ohms: 0 };
  const list = (on: Reading['on'], many: number): Reading[] =>
    Array.from({ length: many }, (_, k) => ({ label: '', on, number: k + 1, ...turned }));
  const wanted: Reading[] = [
    ...(isFull
      ? [...list('coil', coils), { label: '', on: 'coil' as const, number: 1, speed, hertz, meter: 'peak' as const, volts: 0 }]
      : []),
    ...list('phase', phases),
    ...(phases > 1 ? list('line', phases) : []),
    ...(delta
      ? []
      : [
          {
            label: '',
            on: 'dc' as const,
            number: 1,
            speed: 2 * speed,
            hertz: 2 * hertz,
            load: 'resistor' as const,
            loadResistance: 4 + 16 * random(),
          },
        ]),
  ];
  const off = {
    field: 1 + 0.02 * normal(),
    resistance: 1 + 0.02 * normal(),
    coil: Array.from({ length: coils }, () => 1 + 0.005 * normal()),
  };
  const exactly = { field: 1, resistance: 1, coil: off.coil.map(() => 1) };
  const say = (how: typeof off, noise: () => number) => {
    const bench = readOff(built(geometry, design.winding, fault, how), wanted, noise);
    const { measurements } = measurementsOf({ ...design, bench });
    return diagnosis(
      machine,
      measurements.map((m) => questionOf(machine, m)),
    );
  };
  const said = say(off, () => NOISE * normal());
  return { fault, isFull, said, exact: family === 'healthy' ? said : say(exactly, () => 0) };

  function injected(kind: FamilyName): Injected {
    const coil = 1 + Math.floor(random() * coils);
    const phase = 1 + Math.floor(random() * phases);
    const own = results.stages.winding.coils;
    const elsewhere = own.filter((c) => c.phase !== own[coil - 1].phase);
    switch (kind) {
      case 'open':
      case 'reversed':
        return { family: kind, subject: `${coil}`, coil };
      case 'shorted':
        return { family: kind, subject: `${coil}`, coil, amount: 0.06 + 0.5 * random() };
      case 'wrong-phase': {
        const to = pick(elsewhere).phase;
        return { family: kind, subject: `${coil} in ${letter(to)}`, coil, phase: to };
      }
      case 'exchanged': {
        const other = pick(elsewhere).coil;
        return { family: kind, subject: `${Math.min(coil, other)} and ${Math.max(coil, other)}`, coil, other };
      }
      case 'swapped':
        return { family: kind, subject: letter(phase), phase };
      case 'dead-diode': {
        const rail = pick(['plus', 'minus'] as const);
        // A single phase has two diodes at each end: the one at its beginning is taken.
        return { family: kind, subject: phases > 1 ? `${letter(phase)} ${rail}` : `${letter(phase)}1 ${rail}`, phase, rail };
      }
      case 'misaligned':
        return { family: kind, subject: '', amount: ((2 * Math.PI) / design.discs.poles) * (0.15 + 0.6 * random()) };
      case 'thinner-wire':
        return { family: kind, subject: '', amount: 0.7 + 0.22 * random() };
      case 'wider-gap':
        return { family: kind, subject: '', amount: results.gap.length * (0.15 + 0.6 * random()) };
      case 'weaker-magnets':
        return { family: kind, subject: '', amount: 0.6 + 0.25 * random() };
      case 'stronger-field':
        return { family: kind, subject: '', amount: 1.15 + 0.3 * random() };
      case 'thicker-wire':
        return { family: kind, subject: '', amount: 1.08 + 0.2 * random() };
      default:
        return { family: kind, subject: '' };
    }
  }
}

export const faultKinds = (Object.keys(families) as FamilyName[]).filter((name) => name !== 'healthy');

/** Whether a suspect holds the injected fault. */
export const isNamed = ({ family, subject }: Injected, suspect: Diagnosis['suspects'][number] | undefined) =>
  suspect?.explanations.some(({ hypothesis }) => hypothesis.family === family && hypothesis.subject === subject) ?? false;
