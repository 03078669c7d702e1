import { OPEN_OHMS } from '../constants';
import { steadyState, type DcSide } from '../rectifier/steady-state';
import { branchAt, comparedOhms } from './circuit';
import { resistiveDcAmps } from './dc-network';
import type { BenchMachine } from './machine';
import { meterReading } from './meter';
import type { Measurement } from './readings';

/** What no plan knows to the last per cent, as factors: field, resistance, and speed as a drill's marking tells it. */
export interface Allowance {
  field: number;
  resistance: number;
  drill: number;
}

export const AS_PLANNED: Allowance = { field: 1, resistance: 1, drill: 1 };

/** How far a careful build strays from its plan, as standard deviations. Common practice, no source. */
export const ALLOWANCES: Allowance = { field: 0.03, resistance: 0.03, drill: 0.06 };
/** From coil to coil of one winding. Common practice, no source. */
const COIL_SCATTER = 0.01;

/** By the powers of what a reading goes with the allowances: volts ∝ field · drill. */
export type Powers = Record<keyof Allowance, number>;

/** One measurement, ready to be asked what it should have been on any machine. */
export interface Question {
  measurement: Measurement;
  planned: number;
  /** As measured, open circuits made a number. */
  value: number;
  /** Standard deviation of measured about predicted: meter, speed and winding together; and the part of it that goes with the size. */
  sigma: number;
  share: number;
  powers: Powers;
  /** What the machine's inductance makes of the direct current; 1 for all else. */
  inductive: number;
}

/** The machine that the allowances make of another. */
export const withAllowance = (machine: BenchMachine, { field, resistance }: Allowance): BenchMachine => ({
  ...machine,
  leadResistance20: machine.leadResistance20 * resistance,
  coils: machine.coils.map((coil) => ({
    ...coil,
    resistance20: coil.resistance20 * resistance,
    emf: { cos: coil.emf.cos.map((c) => c * field), sin: coil.emf.sin.map((s) => s * field) },
  })),
});

/**
 * What a meter must show.
 *
 * @param machine      Machine, with or without a fault. [-]
 * @param measurement  Where, with what, how fast, how warm. [-]
 * @param allowance    Factors on field, resistance and drill speed. [-]
 * @param inductive    Of the question. [-]
 * @returns            Ohms, volts or amps. [Ω, V, A]
 *
 * Source    harmonic sums for AC, nodal analysis for DC; copper at its temperature.
 * Checked   tests/core/bench/predict.test.ts
 */
export function predicted(machine: BenchMachine, measurement: Measurement, allowance: Allowance = AS_PLANNED, inductive = 1): number {
  const { figure, place, speed, meter = 'average', dc, temperature } = measurement;
  if (figure === 'ohms' && place) {
    const { resistance20 } = branchAt(machine, place);
    return Number.isFinite(resistance20) ? resistance20 * machine.warm(temperature) * allowance.resistance : OPEN_OHMS;
  }
  const turning = speed ? speed.value * (speed.isCommon ? allowance.drill : 1) : 0;
  if (figure === 'acVolts' && place) {
    const { emf, resistance20 } = branchAt(machine, place);
    if (!Number.isFinite(resistance20)) return 0;
    return meterReading({ orders: machine.orders, ...emf }, meter) * turning * allowance.field;
  }
  if (!dc) throw new Error(`a reading of ${figure} needs the place of its meter`);
  const side = { emf: dc.emf, resistance: dc.resistance + machine.dcCableResistance };
  const amps = inductive * resistiveDcAmps(withAllowance(machine, allowance), side, turning, temperature);
  return figure === 'dcAmps' ? amps : dc.emf + dc.resistance * amps;
}

/** Step for the powers of direct current. */
const STEP = 0.02;
const LONG_STEP = 0.15;
/** More than this on the DC side is a meter, no load. [Ω] */
const METERS_ONLY = 1e6;

/** A measurement as a question to the healthy machine's hypotheses. */
export function questionOf(machine: BenchMachine, measurement: Measurement): Question {
  const { figure, speed, dc, accuracy, step } = measurement;
  if (dc) return directQuestion(machine, measurement, dc);
  const planned = predicted(machine, measurement);
  const isOhms = figure === 'ohms';
  const value = isOhms ? comparedOhms(measurement.value, planned) : measurement.value;
  const share = Math.hypot(accuracy, COIL_SCATTER, speed ? speed.accuracy : 0);
  return {
    measurement,
    planned,
    value,
    share,
    sigma: Math.hypot(share * value, COIL_SCATTER * planned, step / 2),
    powers: { field: isOhms ? 0 : 1, resistance: isOhms ? 1 : 0, drill: !isOhms && speed?.isCommon ? 1 : 0 },
    inductive: 1,
  };
}

/** Direct current leans on speed, on the volts of a battery, and on how warm the copper is; each by its own slope. */
function directQuestion(machine: BenchMachine, measurement: Measurement, dc: DcSide): Question {
  const { speed, accuracy, step, temperature, warmth, value } = measurement;
  const turning = speed?.value ?? 0;
  const side = { emf: dc.emf, resistance: dc.resistance + machine.dcCableResistance };
  const resistive = resistiveDcAmps(machine, side, turning, temperature);
  const isLoaded = resistive > 0 && side.resistance < METERS_ONLY;
  const inductive = isLoaded ? steadyState(machine.plan.source(temperature), machine.bridge, side, turning).dcAmps / resistive : 1;
  const planned = predicted(machine, measurement, AS_PLANNED, inductive);
  const moved = (allowance: Partial<Allowance>, emf = dc.emf) =>
    predicted(machine, { ...measurement, dc: { ...dc, emf } }, { ...AS_PLANNED, ...allowance }, inductive) - planned;
  // Below cut-in a small step moves nothing yet.
  const near = moved({ field: 1 + STEP }) / STEP;
  const bySpeed = near > 0 ? near : moved({ field: 1 + LONG_STEP }) / LONG_STEP;
  const byWarmth = moved({ resistance: 1 + STEP }) / STEP;
  const byVolts = measurement.figure === 'dcAmps' && dc.emf > 0 ? moved({}, dc.emf * (1 - STEP)) / STEP : 0;
  const size = Math.max(planned, value);
  const power = (slope: number) => (planned > 0 ? slope / planned : 0);
  const lean = Math.hypot(bySpeed * (speed?.accuracy ?? 0), byWarmth * warmth, byVolts * accuracy);
  const share = Math.hypot(accuracy, COIL_SCATTER, size > 0 ? lean / size : 0);
  return {
    measurement,
    planned,
    value,
    share,
    sigma: Math.hypot(accuracy * value, COIL_SCATTER * planned, lean, step / 2) || 1,
    powers: { field: power(bySpeed), resistance: power(byWarmth), drill: speed?.isCommon ? power(bySpeed) : 0 },
    inductive,
  };
}

/** How direct current goes with each allowance, near 1: A per unit. */
type Slopes = Record<'field' | 'resistance', number>;

/** Answers of one machine to all questions, for any allowance. */
export interface Answers {
  at: (allowance: Allowance) => number[];
  slopes: ReadonlyMap<number, Slopes>;
}

/**
 * Answers of a machine to its questions, open circuits made a number. What goes in proportion is worked out once; direct current goes straight about the
 * allowances of 1, by slopes that a machine much like it may lend.
 */
export function answersOf(machine: BenchMachine, questions: readonly Question[], lent?: Answers['slopes']): Answers {
  const plain = questions.map(({ measurement }) => (measurement.dc ? 0 : predicted(machine, measurement)));
  const amps = new Map<number, number>();
  const slopes = new Map<number, Slopes>(lent);
  for (const { measurement, inductive } of questions) {
    if (!measurement.dc || amps.has(measurement.row)) continue;
    const current = (allowance: Allowance) => predicted(machine, { ...measurement, figure: 'dcAmps' }, allowance, inductive);
    const here = current(AS_PLANNED);
    amps.set(measurement.row, here);
    const slope = (key: keyof Slopes) => (current({ ...AS_PLANNED, [key]: 1 + STEP }) - here) / STEP;
    if (!slopes.has(measurement.row)) slopes.set(measurement.row, { field: slope('field'), resistance: slope('resistance') });
  }
  const direct = ({ measurement: { row, speed } }: Question, { field, resistance, drill }: Allowance) => {
    const slope = slopes.get(row) ?? { field: 0, resistance: 0 };
    const turning = field * (speed?.isCommon ? drill : 1);
    return Math.max(0, (amps.get(row) ?? 0) + slope.field * (turning - 1) + slope.resistance * (resistance - 1));
  };
  const at = (allowance: Allowance) =>
    questions.map((question, i) => {
      const { measurement, planned, powers } = question;
      if (measurement.dc) {
        const current = direct(question, allowance);
        return measurement.figure === 'dcAmps' ? current : measurement.dc.emf + measurement.dc.resistance * current;
      }
      if (measurement.figure === 'ohms') return comparedOhms(plain[i] >= OPEN_OHMS ? OPEN_OHMS : plain[i] * allowance.resistance, planned);
      return plain[i] * allowance.field * allowance.drill ** powers.drill;
    });
  return { at, slopes };
}
