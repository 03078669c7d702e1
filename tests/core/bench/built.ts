import type { Design } from '../../../core/design/schema';
import type { Reading } from '../../../core/design/readings';
import type { FamilyName } from '../../../core/bench/hypotheses';
import { singleMagnetLinkage } from '../../../core/bench/single-magnet';
import { windingStage } from '../../../core/winding/stage';
import { wireStage } from '../../../core/wire/stage';
import { geometryOf, type Geometry } from './random-machines';
import { steppedDcAmps, type SteppedPhase } from './stepped-bridge';

/** What is really wrong with a machine. */
export interface Injected {
  family: FamilyName;
  /** As the hypotheses name it. */
  subject: string;
  coil?: number;
  other?: number;
  phase?: number;
  rail?: 'plus' | 'minus';
  amount?: number;
}

/** A machine as it came out, sampled over a turn of the shaft: no harmonics, no formulas of the bench. */
export interface Built {
  design: Design;
  samples: number;
  /** Of each coil over the shaft's angle, per rad/s. [V·s/rad] */
  coils: { wave: Float64Array; ohms: number; phase: number; direction: number; isOpen: boolean }[];
  leadOhms: number;
  swapped?: number;
  dead?: { phase: number; rail: 'plus' | 'minus' };
  /** Samples after which all repeats: an electrical period, or a whole turn where one magnet is unlike the others. */
  period: number;
  /** L − M of a phase. [H] */
  inductance: number;
}

/** Steps to an electrical period. */
const STEPS = 96;

/** Builds a machine with one thing wrong, its field and its wire off by the given factors. */
export function built(
  geometry: Geometry,
  wound: Design['winding'],
  fault: Injected,
  off: { field: number; resistance: number; coil: number[] },
): Built {
  const { design, shape, gap } = otherField(geometry, fault);
  const wire =
    fault.family === 'thinner-wire' || fault.family === 'thicker-wire'
      ? { ...wound.wire, conductorDiameter: wound.wire.conductorDiameter * (fault.amount ?? 1) }
      : wound.wire;
  const winding = { ...wound, wire };
  const placed = windingStage(winding, design.discs.poles);
  const wired = wireStage(winding, wire, placed);
  const p = design.discs.poles / 2;
  const samples = STEPS * p;
  const turn = (2 * Math.PI) / samples;
  const slope = (angle: number, k: number) =>
    shape.linkage[k].reduce((sum, l, h) => sum + l * shape.orders[h] * p * Math.sin(shape.orders[h] * p * angle), 0);
  const single = fault.family === 'flipped-magnet' ? singleMagnetLinkage(geometry.design, gap, shape.linkage[0][0]) : [];
  const strength = off.field * (fault.family === 'weaker-magnets' || fault.family === 'stronger-field' ? (fault.amount ?? 1) : 1);
  const coils = placed.coils.map(({ phase, direction, angle }, k) => {
    const wave = Float64Array.from({ length: samples }, (_, i) => {
      const at = i * turn - angle;
      const missing = single.reduce((sum, l, j) => sum + l * (j + 1) * Math.sin((j + 1) * at), 0);
      return winding.turns * strength * off.coil[k] * (slope(at, k) - missing);
    });
    return { wave, ohms: wired.coilResistance20 * off.resistance * off.coil[k], phase, direction: direction, isOpen: false };
  });
  const leads = wired.phaseResistance20 - wired.coilResistance20 * placed.seriesCoils;
  const linked = geometry.perTurn.map((row, i) =>
    row.reduce(
      (sum, l, j) =>
        sum + (placed.coils[j].phase === placed.coils[i].phase ? l * placed.coils[i].direction * placed.coils[j].direction : 0),
      0,
    ),
  );
  const self = linked.reduce((sum, l, i) => sum + (placed.coils[i].phase === 1 ? l : 0), 0) * winding.turns ** 2;
  const machine: Built = {
    design: { ...design, winding: wound },
    samples,
    period: single.length > 0 ? samples : STEPS,
    coils,
    leadOhms: leads * off.resistance,
    inductance: self,
  };
  return broken(machine, fault);
}

/** Faults of gap and discs are a field of their own, worked out in full. */
function otherField(geometry: Geometry, { family, amount = 0 }: Injected): Geometry {
  const { design } = geometry;
  const turned = (misalignment: number) => geometryOf({ ...design, discs: { ...design.discs, misalignment } });
  switch (family) {
    case 'wider-gap':
      return geometryOf(design, amount);
    case 'misaligned':
      return turned(amount);
    case 'like-to-like':
      return turned((2 * Math.PI) / design.discs.poles);
    default:
      return geometry;
  }
}

function broken(machine: Built, { family, coil = 1, other = 1, phase, rail, amount = 0 }: Injected): Built {
  const one = machine.coils[coil - 1];
  switch (family) {
    case 'open':
      one.isOpen = true;
      break;
    case 'shorted':
      one.wave = one.wave.map((v) => v * (1 - amount));
      one.ohms *= 1 - amount;
      break;
    case 'reversed':
      one.direction *= -1;
      break;
    case 'wrong-phase':
      one.phase = phase ?? one.phase;
      break;
    case 'exchanged': {
      const two = machine.coils[other - 1];
      [one.phase, two.phase] = [two.phase, one.phase];
      [one.direction, two.direction] = [two.direction, one.direction];
      break;
    }
    case 'swapped':
      return { ...machine, swapped: phase };
    case 'dead-diode':
      return { ...machine, dead: { phase: phase ?? 1, rail: rail ?? 'plus' } };
  }
  return machine;
}

interface Ends {
  wave: Float64Array;
  ohms: number;
}

function phaseEnds({ coils, samples, leadOhms, swapped }: Built, phase: number): Ends {
  const own = coils.filter((coil) => coil.phase === phase);
  if (own.some(({ isOpen }) => isOpen)) return { wave: new Float64Array(samples), ohms: Infinity };
  const sense = swapped === phase ? -1 : 1;
  const wave = new Float64Array(samples);
  for (const { wave: one, direction } of own) for (let i = 0; i < samples; i++) wave[i] += sense * direction * one[i];
  return { wave, ohms: own.reduce((sum, { ohms }) => sum + ohms, 0) + leadOhms };
}

const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);

/** What stands between two terminals; a closed delta carries its own current, inductance left out. */
function lineEnds(machine: Built, phase: number): Ends {
  const { winding } = machine.design;
  const all = Array.from({ length: winding.phases }, (_, j) => phaseEnds(machine, j + 1));
  const here = all[phase - 1];
  if (winding.phases === 1 || winding.connection === 'separate') return here;
  if (winding.connection === 'star') {
    const there = all[phase % winding.phases];
    const ohms = here.ohms + there.ohms;
    return { wave: Number.isFinite(ohms) ? here.wave.map((v, i) => v - there.wave[i]) : new Float64Array(machine.samples), ohms };
  }
  const rest = sum(all.filter((_, j) => j !== phase - 1).map(({ ohms }) => ohms));
  if (!Number.isFinite(rest)) return here;
  const loop = (i: number) => sum(all.map(({ wave }) => wave[i]));
  if (!Number.isFinite(here.ohms)) return { wave: here.wave.map((_, i) => -loop(i)), ohms: rest };
  return {
    wave: here.wave.map((v, i) => v - (here.ohms * loop(i)) / (here.ohms + rest)),
    ohms: (here.ohms * rest) / (here.ohms + rest),
  };
}

/** By direct sums over the samples. */
function meterShows(wave: Float64Array, speed: number, meter: Reading['meter']): number {
  const sizes = wave.map((v) => Math.abs(v) * speed);
  if (meter === 'peak') return Math.max(...sizes);
  if (meter === 'rms') return Math.sqrt(sum(Array.from(sizes, (v) => v * v)) / sizes.length);
  return ((Math.PI / (2 * Math.SQRT2)) * sum(Array.from(sizes))) / sizes.length;
}

const TEMPERATURE = 17;
const warm = 1 + 0.00393 * (TEMPERATURE - 20);

/** Fills in what the meters show on the machine, each off by chance. */
export function readOff(machine: Built, wanted: readonly Reading[], noise: () => number): Reading[] {
  return wanted.map((reading) => {
    const { on, number, speed = 0, meter = 'average' } = reading;
    const read: Reading = { ...reading, temperature: TEMPERATURE };
    if (on === 'dc') {
      const resistance = reading.loadResistance ?? 1;
      const amps = steppedDcAmps(
        phasesOf(machine),
        machine.design.rectifier.diode,
        resistance + dcCable(machine.design),
        speed,
        machine.dead,
        machine.period,
      );
      return { ...read, amps: amps * (1 + noise()), volts: amps * resistance * (1 + noise()) };
    }
    const ends =
      on === 'coil'
        ? machine.coils[number - 1].isOpen
          ? { wave: new Float64Array(machine.samples), ohms: Infinity }
          : machine.coils[number - 1]
        : on === 'phase'
          ? phaseEnds(machine, number)
          : lineEnds(machine, number);
    if ('ohms' in reading) read.ohms = Number.isFinite(ends.ohms) ? ends.ohms * warm * (1 + noise()) : 1e6;
    if ('volts' in reading) read.volts = Number.isFinite(ends.ohms) ? meterShows(ends.wave, speed, meter) * (1 + noise()) : 0;
    return read;
  });
}

/** There and back on the DC side; the random machines have their cable there. Copper at the room's temperature. */
const dcCable = ({ cable, surroundings }: Design) =>
  cable.side === 'dc' ? ((2 * cable.length) / cable.section / 58e6) * (1 + 0.00393 * (surroundings.airTemperature - 20)) : 0;

function phasesOf(machine: Built): SteppedPhase[] {
  const { phases } = machine.design.winding;
  return Array.from({ length: phases }, (_, j) => {
    const { wave, ohms } = phaseEnds(machine, j + 1);
    return { wave, ohms: ohms * warm, inductance: machine.inductance };
  });
}
