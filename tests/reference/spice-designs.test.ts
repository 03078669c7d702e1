import { beforeAll, describe, expect, test } from 'vitest';
import { netlistOf, solve, type Design } from '../../core/index';
import { demo } from '../demo';
import { simulated, simulator } from './simulator';

// What the `netlist` command prints for whole designs, run unchanged. See spice.source.md.
beforeAll(() => simulator.start(), 60_000);

const [cabin, shed, farm] = ['hill-cabin', 'shed-light', 'farm-tracker'].map((name) => demo(name));
const wound = (design: Design, winding: Partial<Design['winding']>): Design => ({ ...design, winding: { ...design.winding, ...winding } });
const bridged = (design: Design, turns: number, arrangement: Design['rectifier']['arrangement']): Design => ({
  ...wound(design, { turns, connection: 'separate' }),
  rectifier: { ...design.rectifier, arrangement },
});

const cases: [name: string, design: Design, kind?: 'near cut-in' | 'third harmonic' | 'overlap'][] = [
  ['star into a battery', cabin],
  ['star near cut-in', { ...cabin, site: { ...cabin.site, ratedWind: 3.75 } }, 'near cut-in'],
  ['delta with a third harmonic', wound(cabin, { connection: 'delta', turns: 51 }), 'third harmonic'],
  ['delta with heavy overlap, at what a tracker holds', wound(farm, { connection: 'delta', turns: 44 }), 'overlap'],
  ['three bridges in series', bridged(cabin, 17, 'bridges-in-series')],
  ['three bridges in parallel behind an AC cable', { ...bridged(cabin, 52, 'bridges-in-parallel'), cable: { ...cabin.cable, side: 'ac' } }],
  ['one phase', shed],
  ['star into a resistor behind an AC cable', { ...farm, load: { kind: 'resistor', resistance: 4 }, cable: { ...farm.cable, side: 'ac' } }],
  ['star into lamps with a turn-on voltage', { ...cabin, load: { kind: 'threshold', turnOn: 30, slope: 1 } }],
];

describe.each(cases)('%s', (_name, design, kind) => {
  test('agrees within 0.5 % on direct current and 1 % on losses', { timeout: 60_000 }, async () => {
    const { rated, coils, cutIn, emf, stages } = solve(design);
    const { diode } = design.rectifier;
    if (kind === 'near cut-in') expect(rated.rpm / cutIn.rpm!).toBeLessThan(1.05);
    if (kind === 'third harmonic') expect(stages.emf.zeroSequenceRmsPer1000rpm! / emf.phaseRmsPer1000rpm).toBeGreaterThan(0.05);
    const ohms = ((rated.rpm * Math.PI) / 30) * stages.emf.polePairs * coils.phaseInductance;
    if (kind === 'overlap') expect(ohms).toBeGreaterThan(2 * coils.phaseResistance);

    const theirs = await simulated(netlistOf(design), stages.emf.phaseEmf.length);
    const near = (what: string, ours: number, other: number, share: number) =>
      expect([what, Math.abs(ours / other - 1) < share, ours, other]).toEqual([what, true, ours, other]);
    expect(theirs.dcAmps).toBeGreaterThan(0.1);
    near('amps', rated.dcAmps, theirs.dcAmps, 0.005);
    near('copper', stages.rated.copperLoss, coils.phaseResistance * theirs.phaseSquares.reduce((a, b) => a + b, 0), 0.01);
    near('diodes', stages.rated.diodeLoss, diode.threshold * theirs.diodeAmps + diode.slope * theirs.diodeSquare, 0.01);
  });
});
