import { expect, test } from 'vitest';
import { cutInSpeed, openCircuitPeak, pathThreshold } from '../../../core/rectifier/open-circuit';
import type { Bridge } from '../../../core/rectifier/steady-state';
import { balancedSource } from './source';

const bridge = (arrangement: Bridge['arrangement']): Bridge => ({ arrangement, threshold: 0.7, slope: 0.01 });

// Peaks of sines by hand: between two lines of a star √3·E; delta and parallel bridges E; three phases in series E·(1 + 2·cos 60°) = 2E.
test.each([
  ['star', 'bridge', Math.sqrt(3)],
  ['delta', 'bridge', 1],
  ['separate', 'bridges-in-parallel', 1],
  ['separate', 'bridges-in-series', 2],
] as const)('three phases in %s, %s: the rectified peak is %f of a phase', (connection, arrangement, expected) => {
  expect(openCircuitPeak(balancedSource(connection, 3, { peak: 10 }), bridge(arrangement))).toBeCloseTo(10 * expected, 10);
});

test('a third harmonic does not show between the lines of a star or a delta, but does on separate bridges', () => {
  const shares = { 1: 1, 3: 0.2 };
  expect(openCircuitPeak(balancedSource('star', 3, { shares }), bridge('bridge'))).toBeCloseTo(Math.sqrt(3), 4);
  expect(openCircuitPeak(balancedSource('delta', 3, { shares }), bridge('bridge'))).toBeCloseTo(1, 4);
  // sin x + 0.2 sin 3x has its peak where it is flattest: 0.8 at 90° is a dip, the greatest value lies beside it.
  expect(openCircuitPeak(balancedSource('separate', 3, { shares }), bridge('bridges-in-parallel'))).toBeGreaterThan(0.8);
});

test('current passes two diodes, or two for each bridge in series', () => {
  expect(pathThreshold(balancedSource('star', 3), bridge('bridge'))).toBeCloseTo(1.4);
  expect(pathThreshold(balancedSource('separate', 3), bridge('bridges-in-series'))).toBeCloseTo(4.2);
});

test('cut-in comes where the peak equals battery and thresholds', () => {
  expect(cutInSpeed(0.5 * Math.sqrt(3), 1.4, 12.6)).toBeCloseTo(14 / (0.5 * Math.sqrt(3)), 12);
  expect(cutInSpeed(0, 1.4, 12.6)).toBeUndefined();
});
