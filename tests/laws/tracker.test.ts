/*
 * Laws
 *   top        asked for more than the machine can give, the tracker finds the most DC power, as a fine scan over the volts does
 *   balance    asked for less, it takes just that
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { trackerPoint } from '../../core/charging/tracker';
import { openCircuitPeak, pathThreshold } from '../../core/rectifier/open-circuit';
import { steadyState, type Bridge, type Source } from '../../core/rectifier/steady-state';
import { balancedSource } from '../core/rectifier/source';

const speed = 200;
const wide = { minVolts: 0, maxVolts: 1e4, maxAmps: 1e5, maxWatts: 1e7 };

const machines = fc.record({
  kind: fc.constantFrom<[Source['connection'], Bridge['arrangement']]>(
    ['star', 'bridge'],
    ['delta', 'bridge'],
    ['separate', 'bridges-in-parallel'],
    ['separate', 'bridges-in-series'],
  ),
  phases: fc.constantFrom(1, 2, 3, 5),
  third: fc.double({ min: -0.15, max: 0.15, noNaN: true }),
  reactance: fc.double({ min: 0.01, max: 10, noNaN: true }),
  guess: fc.double({ min: 0, max: 1, noNaN: true }),
});

function machineOf({
  kind: [connection, arrangement],
  phases,
  third,
  reactance,
}: typeof machines extends fc.Arbitrary<infer M> ? M : never) {
  const resistance = 0.4;
  const inductance = (reactance * resistance) / speed;
  const source = balancedSource(connection, phases, { peak: 0.4, shares: { 1: 1, 3: third }, resistance, inductance });
  const bridge: Bridge = { arrangement, threshold: 0.7, slope: 0.01 };
  const open = openCircuitPeak(source, bridge) * speed - pathThreshold(source, bridge);
  const draw = (volts: number) => {
    const { dcAmps, emfWatts } = steadyState(source, bridge, { emf: volts, resistance: 0 }, speed);
    return { dcAmps, dcWatts: volts * dcAmps, shaftWatts: emfWatts };
  };
  // The top is about 0.4 of the open volts wide: between two of these it is missed by (0.01/0.4)², less than a thousandth.
  const most = Math.max(...Array.from({ length: 38 }, (_, i) => draw((0.2 + 0.02 * i) * open).dcWatts));
  return { open, draw, most };
}

test('asked for more than there is, it finds the most DC power to half a percent', { timeout: 30_000 }, () => {
  fc.assert(
    fc.property(machines, (m) => {
      const { open, draw, most } = machineOf(m);
      const found = trackerPoint(draw, open, 1e9, wide, m.guess * open);
      expect(found?.limited).toBe(true);
      expect((found?.drawn.dcWatts ?? 0) / most).toBeGreaterThan(0.995);
    }),
    { seed: 51, numRuns: 60 },
  );
});

test('asked for less, it takes just that, from wherever it starts', () => {
  fc.assert(
    fc.property(machines, fc.double({ min: 0.05, max: 0.8, noNaN: true }), (m, share) => {
      const { open, draw, most } = machineOf(m);
      // A delta's third harmonic takes power from the shaft whatever the tracker does.
      const wanted = share * most + draw(open).shaftWatts;
      const found = trackerPoint(draw, open, wanted, wide, m.guess * open);
      expect(found?.limited).toBe(false);
      expect((found?.drawn.shaftWatts ?? 0) / wanted).toBeCloseTo(1, 2);
    }),
    { seed: 52, numRuns: 60 },
  );
});
