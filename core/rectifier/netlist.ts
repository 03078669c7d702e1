import { harmonicPeak } from '../emf/waveform';
import type { Bridge, DcSide, Source } from './steady-state';

/**
 * The junction that makes the diode one-way: smooth enough for a simulator's steps. It drops `JUNCTION` volts at 5 A, a tenth of a millivolt more or
 * less for a doubling or halving of the current, which the source for the threshold makes up.
 */
const JUNCTION = 0.003125;
const MODEL = 'D(IS=1.602e-10 N=0.005)';
/** Across each diode, so that nothing floats when all are off; it leaks some tens of microamperes. [Ω] */
const LEAK = 1e6;
const PERIODS = 20;
const STEPS = 1000;

const num = (value: number) => value.toExponential(9);

/**
 * Generator, rectifier and DC side as a SPICE netlist at one speed, to be run unchanged by a general circuit simulator.
 *
 * @param source      Generator and AC cable. [V·s/rad, Ω, H]
 * @param bridge      Rectifier. [V, Ω]
 * @param dc          DC side. [V, Ω]
 * @param shaftSpeed  [rad/s]
 * @param title       First line. [-]
 * @returns           Netlist with a transient analysis of some tens of periods. [-]
 *
 * Each diode is a junction, a source for its threshold and a resistor for its slope. Vload measures the direct current, V1a… the phases'.
 *
 * Source    SPICE3 user's manual: SIN sources, K couplings.
 * Checked   tests/reference/spice.test.ts
 */
export function netlist(source: Source, bridge: Bridge, dc: DcSide, shaftSpeed: number, title: string): string {
  const m = source.phaseEmf.length;
  // A machine at rest has no period of its own; any will do.
  const frequency = (source.polePairs * shaftSpeed) / (2 * Math.PI) || 1;
  const lines = [
    `* ${title.replace(/[\r\n]+/g, ' ') || 'Untitled machine'}`,
    `* Shaft ${num((shaftSpeed * 30) / Math.PI)} rpm, ${num(frequency)} Hz, ${m} phase(s), ${source.connection}.`,
    '* Steady after the first periods; take means over the last ten.',
    ...Array.from({ length: m }, (_, k) => phaseLines(source, k, shaftSpeed, frequency, farEnd(source, k + 1))).flat(),
    ...couplings(source.inductance),
    ...connectionLines(source, bridge),
    `Vload plus load ${num(0)}`,
    `Rload load emf ${num(Math.max(dc.resistance, 1e-6))}`,
    `Vemf emf minus ${num(dc.emf)}`,
    'Rground minus 0 1e-3',
    `.model near ${MODEL}`,
    `.options reltol=1e-4 abstol=1e-8 vntol=1e-6 method=gear`,
    // From no current: in a delta of six several diodes stand at their thresholds at the start, and no operating point is found.
    `.tran ${num(1 / frequency / STEPS)} ${num(PERIODS / frequency)} ${num((PERIODS - 10) / frequency)} ${num(1 / frequency / STEPS)} uic`,
    '.end',
  ];
  return `${lines.join('\n')}\n`;
}

/** Node at the far end of phase k: its own, the star point, or the beginning of the next phase. */
function farEnd({ connection, phaseEmf }: Source, k: number): string {
  if (connection === 'separate' || phaseEmf.length === 1) return `e${k}b`;
  return connection === 'star' ? 'star' : `e${(k % phaseEmf.length) + 1}a`;
}

/** Phase k from node `e(k)a` (positive) to its far end: ammeter, one source a harmonic, resistance, inductance. */
function phaseLines(
  { phaseEmf, orders, resistance, inductance }: Source,
  k: number,
  speed: number,
  frequency: number,
  far: string,
): string[] {
  const emf = phaseEmf[k];
  const name = k + 1;
  const heard = orders.map((_, h) => h).filter((h) => h === 0 || harmonicPeak(emf, h) > 1e-7 * harmonicPeak(emf, 0));
  return [
    `V${name}a e${name}a p${name}m 0`,
    `R${name} p${name}l p${name}m ${num(resistance)}`,
    `L${name} p${name}s0 p${name}l ${num(Math.max(inductance[k][k], 1e-9))}`,
    ...heard.map((h, i) => {
      const peak = harmonicPeak(emf, h) * speed;
      const phase = (Math.atan2(emf.cos[h], emf.sin[h]) * 180) / Math.PI;
      const low = i === heard.length - 1 ? far : `p${name}s${i + 1}`;
      return `V${name}h${orders[h]} p${name}s${i} ${low} SIN(0 ${num(peak)} ${num(orders[h] * frequency)} 0 0 ${num(phase)})`;
    }),
  ];
}

function couplings(inductance: number[][]): string[] {
  return inductance.flatMap((row, i) =>
    row.slice(i + 1).flatMap((mutual, d) => {
      const j = i + 1 + d;
      const factor = mutual / Math.sqrt(row[i] * inductance[j][j]);
      return Number.isFinite(factor) && Math.abs(factor) > 1e-6 ? [`K${i + 1}x${j + 1} L${i + 1} L${j + 1} ${num(factor)}`] : [];
    }),
  );
}

function connectionLines(source: Source, bridge: Bridge): string[] {
  const m = source.phaseEmf.length;
  const separate = source.connection === 'separate' || m === 1;
  const numbers = Array.from({ length: m }, (_, k) => k + 1);
  // Without a cable the terminal is the phase's own node: tiny resistors only trouble the simulator.
  const terminal = (node: string) => (source.lineResistance > 0 ? `t${node}` : `e${node}`);
  const line = (node: string) => (source.lineResistance > 0 ? [`Rline${node} e${node} t${node} ${num(source.lineResistance)}`] : []);
  return numbers.flatMap((k) => {
    const series = separate && bridge.arrangement === 'bridges-in-series' && m > 1;
    const top = !series || k === 1 ? 'plus' : `rail${k - 1}`;
    const bottom = !series || k === m ? 'minus' : `rail${k}`;
    const ends = separate ? [`${k}a`, `${k}b`] : [`${k}a`];
    return ends.flatMap((node) => [...line(node), ...leg(node, terminal(node), top, bottom, bridge)]);
  });
}

function leg(name: string, terminal: string, top: string, bottom: string, bridge: Bridge): string[] {
  const diode = (side: string, from: string, to: string) => [
    `D${name}${side} ${from} d${name}${side}1 near`,
    `Vt${name}${side} d${name}${side}1 d${name}${side}2 ${num(bridge.threshold - JUNCTION)}`,
    `Rd${name}${side} d${name}${side}2 ${to} ${num(Math.max(bridge.slope, 1e-6))}`,
    `Rk${name}${side} ${from} ${to} ${num(LEAK)}`,
  ];
  return [...diode('u', terminal, top), ...diode('l', bottom, terminal)];
}
