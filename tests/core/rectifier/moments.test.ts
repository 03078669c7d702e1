import { expect, test } from 'vitest';
import { momentsOf } from '../../../core/rectifier/moments';
import type { Stretch } from '../../../core/rectifier/flow';
import { flowOf } from '../../../core/rectifier/flow';
import { topologyOf } from '../../../core/rectifier/topology';
import { balancedSource } from './source';

const source = balancedSource('star', 5, { peak: 3, shares: { 1: 1, 3: 0.2, 7: -0.05 }, inductance: 0.4, resistance: 0.3 });
const drive = {
  orders: source.orders,
  cos: source.phaseEmf.map(({ cos }) => cos),
  sin: source.phaseEmf.map(({ sin }) => sin),
  speed: 1,
  omega: 1,
  inductance: source.inductance,
};
const topology = topologyOf(source, { arrangement: 'bridge', threshold: 0.1, slope: 0.02 }, { emf: 1, resistance: 0.1 });
const { stretches } = flowOf(topology, drive)(new Float64Array(5), 0.1, 0.1 + Math.PI);

/** y of each degree of freedom and EMF along it at an angle, from the terms of its mode. */
function at({ mode, from, free }: Stretch, angle: number) {
  const h = drive.orders.length;
  const wave = (cos: Float64Array, sin: Float64Array, j: number) =>
    drive.orders.reduce((sum, n, q) => sum + cos[j * h + q] * Math.cos(n * angle) + sin[j * h + q] * Math.sin(n * angle), 0);
  return Array.from({ length: mode.count }, (_, j) => ({
    y: free[j] * Math.exp(-mode.rates[j] * (angle - from)) + mode.constant[j] + wave(mode.cos, mode.sin, j),
    emf: wave(mode.emfCos, mode.emfSin, j),
  }));
}

/** Simpson's rule. */
function integral(f: (angle: number) => number, from: number, to: number): number {
  const steps = 400;
  const step = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let i = 1; i < steps; i++) sum += (i % 2 ? 4 : 2) * f(from + i * step);
  return (sum * step) / 3;
}

test('integrals of currents, of their products and of the work agree with Simpson’s rule over every stretch', () => {
  expect(stretches.length).toBeGreaterThan(4);
  for (const stretch of stretches) {
    const { from, to } = stretch;
    const { mean, products, work } = momentsOf(stretch, drive.orders);
    const k = stretch.mode.count;
    for (let j = 0; j < k; j++) {
      expect(mean[j]).toBeCloseTo(
        integral((x) => at(stretch, x)[j].y, from, to),
        9,
      );
      for (let l = 0; l < k; l++)
        expect(products[j * k + l]).toBeCloseTo(
          integral((x) => at(stretch, x)[j].y * at(stretch, x)[l].y, from, to),
          9,
        );
    }
    const power = (x: number) => at(stretch, x).reduce((sum, { y, emf }) => sum + y * emf, 0);
    expect(work).toBeCloseTo(integral(power, from, to), 9);
  }
});
