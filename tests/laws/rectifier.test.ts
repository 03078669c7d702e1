/*
 * Laws
 *   books          EMF power = copper + lines + diodes + DC side, to 1e-6
 *   signs          no loss is negative, the direct current is not negative
 *   resistance     more resistance never gives more current
 *   scaling        all volts times k gives all currents times k
 *   cut-in         no current below, continuous across
 *   gaps           a current that stops for a moment does stop
 *   symmetry       the short cut over a part of a period agrees with a whole half period
 *   guess          where the iteration starts does not matter
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutInSpeed, openCircuitPeak, pathThreshold } from '../../core/rectifier/open-circuit';
import { steadyState, type Bridge, type Source } from '../../core/rectifier/steady-state';
import { balancedSource } from '../core/rectifier/source';

const arrangements: [Source['connection'], Bridge['arrangement']][] = [
  ['star', 'bridge'],
  ['delta', 'bridge'],
  ['separate', 'bridges-in-parallel'],
  ['separate', 'bridges-in-series'],
];

const machines = fc.record({
  kind: fc.constantFrom(...arrangements),
  phases: fc.integer({ min: 1, max: 6 }),
  peak: fc.double({ min: 0.05, max: 2, noNaN: true }),
  third: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
  fifth: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
  resistance: fc.double({ min: 0.02, max: 3, noNaN: true }),
  reactance: fc.double({ min: 0, max: 5, noNaN: true }),
  coupling: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
  line: fc.double({ min: 0, max: 0.5, noNaN: true }),
  threshold: fc.double({ min: 0, max: 1.5, noNaN: true }),
  emf: fc.double({ min: 0, max: 60, noNaN: true }),
  dcResistance: fc.double({ min: 0, max: 10, noNaN: true }),
  speed: fc.double({ min: 5, max: 400, noNaN: true }),
});
type Machine = typeof machines extends fc.Arbitrary<infer M> ? M : never;

const sourceOf = (m: Machine): Source => {
  const inductance = (m.reactance * m.resistance) / m.speed;
  return balancedSource(m.kind[0], m.phases, {
    peak: m.peak,
    shares: { 1: 1, 3: m.third, 5: m.fifth },
    resistance: m.resistance,
    inductance,
    mutual: m.coupling * inductance,
    line: m.line,
  });
};
const bridgeOf = (m: Machine): Bridge => ({ arrangement: m.kind[1], threshold: m.threshold, slope: 0.02 });
const solved = (m: Machine) => steadyState(sourceOf(m), bridgeOf(m), { emf: m.emf, resistance: m.dcResistance }, m.speed);

test('the books close and no loss is negative', { timeout: 30_000 }, () => {
  fc.assert(
    fc.property(machines, (m) => {
      const s = solved(m);
      const out = s.copperLoss + s.lineLoss + s.diodeLoss + s.dcWatts;
      expect(Math.abs(s.emfWatts - out)).toBeLessThan(1e-6 * Math.max(Math.abs(s.emfWatts), 1e-3));
      for (const value of [s.dcAmps, s.dcAmpsRms, s.copperLoss, s.lineLoss, s.diodeLoss, ...s.phaseAmps, ...s.lineAmps]) {
        expect(Number.isFinite(value)).toBe(true);
        expect(value).toBeGreaterThanOrEqual(-1e-12);
      }
    }),
    { seed: 41, numRuns: 400 },
  );
});

test('more load resistance never gives more direct current', () => {
  fc.assert(
    fc.property(machines, fc.double({ min: 1.05, max: 4, noNaN: true }), (m, factor) => {
      const less = solved({ ...m, dcResistance: m.dcResistance + 0.1 });
      const more = solved({ ...m, dcResistance: (m.dcResistance + 0.1) * factor });
      expect(more.dcAmps).toBeLessThanOrEqual(less.dcAmps * (1 + 1e-6) + 1e-9);
    }),
    { seed: 42, numRuns: 120 },
  );
});

test('more resistance in phase or AC cable never gives more direct current', () => {
  fc.assert(
    fc.property(
      machines,
      fc.constantFrom('resistance' as const, 'line' as const),
      fc.double({ min: 1.05, max: 4, noNaN: true }),
      (m, where, factor) => {
        const dc = { emf: m.emf, resistance: m.dcResistance };
        const [less, more] = [1, factor].map((k) => {
          const source = { ...sourceOf(m), ...(where === 'line' ? { lineResistance: 0.1 * k } : { resistance: m.resistance * k }) };
          return steadyState(source, bridgeOf(m), dc, m.speed);
        });
        expect(more.dcAmps).toBeLessThanOrEqual(less.dcAmps * (1 + 1e-6) + 1e-9);
      },
    ),
    { seed: 44, numRuns: 120 },
  );
});

test('all volts doubled double all currents', () => {
  fc.assert(
    fc.property(machines, (m) => {
      const once = solved(m);
      const twice = solved({ ...m, peak: 2 * m.peak, emf: 2 * m.emf, threshold: 2 * m.threshold });
      expect(twice.dcAmps).toBeCloseTo(2 * once.dcAmps, 5);
      expect(twice.copperLoss).toBeCloseTo(4 * once.copperLoss, 4);
    }),
    { seed: 43, numRuns: 120 },
  );
});

test.each(arrangements)('%s, %s: nothing flows below cut-in, and current begins without a jump', (connection, arrangement) => {
  const source = balancedSource(connection, 3, { peak: 0.2, inductance: 1e-4 });
  const bridge: Bridge = { arrangement, threshold: 0.7, slope: 0.01 };
  const dc = { emf: 24, resistance: 0.05 };
  const cutIn = cutInSpeed(openCircuitPeak(source, bridge), pathThreshold(source, bridge), dc.emf) ?? 0;
  expect(steadyState(source, bridge, dc, 0.99999 * cutIn).dcAmps).toBe(0);
  const above = [1.0001, 1.01, 1.1].map((k) => steadyState(source, bridge, dc, k * cutIn).dcAmps);
  expect(above[0]).toBeGreaterThan(0);
  expect(above[0]).toBeLessThan(0.02);
  expect(above[0]).toBeLessThan(above[1]);
  expect(above[1]).toBeLessThan(above[2]);
});

test.each(arrangements)('%s, %s: a hair of unbalance, which forbids the short cut, changes nothing', (connection, arrangement) => {
  const bridge: Bridge = { arrangement, threshold: 0.7, slope: 0.01 };
  const source = balancedSource(connection, 3, { peak: 0.4, shares: { 1: 1, 3: 0.1, 5: -0.05 }, inductance: 3e-3 });
  const uneven: Source = {
    ...source,
    phaseEmf: source.phaseEmf.map((emf, k) => (k ? emf : { ...emf, sin: emf.sin.map((s) => s * (1 + 1e-6)) })),
  };
  const dc = { emf: 24, resistance: 0.1 };
  const [a, b] = [source, uneven].map((s) => steadyState(s, bridge, dc, 150));
  expect(a.dcAmps).toBeGreaterThan(1);
  expect(b.dcAmps / a.dcAmps).toBeCloseTo(1, 4);
  expect(b.diodeLoss / a.diodeLoss).toBeCloseTo(1, 4);
  b.phaseAmps.forEach((amps, k) => expect(amps / a.phaseAmps[k]).toBeCloseTo(1, 4));
});

test('where the iteration starts does not matter', () => {
  const source = balancedSource('star', 3, { peak: 0.4, inductance: 5e-3 });
  const bridge: Bridge = { arrangement: 'bridge', threshold: 0.7, slope: 0.01 };
  const dc = { emf: 24, resistance: 0.1 };
  const cold = steadyState(source, bridge, dc, 150);
  const warm = steadyState(source, bridge, dc, 150, [30, -10, -20]);
  expect(warm.dcAmps).toBeCloseTo(cold.dcAmps, 5);
});

test('a current that dies for a moment in mid-pulse is not carried on below zero', () => {
  // A saddle-shaped EMF, 36.7 V and a third harmonic, just above the battery: two humps, and a gap of three degrees between them.
  const source = balancedSource('star', 1, {
    peak: 0.735,
    shares: { 1: 1, 3: 0.165, 5: -0.061, 7: -0.007 },
    resistance: 18.7,
    inductance: 0.0216,
  });
  const state = steadyState(source, { arrangement: 'bridge', threshold: 0.767, slope: 0 }, { emf: 27.3, resistance: 0.57 }, 50);
  const out = state.copperLoss + state.lineLoss + state.diodeLoss + state.dcWatts;
  expect(Math.abs(state.emfWatts / out - 1)).toBeLessThan(1e-7);
});
