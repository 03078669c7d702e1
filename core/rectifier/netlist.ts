import { harmonicPeak } from '../emf/waveform';
import type { Bridge, DcSide, Source } from './steady-state';

/** Emission coefficient of the near-ideal diode: its own drop is a few millivolts; threshold and slope stand beside it. */
const NEAR_IDEAL = 0.005;
const PERIODS = 40;
const STEPS = 2000;

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
 * Each diode is a near-ideal diode, a source for its threshold and a resistor for its slope. Vdc measures the direct current, V1a… the phases'.
 *
 * Source    SPICE3 user's manual: SIN sources, K couplings.
 * Checked   tests/reference/spice.test.ts
 */
export function netlist(source: Source, bridge: Bridge, dc: DcSide, shaftSpeed: number, title: string): string {
  const m = source.phaseEmf.length;
  const frequency = (source.polePairs * shaftSpeed) / (2 * Math.PI);
  const lines = [
    `* ${title.replace(/[\r\n]+/g, ' ') || 'Untitled machine'}`,
    `* Shaft ${num((shaftSpeed * 30) / Math.PI)} rpm, ${num(frequency)} Hz, ${m} phase(s), ${source.connection}.`,
    '* Steady after the first periods; take means over the last ten.',
    ...Array.from({ length: m }, (_, k) => phaseLines(source, k, shaftSpeed, frequency)).flat(),
    ...couplings(source.inductance),
    ...connectionLines(source, bridge),
    `Vload plus load ${num(0)}`,
    `Rload load emf ${num(Math.max(dc.resistance, 1e-6))}`,
    `Vemf emf minus ${num(dc.emf)}`,
    'Rground minus 0 1e-3',
    `.model near D(IS=1e-12 N=${NEAR_IDEAL})`,
    `.options reltol=1e-5 abstol=1e-9 vntol=1e-7 method=gear`,
    `.tran ${num(1 / frequency / STEPS)} ${num(PERIODS / frequency)} ${num((PERIODS - 10) / frequency)} ${num(1 / frequency / STEPS)}`,
    '.end',
  ];
  return `${lines.join('\n')}\n`;
}

/** Phase k from node `e(k)a` (positive) to `e(k)b`: ammeter, one source a harmonic, resistance, inductance. */
function phaseLines({ phaseEmf, orders, resistance, inductance }: Source, k: number, speed: number, frequency: number): string[] {
  const emf = phaseEmf[k];
  const name = k + 1;
  const heard = orders.map((_, h) => h).filter((h) => harmonicPeak(emf, h) > 1e-7 * harmonicPeak(emf, 0));
  return [
    `V${name}a e${name}a p${name}m 0`,
    `R${name} p${name}l p${name}m ${num(resistance)}`,
    `L${name} p${name}s0 p${name}l ${num(Math.max(inductance[k][k], 1e-9))}`,
    ...heard.map((h, i) => {
      const peak = harmonicPeak(emf, h) * speed;
      const phase = (Math.atan2(emf.cos[h], emf.sin[h]) * 180) / Math.PI;
      const low = i === heard.length - 1 ? `e${name}b` : `p${name}s${i + 1}`;
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
  const line = Math.max(source.lineResistance, 1e-6);
  const numbers = Array.from({ length: m }, (_, k) => k + 1);
  if (separate) {
    const series = bridge.arrangement === 'bridges-in-series' && m > 1;
    return numbers.flatMap((k) => {
      const top = !series || k === 1 ? 'plus' : `rail${k - 1}`;
      const bottom = !series || k === m ? 'minus' : `rail${k}`;
      return [
        `Rline${k}a e${k}a t${k}a ${num(line)}`,
        `Rline${k}b e${k}b t${k}b ${num(line)}`,
        ...leg(`${k}a`, `t${k}a`, top, bottom, bridge),
        ...leg(`${k}b`, `t${k}b`, top, bottom, bridge),
      ];
    });
  }
  // Delta: phase k runs from terminal k to terminal k + 1.
  const joined = numbers.map((k) =>
    source.connection === 'star' ? `Rjoin${k} e${k}b star 1e-6` : `Rjoin${k} e${k}b e${(k % m) + 1}a 1e-6`,
  );
  return [
    ...joined,
    ...numbers.flatMap((k) => [`Rline${k} e${k}a t${k} ${num(line)}`, ...leg(String(k), `t${k}`, 'plus', 'minus', bridge)]),
  ];
}

function leg(name: string, terminal: string, top: string, bottom: string, bridge: Bridge): string[] {
  const diode = (side: string, from: string, to: string) => [
    `D${name}${side} ${from} d${name}${side}1 near`,
    `Vt${name}${side} d${name}${side}1 d${name}${side}2 ${num(bridge.threshold)}`,
    `Rd${name}${side} d${name}${side}2 ${to} ${num(Math.max(bridge.slope, 1e-6))}`,
  ];
  return [...diode('u', terminal, top), ...diode('l', bottom, terminal)];
}
