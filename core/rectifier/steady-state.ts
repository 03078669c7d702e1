import type { PhaseEmf } from '../emf/stage';
import { flowOf, type Drive } from './flow';
import type { Mode } from './mode';
import { momentsOf } from './moments';
import { periodicPassage } from './periodic';
import { periodSymmetry, type PeriodSymmetry, type Waves } from './symmetry';
import { topologyOf } from './topology';

/** The generator, its AC cable counted in, as the rectifier sees it. */
export interface Source {
  connection: 'star' | 'delta' | 'separate';
  polePairs: number;
  orders: number[];
  phaseEmf: PhaseEmf[];
  /** Of each phase, hot. [Ω] */
  resistance: number;
  /** Phase by phase. [H] */
  inductance: number[][];
  /** In each AC line, an AC-side cable. [Ω] */
  lineResistance: number;
}

export interface Bridge {
  arrangement: 'bridge' | 'bridges-in-parallel' | 'bridges-in-series';
  threshold: number;
  slope: number;
}

/** What stands on the DC side: V = emf + resistance · I, I ≥ 0. Cable and load added up by the caller. */
export interface DcSide {
  emf: number;
  resistance: number;
}

export interface SteadyState {
  /** Mean DC current. [A] */
  dcAmps: number;
  /** RMS DC current, for losses in what stands on the DC side. [A] */
  dcAmpsRms: number;
  /** RMS of each phase. [A] */
  phaseAmps: number[];
  /** RMS of each AC line. [A] */
  lineAmps: number[];
  copperLoss: number;
  lineLoss: number;
  diodeLoss: number;
  /** Into the DC side's EMF and resistance. [W] */
  dcWatts: number;
  /** Out of the EMF: equals the losses and dcWatts. [W] */
  emfWatts: number;
  /** Currents where the solver began its period: a good guess for a case near by. [A] */
  start: number[];
}

/** A machine with less inductance than this share of R/ω, or none, is given that much more: the limit is reached to about the same share. */
const LEAST_INDUCTANCE = 2e-4;
/** Where the stretch that repeats begins: anywhere but where events are likely. [electrical rad] */
const FROM = 0.1;
/** Changes of currents less than this share of it are nothing beside an ampere. */
const SCALE = 1e-3;

/** Modes of the steady state before, which nothing remembers. */
const rooms: Mode[] = [];

/**
 * Periodic steady state of EMF, resistance and inductance behind a rectifier.
 *
 * @param source      Generator and AC cable. [V·s/rad, Ω, H]
 * @param bridge      Rectifier. [V, Ω]
 * @param dc          DC side. [V, Ω]
 * @param shaftSpeed  ω. [rad/s]
 * @param guess       `start` of a case near by. [A]
 * @returns           Means over a period, books closed: emfWatts = copperLoss + lineLoss + diodeLoss + dcWatts. [A, W]
 *
 * Between diode events the currents follow their linear system exactly, and so do the integrals of their products; the starting currents of the
 * shortest stretch that repeats are found by Newton's method.
 *
 * Omits     reverse recovery, saturation, the DC side's own inductance and capacitance.
 * Source    piecewise linear circuits as gradient flows of a convex potential.
 * Checked   tests/reference/rectifier.test.ts, tests/reference/spice.test.ts
 */
export function steadyState(source: Source, bridge: Bridge, dc: DcSide, shaftSpeed: number, guess?: readonly number[]): SteadyState {
  const m = source.phaseEmf.length;
  const nothing = new Array<number>(m).fill(0);
  const topology = topologyOf(source, bridge, dc);
  if (!(shaftSpeed > 0))
    return {
      ...{ dcAmps: 0, dcAmpsRms: 0, phaseAmps: nothing, lineAmps: topology.elements.map(() => 0), start: nothing },
      ...{ copperLoss: 0, lineLoss: 0, diodeLoss: 0, dcWatts: 0, emfWatts: 0 },
    };
  const prepared = preparedOf(source);
  const { symmetry } = prepared;
  const drive = driveOf(source, prepared, shaftSpeed);
  const flow = flowOf(topology, drive, rooms);
  const { start, passage } = periodicPassage(
    (currents) => flow(currents, FROM, FROM + symmetry.span),
    symmetry,
    guess ?? nothing,
    SCALE * m,
  );

  let dcAmps = 0;
  let dcSquare = 0;
  let emfWatts = 0;
  const phaseSquares = [...nothing];
  const elementSquares = topology.elements.map(() => 0);
  for (const stretch of passage.stretches) {
    const { mean, products, work } = momentsOf(stretch, drive.orders);
    const { mode } = stretch;
    const square = (row: readonly number[]) => squareOf(row, mode.currents, products, mode.count);
    emfWatts += work / symmetry.span;
    dcSquare += square(mode.space.dc) / symmetry.span;
    for (let j = 0; j < mode.count; j++)
      for (let i = 0; i < m; i++) dcAmps += (mode.space.dc[i] * mode.currents[i * mode.count + j] * mean[j]) / symmetry.span;
    topology.elements.forEach((row, k) => (elementSquares[k] += square(row) / symmetry.span));
    nothing.forEach((_, i) => (phaseSquares[i] += phaseSquare(i, mode.currents, products, mode.count) / symmetry.span));
  }
  // All diodes off, rounding leaves a mean either side of nothing.
  dcAmps = Math.max(0, dcAmps);
  const total = (squares: readonly number[]) => squares.reduce((sum, square) => sum + square, 0);
  const { threshold, slope, dcSlope } = topology.diodes;
  return {
    dcAmps,
    dcAmpsRms: Math.sqrt(dcSquare),
    phaseAmps: symmetry.shared(phaseSquares).map(Math.sqrt),
    lineAmps: symmetry.shared(elementSquares).map(Math.sqrt),
    copperLoss: source.resistance * total(phaseSquares),
    lineLoss: topology.lines * source.lineResistance * total(elementSquares),
    diodeLoss: threshold * dcAmps + slope * total(elementSquares) + dcSlope * dcSquare,
    dcWatts: dc.emf * dcAmps + dc.resistance * dcSquare,
    emfWatts,
    start: Array.from(start),
  };
}

/** Integral of (row · i)² from the integrals of the products of y, i = W y. */
function squareOf(row: readonly number[], currents: Float64Array, products: Float64Array, count: number): number {
  const along = new Float64Array(count);
  for (let i = 0; i < row.length; i++) if (row[i] !== 0) for (let j = 0; j < count; j++) along[j] += row[i] * currents[i * count + j];
  let sum = 0;
  for (let j = 0; j < count; j++) for (let l = 0; l < count; l++) sum += along[j] * along[l] * products[j * count + l];
  return Math.max(0, sum);
}

function phaseSquare(i: number, currents: Float64Array, products: Float64Array, count: number): number {
  let sum = 0;
  for (let j = 0; j < count; j++)
    for (let l = 0; l < count; l++) sum += currents[i * count + j] * currents[i * count + l] * products[j * count + l];
  return Math.max(0, sum);
}

/** Harmonics weaker than this share of the fundamental, in every phase, are left out. */
const HEARD = 1e-4;

/** What of a source neither speed nor temperature nor load change. */
interface Prepared {
  waves: Waves;
  symmetry: PeriodSymmetry;
  /** No combination of currents meets less inductance than this: Gershgorin. [H] */
  sureInductance: number;
  for: Pick<Source, 'connection' | 'inductance'>;
}

/** Kept as long as the EMFs they were worked out from: a curve asks for the same machine a hundred times. */
const allPrepared = new WeakMap<readonly PhaseEmf[], Prepared>();

function preparedOf({ orders, phaseEmf, connection, inductance }: Source): Prepared {
  const kept = allPrepared.get(phaseEmf);
  if (kept?.for.connection === connection && kept.for.inductance === inductance) return kept;
  const strength = orders.map((_, h) => Math.max(...phaseEmf.map(({ cos, sin }) => Math.hypot(cos[h], sin[h]))));
  const heard = orders.map((_, h) => h).filter((h) => strength[h] > HEARD * Math.max(...strength));
  const waves: Waves = {
    orders: heard.map((h) => orders[h]),
    cos: phaseEmf.map(({ cos }) => heard.map((h) => cos[h])),
    sin: phaseEmf.map(({ sin }) => heard.map((h) => sin[h])),
  };
  const made: Prepared = {
    waves,
    symmetry: periodSymmetry(waves, inductance, connection),
    sureInductance: Math.min(...inductance.map((row, i) => row.reduce((left, l, j) => (i === j ? left : left - Math.abs(l)), row[i]))),
    for: { connection, inductance },
  };
  allPrepared.set(phaseEmf, made);
  return made;
}

function driveOf({ polePairs, inductance, resistance }: Source, { waves, sureInductance }: Prepared, speed: number): Drive {
  const omega = polePairs * speed;
  const least = (LEAST_INDUCTANCE * resistance) / omega;
  return {
    ...waves,
    speed,
    omega,
    inductance: sureInductance < least ? inductance.map((row, i) => row.map((l, j) => (i === j ? l + least : l))) : inductance,
  };
}
