import type { PhaseEmf } from '../emf/stage';
import { gaussLegendre } from '../numeric/integrate';
import { flowOf, type Drive, type Stretch } from './flow';
import { periodSymmetry, type PeriodSymmetry } from './symmetry';
import { topologyOf, type Topology } from './topology';

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
const CONVERGED = 1e-8;
const MOST_ROUNDS = 400;
const MEMORY = 5;

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
 * Between diode events the currents follow their linear system exactly; the starting currents of the shortest stretch that repeats are found by
 * iteration with memory.
 *
 * Omits     reverse recovery, saturation, the DC side's own inductance and capacitance.
 * Source    piecewise linear circuits as gradient flows of a convex potential; Anderson 1965, J. ACM 12, 547, for the iteration.
 * Checked   tests/reference/rectifier.test.ts, tests/reference/spice.test.ts
 */
export function steadyState(source: Source, bridge: Bridge, dc: DcSide, shaftSpeed: number, guess?: readonly number[]): SteadyState {
  const topology = topologyOf(source, bridge, dc);
  const nothing = source.phaseEmf.map(() => 0);
  if (!(shaftSpeed > 0)) return averages(topology, source, dc, [], { span: 1, image: (i) => i, shared: (i) => i }, nothing);
  const drive = driveOf(source, shaftSpeed);
  const flow = flowOf(topology, drive);
  const symmetry = periodSymmetry(drive, source.connection);
  const from = 0.1;
  let stretches: Stretch[] = [];
  const map = (currents: number[]) => {
    const passed = flow(currents, from, from + symmetry.span);
    stretches = passed.stretches;
    return symmetry.image(passed.end);
  };
  const start = fixedPoint(map, guess ? [...guess] : nothing, source);
  return averages(topology, source, dc, stretches, symmetry, start);
}

/** Harmonics weaker than this share of the fundamental, in every phase, are left out. */
const HEARD = 1e-4;

function driveOf({ orders, phaseEmf, polePairs, inductance, resistance }: Source, shaftSpeed: number): Drive {
  const omega = polePairs * shaftSpeed;
  const least = (LEAST_INDUCTANCE * resistance) / omega;
  // Gershgorin: no combination of currents meets less inductance than this.
  const sure = Math.min(...inductance.map((row, i) => row.reduce((left, l, j) => (i === j ? left : left - Math.abs(l)), row[i])));
  const added = sure < least ? least : 0;
  const strength = orders.map((_, h) => Math.max(...phaseEmf.map(({ cos, sin }) => Math.hypot(cos[h], sin[h]))));
  const heard = orders.map((_, h) => h).filter((h) => strength[h] > HEARD * Math.max(...strength));
  return {
    orders: heard.map((h) => orders[h]),
    omega,
    cos: phaseEmf.map(({ cos }) => heard.map((h) => cos[h] * shaftSpeed)),
    sin: phaseEmf.map(({ sin }) => heard.map((h) => sin[h] * shaftSpeed)),
    inductance: inductance.map((row, i) => row.map((l, j) => (i === j ? l + added : l))),
  };
}

/** Fixed point of a contraction on a few currents: iteration that remembers its last steps. */
function fixedPoint(map: (currents: number[]) => number[], first: number[], source: Source): number[] {
  const scale = 1e-3 * source.phaseEmf.length;
  let x = first;
  const points: number[][] = [];
  const steps: number[][] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const image = map(x);
    const step = image.map((value, i) => value - x[i]);
    const size = Math.hypot(...step);
    if (size <= CONVERGED * Math.max(Math.hypot(...image), scale)) return image;
    points.push(image);
    steps.push(step);
    if (points.length > Math.min(MEMORY, x.length + 1)) {
      points.shift();
      steps.shift();
    }
    const weights = leastSquaresMix(steps);
    x = x.map((_, i) => points.reduce((sum, point, k) => sum + weights[k] * point[i], 0));
  }
  return x;
}

/** Weights that add up to one and make the mixed step least. */
function leastSquaresMix(steps: number[][]): number[] {
  const n = steps.length;
  if (n === 1) return [1];
  const last = steps[n - 1];
  const differences = steps.slice(0, -1).map((s) => s.map((value, i) => value - last[i]));
  const size = n - 1;
  const a = differences.map((d, i) => [
    ...differences.map(
      (e, j) => d.reduce((sum, value, k) => sum + value * e[k], 0) + (i === j ? 1e-14 * d.reduce((sum, v) => sum + v * v, 0) : 0),
    ),
    -d.reduce((sum, value, k) => sum + value * last[k], 0),
  ]);
  for (let p = 0; p < size; p++) {
    let pivot = p;
    for (let r = p + 1; r < size; r++) if (Math.abs(a[r][p]) > Math.abs(a[pivot][p])) pivot = r;
    [a[p], a[pivot]] = [a[pivot], a[p]];
    if (Math.abs(a[p][p]) < 1e-300) return steps.map((_, k) => (k === n - 1 ? 1 : 0));
    for (let r = 0; r < size; r++) {
      if (r === p) continue;
      const factor = a[r][p] / a[p][p];
      for (let c = p; c <= size; c++) a[r][c] -= factor * a[p][c];
    }
  }
  const weights = a.map((row, i) => row[size] / row[i]);
  return [...weights, 1 - weights.reduce((sum, w) => sum + w, 0)];
}

const PIECES = 12; // a period is integrated in pieces no longer than this share of it
const NODES = 8;

/** A stretch in pieces for integration, finer at its start where fast parts of the currents die away. */
function piecesOf({ from, to, settling }: Stretch): [number, number][] {
  const count = Math.ceil(((to - from) / (2 * Math.PI)) * PIECES);
  const width = (to - from) / count;
  const cuts = [0.3, 1, 3, 9, 27].map((k) => k * settling).filter((cut) => cut < 0.6 * width);
  const edges = [from, ...cuts.map((cut) => from + cut), ...Array.from({ length: count }, (_, i) => from + (i + 1) * width)];
  return edges.slice(1).map((edge, i) => [edges[i], edge]);
}

function averages(
  topology: Topology,
  source: Source,
  dc: DcSide,
  stretches: Stretch[],
  { span, shared }: PeriodSymmetry,
  start: number[],
): SteadyState {
  const nothing = source.phaseEmf.map(() => 0);
  let dcAmps = 0;
  let dcSquare = 0;
  let diodeLoss = 0;
  let lineLoss = 0;
  let emfWatts = 0;
  const squares = [...nothing];
  const lineSquares = topology.lineSquares(nothing);
  for (const stretch of stretches) {
    for (const [low, high] of piecesOf(stretch)) {
      const { nodes, weights } = gaussLegendre(NODES, low, high);
      nodes.forEach((angle, k) => {
        const { currents: i, emf: e } = stretch.at(angle);
        const w = weights[k] / span;
        const direct = stretch.dcAmps(i);
        dcAmps += w * direct;
        dcSquare += w * direct * direct;
        diodeLoss += w * topology.diodePower(stretch.mode, i);
        lineLoss += w * topology.linePower(i);
        topology.lineSquares(i).forEach((square, j) => (lineSquares[j] += w * square));
        for (let j = 0; j < i.length; j++) {
          squares[j] += w * i[j] * i[j];
          emfWatts += w * i[j] * e[j];
        }
      });
    }
  }
  return {
    dcAmps,
    dcAmpsRms: Math.sqrt(dcSquare),
    phaseAmps: shared(squares).map(Math.sqrt),
    lineAmps: shared(lineSquares).map(Math.sqrt),
    copperLoss: squares.reduce((sum, square) => sum + square * source.resistance, 0),
    lineLoss,
    diodeLoss,
    dcWatts: dc.emf * dcAmps + dc.resistance * dcSquare,
    emfWatts,
    start,
  };
}
