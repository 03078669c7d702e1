import { readFileSync } from 'node:fs';
import { Simulation } from 'eecircuit-engine';
import { beforeAll, expect, test } from 'vitest';
import { netlistOf, parseDesign, solve } from '../../core/index';
import { netlist } from '../../core/rectifier/netlist';
import { steadyState, type Bridge, type DcSide, type Source } from '../../core/rectifier/steady-state';
import { balancedSource } from '../core/rectifier/source';

// Live reference: ngspice in WASM (eecircuit-engine), the same threshold-and-slope diode on both sides. See spice.source.md.
const simulator = new Simulation();
beforeAll(() => simulator.start(), 60_000);

interface Measured {
  dcAmps: number;
  dcSquare: number;
  /** Of each phase. [A²] */
  phaseSquares: number[];
  /** Over all diodes together. [A, A²] */
  diodeAmps: number;
  diodeSquare: number;
}

/** Means over the printed periods, trapezoid over the simulator's own steps. */
async function simulated(text: string, phases: number): Promise<Measured> {
  simulator.setNetList(text);
  const result = await simulator.runSim();
  expect(simulator.getError().filter((line) => /error/i.test(line))).toEqual([]);
  const column = (name: string) => {
    const found = result.data.find((d) => d.name.toLowerCase() === name);
    if (!found) throw new Error(`the simulator printed no ${name}: ${result.variableNames.join(' ')}`);
    return found.values as number[];
  };
  const time = column('time');
  const mean = (values: number[], f: (x: number) => number) => {
    let sum = 0;
    for (let i = 1; i < time.length; i++) sum += ((f(values[i]) + f(values[i - 1])) / 2) * (time[i] - time[i - 1]);
    return sum / (time[time.length - 1] - time[0]);
  };
  const direct = column('i(vload)');
  const square = (x: number) => x * x;
  const diodes = result.data.filter(({ name }) => /^i\(vt/i.test(name)).map(({ values }) => values as number[]);
  const overDiodes = (f: (x: number) => number) => diodes.reduce((sum, values) => sum + mean(values, f), 0);
  expect(diodes.length).toBeGreaterThanOrEqual(4);
  return {
    dcAmps: mean(direct, (x) => x),
    dcSquare: mean(direct, square),
    phaseSquares: Array.from({ length: phases }, (_, k) => mean(column(`i(v${k + 1}a)`), square)),
    diodeAmps: overDiodes((x) => x),
    diodeSquare: overDiodes(square),
  };
}

const diode = { threshold: 0.7, slope: 0.02 };
const battery = { emf: 24, resistance: 0.05 };
const cases: { name: string; source: Source; arrangement: Bridge['arrangement']; dc: DcSide; speed: number }[] = [
  { name: 'star into a battery', source: balancedSource('star', 3, { peak: 0.1 }), arrangement: 'bridge', dc: battery, speed: 300 },
  {
    name: 'star near cut-in',
    source: balancedSource('star', 3, { peak: 0.1, inductance: 2e-4 }),
    arrangement: 'bridge',
    dc: battery,
    speed: 155,
  },
  {
    name: 'star with heavy overlap and a third harmonic',
    source: balancedSource('star', 3, { peak: 0.1, inductance: 6e-3, resistance: 0.2, shares: { 1: 1, 3: 0.1 } }),
    arrangement: 'bridge',
    dc: battery,
    speed: 600,
  },
  {
    name: 'delta with a third harmonic',
    source: balancedSource('delta', 3, { peak: 0.15, inductance: 1e-3, shares: { 1: 1, 3: 0.15, 5: 0.04 } }),
    arrangement: 'bridge',
    dc: battery,
    speed: 300,
  },
  { name: 'one phase', source: balancedSource('star', 1, { peak: 0.15 }), arrangement: 'bridge', dc: battery, speed: 300 },
  {
    name: 'three bridges in series',
    source: balancedSource('separate', 3, { peak: 0.08, inductance: 2e-3 }),
    arrangement: 'bridges-in-series',
    dc: battery,
    speed: 300,
  },
  {
    name: 'three bridges in parallel',
    source: balancedSource('separate', 3, { peak: 0.15, inductance: 2e-3 }),
    arrangement: 'bridges-in-parallel',
    dc: battery,
    speed: 300,
  },
  {
    name: 'mutual inductance and an AC cable into a resistor',
    source: balancedSource('star', 3, { peak: 0.1, inductance: 2e-3, mutual: -3e-4, line: 0.1 }),
    arrangement: 'bridge',
    dc: { emf: 0, resistance: 5 },
    speed: 400,
  },
  { name: 'five phases', source: balancedSource('star', 5, { peak: 0.12 }), arrangement: 'bridge', dc: battery, speed: 250 },
];

test.each(cases)(
  '$name: 0.5 % on direct current, 1 % on copper loss, diode loss and output',
  { timeout: 30_000 },
  async ({ name, source, arrangement, dc, speed }) => {
    const bridge: Bridge = { arrangement, ...diode };
    const ours = steadyState(source, bridge, dc, speed);
    const theirs = await simulated(netlist(source, bridge, dc, speed, name), source.phaseEmf.length);
    const copperLoss = theirs.phaseSquares.reduce((sum, x) => sum + x * source.resistance, 0);
    const diodeLoss = diode.threshold * theirs.diodeAmps + diode.slope * theirs.diodeSquare;
    const dcWatts = dc.emf * theirs.dcAmps + dc.resistance * theirs.dcSquare;
    expect(theirs.dcAmps).toBeGreaterThan(0.05);
    expect(Math.abs(ours.dcAmps / theirs.dcAmps - 1)).toBeLessThan(0.005);
    expect(Math.abs(ours.copperLoss / copperLoss - 1)).toBeLessThan(0.01);
    expect(Math.abs(ours.diodeLoss / diodeLoss - 1)).toBeLessThan(0.01);
    expect(Math.abs(ours.dcWatts / dcWatts - 1)).toBeLessThan(0.01);
  },
);

test('the netlist of a whole design runs unchanged, and gives its rated current to 0.5 %', { timeout: 30_000 }, async () => {
  const parsed = parseDesign(readFileSync(new URL('../../assets/hill-cabin.gapwright', import.meta.url), 'utf8'));
  if (!parsed.ok) throw new Error('the demo does not open');
  const { rated, stages } = solve(parsed.design);
  const { dcAmps } = await simulated(netlistOf(parsed.design), stages.emf.phaseEmf.length);
  expect(rated.dcAmps).toBeGreaterThan(5);
  expect(Math.abs(rated.dcAmps / dcAmps - 1)).toBeLessThan(0.005);
});
