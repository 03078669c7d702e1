import { linearSolution } from '../numeric/linear';
import type { DcSide } from '../rectifier/steady-state';
import { phaseBranch } from './circuit';
import type { BenchMachine, DeadDiode } from './machine';
import { sampledValues, samplingOf } from './sampling';

/** A resistive two-terminal; one that is a diode conducts only from `a` to `b`, above its threshold. */
interface Element {
  a: number;
  b: number;
  conductance: number;
  threshold?: number;
  /** Place in the list of EMFs. */
  phase?: number;
}

interface Network {
  elements: Element[];
  nodes: number;
  load: Element;
}

const MINUS = 0;
/** What still leads between any two nodes, so that none is left floating. [S] */
const LEAK = 1e-10;
const LEAST_SLOPE = 1e-4;
/** Current left over at the nodes, as a share of the greatest short-circuit current. */
const CLOSED = 1e-7;

/** Rails, phases, lines and living diodes as a list of elements. Node 0 is the minus rail. */
function networkOf(machine: BenchMachine, dc: DcSide, temperature: number): Network {
  const { phases, connection, bridge, lineResistance, dead } = machine;
  const elements: Element[] = [];
  let nodes = 1;
  const node = () => nodes++;
  const phaseElement = (phase: number, a: number, b: number, extra = 0) => {
    const resistance = phaseBranch(machine, phase).resistance20 * machine.warm(temperature) + extra;
    elements.push({ a, b, phase: phase - 1, conductance: 1 / resistance });
  };
  const diodes = (phase: number, end: DeadDiode['end'], at: number, plus: number, minus: number) => {
    const lives = (rail: DeadDiode['rail']) => !dead.some((d) => d.phase === phase && d.end === end && d.rail === rail);
    const diode = { conductance: 1 / Math.max(bridge.slope, LEAST_SLOPE), threshold: bridge.threshold };
    if (lives('plus')) elements.push({ a: at, b: plus, ...diode });
    if (lives('minus')) elements.push({ a: minus, b: at, ...diode });
  };
  const numbers = Array.from({ length: phases }, (_, j) => j + 1);
  const series = connection === 'separate' && bridge.arrangement === 'bridges-in-series' && phases > 1;
  let plus = node();
  if (connection === 'star') {
    const star = node();
    for (const phase of numbers) {
      const terminal = node();
      phaseElement(phase, star, terminal, lineResistance);
      diodes(phase, 'begin', terminal, plus, MINUS);
    }
  } else if (connection === 'delta') {
    const corners = numbers.map(node);
    for (const phase of numbers) {
      phaseElement(phase, corners[phase % phases], corners[phase - 1]);
      const terminal = lineResistance > 0 ? node() : corners[phase - 1];
      if (lineResistance > 0) elements.push({ a: corners[phase - 1], b: terminal, conductance: 1 / lineResistance });
      diodes(phase, 'begin', terminal, plus, MINUS);
    }
  } else {
    let minus = MINUS;
    for (const phase of numbers) {
      const [begin, end] = [node(), node()];
      phaseElement(phase, end, begin, 2 * lineResistance);
      diodes(phase, 'begin', begin, plus, minus);
      diodes(phase, 'end', end, plus, minus);
      if (series && phase < phases) [minus, plus] = [plus, node()];
    }
  }
  const load = { a: plus, b: MINUS, conductance: 1 / Math.max(dc.resistance, LEAST_SLOPE), threshold: dc.emf };
  return { elements: [...elements, load], nodes, load };
}

/** Amps from a to b. */
function ampsIn({ a, b, conductance, threshold, phase }: Element, v: Float64Array, emf: Float64Array): number {
  const across = v[a] - v[b];
  if (phase !== undefined) return (across + emf[phase]) * conductance;
  if (threshold === undefined) return across * conductance;
  return across > threshold ? (across - threshold) * conductance : 0;
}

const conducts = ({ a, b, threshold }: Element, v: Float64Array) => threshold === undefined || v[a] - v[b] > threshold;

const MOST_STEPS = 40;

/** Potentials at which no node gathers charge, from a first guess: Newton's method on piecewise straight characteristics. */
function settle({ elements, nodes }: Network, emf: Float64Array, v: Float64Array): void {
  const n = nodes - 1;
  const gathered = (at: Float64Array, into: Float64Array) => {
    for (let i = 1; i < nodes; i++) into[i] = LEAK * at[i];
    for (const element of elements) {
      const amps = ampsIn(element, at, emf);
      into[element.a] += amps;
      into[element.b] -= amps;
    }
    let size = 0;
    for (let i = 1; i < nodes; i++) size += into[i] * into[i];
    return Math.sqrt(size);
  };
  const residual = new Float64Array(nodes);
  const next = new Float64Array(nodes);
  const scratch = new Float64Array(nodes);
  const matrix = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  let greatest = 1e-3;
  for (const { phase, conductance } of elements) if (phase !== undefined) greatest = Math.max(greatest, conductance * Math.abs(emf[phase]));
  for (let step = 0; step < MOST_STEPS; step++) {
    const before = gathered(v, residual);
    if (before < CLOSED * greatest) return;
    for (let i = 0; i < n; i++) {
      matrix[i].fill(0);
      matrix[i][i] = LEAK;
    }
    for (const element of elements) {
      if (!conducts(element, v)) continue;
      const { a, b, conductance } = element;
      if (a > 0) matrix[a - 1][a - 1] += conductance;
      if (b > 0) matrix[b - 1][b - 1] += conductance;
      if (a > 0 && b > 0) {
        matrix[a - 1][b - 1] -= conductance;
        matrix[b - 1][a - 1] -= conductance;
      }
    }
    const move = linearSolution(matrix, Array.from(residual.subarray(1)));
    if (!move) return;
    let share = 1;
    do {
      for (let i = 0; i < n; i++) next[i + 1] = v[i + 1] - share * move[i];
      share /= 2;
    } while (gathered(next, scratch) > before * (1 - share / 2) && share > 1e-3);
    v.set(next);
  }
}

/** Instants to a period of the highest harmonic. */
const INSTANTS = 5;

/**
 * Mean direct current of a machine, faults and all, with resistance alone.
 *
 * @param machine      Machine. [-]
 * @param dc           DC side, cable counted. [V, Ω]
 * @param speed        ω. [rad/s]
 * @param temperature  Of the copper. [°C]
 * @returns            Mean current. [A]
 *
 * Omits     inductance: predict.ts brings it back by the ratio of the healthy machine's full steady state to this.
 * Source    nodal analysis at instants over a period; diodes as threshold and slope.
 * Checked   tests/core/bench/dc-network.test.ts
 */
export function resistiveDcAmps(machine: BenchMachine, dc: DcSide, speed: number, temperature: number): number {
  const network = networkOf(machine, dc, temperature);
  // With odd orders and all diodes alive the second half of a period is the first with plus and minus exchanged.
  const sampling = samplingOf(machine.orders, INSTANTS, machine.dead.length > 0);
  const waves = Array.from({ length: machine.phases }, (_, j) => sampledValues(phaseBranch(machine, j + 1).emf, sampling));
  const count = sampling.angles.length - 1;
  const emf = new Float64Array(machine.phases);
  const v = new Float64Array(network.nodes);
  let sum = 0;
  for (let k = 0; k < count; k++) {
    for (let j = 0; j < emf.length; j++) emf[j] = speed * waves[j][k];
    settle(network, emf, v);
    sum += ampsIn(network.load, v, emf);
  }
  return sum / count;
}
