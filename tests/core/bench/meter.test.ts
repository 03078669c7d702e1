import { expect, test } from 'vitest';
import { meanRectified, meterReading, peakOf, SINE_FORM, type Wave } from '../../../core/bench/meter';
import { valueAt } from '../../../core/emf/waveform';
import { createRandom } from '../../../core/numeric/random';
import { randomGeometry, randomWinding, woundOn } from './random-machines';

const sine = (n: number): Wave => ({ orders: [n], cos: [0], sin: [1] });
const orders = Array.from({ length: 400 }, (_, i) => 2 * i + 1);
const square: Wave = { orders, cos: orders.map(() => 0), sin: orders.map((n) => 4 / Math.PI / n) };
const triangle: Wave = { orders, cos: orders.map((n) => 8 / Math.PI ** 2 / n ** 2), sin: orders.map(() => 0) };

test('all meters agree on a sine, but for the scope’s peak', () => {
  expect(meterReading(sine(6), 'rms')).toBeCloseTo(Math.SQRT1_2, 9);
  expect(meterReading(sine(6), 'average')).toBeCloseTo(Math.SQRT1_2, 9);
  expect(meterReading(sine(6), 'peak')).toBeCloseTo(1, 6);
  expect(SINE_FORM).toBeCloseTo(1.1107, 4);
});

// Textbook errors of average-responding meters: 11.1 % high on a square wave, 3.8 % low on a triangle (common practice; they follow from the form factors).
test('an average-responding meter reads a square wave 11.1 % high and a triangle 3.8 % low', () => {
  // 400 harmonics make a square wave to a thousandth.
  expect(Math.abs(meterReading(square, 'average') / meterReading(square, 'rms') - 1.111)).toBeLessThan(1e-3);
  expect(meterReading(triangle, 'average') / meterReading(triangle, 'rms') - 1).toBeCloseTo(-0.038, 3);
});

test('the mean of the rectified wave agrees with direct integration on waves of our own coils, phases and lines', () => {
  const random = createRandom(11);
  const uniform = () => random.uniform();
  for (let i = 0; i < 4; i++) {
    const geometry = randomGeometry(uniform);
    const { results } = woundOn(geometry, randomWinding(uniform));
    const { emf } = results.stages;
    for (const own of [emf.coilEmf[0], emf.phaseEmf[0]]) {
      const many = 40_000;
      let sum = 0;
      let most = 0;
      for (let k = 0; k < many; k++) {
        const v = Math.abs(valueAt(own, emf.orders, (2 * Math.PI * (k + 0.5)) / many));
        sum += v / many;
        most = Math.max(most, v);
      }
      expect(Math.abs(meanRectified({ orders: emf.orders, ...own }) / sum - 1)).toBeLessThan(1e-5);
      expect(Math.abs(peakOf({ orders: emf.orders, ...own }) / most - 1)).toBeLessThan(2e-4);
    }
  }
});

test('a wave with even orders is looked at over its whole period', () => {
  const wave: Wave = { orders: [1, 2], cos: [0, 1], sin: [1, 0] };
  const many = 200_000;
  const sum =
    Array.from({ length: many }, (_, k) => Math.abs(valueAt(wave, wave.orders, (2 * Math.PI * k) / many))).reduce((a, b) => a + b, 0) /
    many;
  expect(meanRectified(wave)).toBeCloseTo(sum, 4);
});

test('a coil that gives nothing shows nothing', () => {
  const dead: Wave = { orders: [6, 18], cos: [0, 0], sin: [0, 0] };
  for (const kind of ['average', 'rms', 'peak'] as const) expect(meterReading(dead, kind)).toBe(0);
});
