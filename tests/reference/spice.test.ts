import { beforeAll, expect, test } from 'vitest';
import { netlist } from '../../core/rectifier/netlist';
import { steadyState, type Bridge, type DcSide, type Source } from '../../core/rectifier/steady-state';
import { balancedSource } from '../core/rectifier/source';
import { simulated, simulator } from './simulator';

beforeAll(() => simulator.start(), 60_000);

const diode = { threshold: 0.7, slope: 0.02 };
const battery = { emf: 24, resistance: 0.05 };
const cases: { name: string; source: Source; arrangement: Bridge['arrangement']; dc: DcSide; speed: number }[] = [
  {
    name: 'star with heavy overlap and a third harmonic',
    source: balancedSource('star', 3, { peak: 0.1, inductance: 6e-3, resistance: 0.2, shares: { 1: 1, 3: 0.1 } }),
    arrangement: 'bridge',
    dc: battery,
    speed: 600,
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
