/*
 * Laws of the whole chain, from shaft to load
 *   books        at every speed and every wind: shaft = copper + eddy + bearings + diodes + cable + load, to 1e-6
 *   signs        no loss is negative; less comes out than goes in
 *   cut-in       falls as turns rise
 *   continuity   the direct current has no jump at cut-in, read off the curve or solved there
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCurve } from '../../core/chain/curve';
import { plantOf } from '../../core/chain/plant';
import { loadCutIn, responderOf } from '../../core/chain/responder';
import type { CurvePoint } from '../../core/chain/results';
import { createSolver, solve } from '../../core/chain/solve';
import { blankDesign } from '../../core/design/form';
import type { Design } from '../../core/design/schema';
import { turbineStage } from '../../core/turbine/stage';
import { size } from '../electron/size';

const blank = blankDesign();

const loads = fc.oneof(
  fc.record({
    kind: fc.constant('battery' as const),
    chemistry: fc.constant('AGM'),
    voltage: fc.double({ min: 6, max: 60, noNaN: true }),
    resistance: fc.double({ min: 0, max: 0.5, noNaN: true }),
    capacity: fc.constant(200),
  }),
  fc.record({ kind: fc.constant('resistor' as const), resistance: fc.double({ min: 0.1, max: 50, noNaN: true }) }),
  fc.record({
    kind: fc.constant('threshold' as const),
    turnOn: fc.double({ min: 2, max: 60, noNaN: true }),
    slope: fc.double({ min: 0.01, max: 20, noNaN: true }),
  }),
  fc.constant({ kind: 'open' as const }),
  fc.constant({ kind: 'tracker' as const }),
);

const tracker = {
  maxInputVoltage: 150,
  minInputVoltage: 12,
  maxInputCurrent: 60,
  maxPower: 3000,
  batteryVoltage: 24,
  maxChargeCurrent: 120,
};

/** Phases and coils for twelve magnets on a disc. */
const phased = fc.constantFrom([1, 6], [2, 8], [3, 9], [4, 8], [5, 10], [6, 18]);

const designs = fc
  .record({
    load: loads,
    turns: fc.integer({ min: 5, max: 120 }),
    phased,
    joined: fc.constantFrom('star' as const, 'delta' as const),
    isSeparate: fc.boolean(),
    apart: fc.constantFrom('bridges-in-parallel' as const, 'bridges-in-series' as const),
    side: fc.constantFrom('ac' as const, 'dc' as const),
    length: fc.double({ min: 0, max: 80, noNaN: true }),
    diameter: fc.double({ min: 0.8, max: 3.5, noNaN: true }),
    air: fc.integer({ min: -20, max: 45 }),
  })
  .map(({ load, turns, phased: [phases, coils], joined, isSeparate, apart, side, length, diameter, air }): Design => {
    const connection = isSeparate || phases < 3 ? 'separate' : joined;
    const layout = { ...blank.winding.layout, coils } as Design['winding']['layout'];
    return {
      ...blank,
      load,
      ...(load.kind === 'tracker' && { controller: tracker }),
      winding: { ...blank.winding, layout, phases, turns, connection },
      rectifier: { ...blank.rectifier, arrangement: connection === 'separate' && phases > 1 ? apart : 'bridge' },
      cable: { ...blank.cable, side, length },
      turbine: { ...blank.turbine, diameter },
      surroundings: { ...blank.surroundings, airTemperature: air },
    };
  });

const LOSSES = ['copperLoss', 'eddyLoss', 'bearingLoss', 'diodeLoss', 'cableLoss'] as const;
type Books = Pick<CurvePoint, (typeof LOSSES)[number] | 'dcWatts' | 'shaftWatts'>;

function expectSound(point: Books) {
  const lost = LOSSES.reduce((sum, key) => sum + point[key], 0);
  expect(Math.abs(point.shaftWatts - lost - point.dcWatts)).toBeLessThanOrEqual(1e-6 * Math.max(point.shaftWatts, 1e-3));
  for (const key of LOSSES) expect([key, point[key] >= 0]).toEqual([key, true]);
  expect(point.dcWatts).toBeGreaterThanOrEqual(0);
  if (point.shaftWatts > 0) expect(point.dcWatts).toBeLessThan(point.shaftWatts);
}

test(
  'at every speed and every wind the books close, no loss is negative and less comes out than goes in',
  { timeout: size(60_000, 1_000_000) },
  () => {
    const solver = createSolver();
    fc.assert(
      fc.property(designs, (design) => {
        const { curve, match, stages } = solver(design);
        [...curve, ...match, stages.rated].forEach(expectSound);
      }),
      { seed: 51, numRuns: size(20, 1000) },
    );
  },
);

test('cut-in falls as turns rise', { timeout: size(60_000, 1_000_000) }, () => {
  const solver = createSolver();
  fc.assert(
    fc.property(
      designs.filter(({ load }) => load.kind === 'battery' || load.kind === 'threshold'),
      fc.integer({ min: 1, max: 40 }),
      (design, more) => {
        const { turns } = design.winding;
        const few = solver(design).cutIn;
        const many = solver({ ...design, winding: { ...design.winding, turns: turns + more } }).cutIn;
        expect(many.rpm!).toBeLessThan(few.rpm!);
        // Without a load the EMF goes with the turns, so the speed at which it passes a threshold goes against them.
        expect((many.rpm! * (turns + more)) / (few.rpm! * turns)).toBeCloseTo(1, 6);
      },
    ),
    { seed: 52, numRuns: size(6, 200) },
  );
});

describe('the direct current has no jump at cut-in', () => {
  const cases: [string, Partial<Design>][] = [
    ['battery', {}],
    ['battery, in delta', { winding: { ...blank.winding, connection: 'delta' } }],
    ['lamps with a turn-on voltage', { load: { kind: 'threshold', turnOn: 20, slope: 0.5 } }],
    ['resistor', { load: { kind: 'resistor', resistance: 2 } }],
    ['tracker', { load: { kind: 'tracker' }, controller: tracker }],
  ];
  test.each(cases)('%s', (_name, change) => {
    const design: Design = { ...blank, ...change };
    const { stages } = solve(design);
    const plant = plantOf(design, stages.field, stages.winding, stages.wire, stages.emf);
    const wheel = turbineStage(design.turbine, design.site);
    const respond = responderOf(plant, design.load, design.controller, wheel);
    const cutIn = loadCutIn(plant, design.load, design.controller)!;
    expect(cutIn).toBeGreaterThan(0);
    const { at } = loadCurve(respond, cutIn, 4 * cutIn);
    const full = respond(3 * cutIn).point.dcAmps;
    expect(full).toBeGreaterThan(1);
    const below = [0.9, 0.99, 0.9999].map((k) => at(k * cutIn).point.dcAmps);
    expect(below).toEqual([0, 0, 0]);
    for (const read of [(speed: number) => at(speed), respond]) {
      const above = [1.0001, 1.001, 1.01, 1.05].map((k) => read(k * cutIn).point.dcAmps);
      expect(above[0]).toBeLessThan(2e-3 * full);
      above.slice(1).forEach((amps, i) => expect(amps).toBeGreaterThan(above[i]));
    }
  });
});
