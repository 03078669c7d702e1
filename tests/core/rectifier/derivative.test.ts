import { expect, test } from 'vitest';
import { passageDerivative } from '../../../core/rectifier/derivative';
import { flowOf } from '../../../core/rectifier/flow';
import type { Source } from '../../../core/rectifier/steady-state';
import { topologyOf } from '../../../core/rectifier/topology';
import { balancedSource } from './source';

const machine = { peak: 3, shares: { 1: 1, 3: 0.1, 5: -0.05 }, inductance: 0.3, mutual: -0.02, resistance: 0.2 };

test.each([
  ['star', 'bridge', 3, [0.4, -0.1, -0.3]],
  ['star', 'bridge', 5, [0.4, 0.2, -0.1, -0.3, -0.2]],
  ['delta', 'bridge', 3, [0.4, 0.1, -0.3]],
  ['separate', 'bridges-in-parallel', 3, [0.4, 0.1, -0.3]],
  ['separate', 'bridges-in-series', 3, [0.4, -0.4, 0.1]],
] as const)('%s, %s, %i phases: the derivative is that of small differences', (connection, arrangement, phases, start) => {
  const source: Source = balancedSource(connection, phases, machine);
  const drive = {
    orders: source.orders,
    cos: source.phaseEmf.map(({ cos }) => cos),
    sin: source.phaseEmf.map(({ sin }) => sin),
    ...{ speed: 1, omega: 1, inductance: source.inductance },
  };
  const topology = topologyOf(source, { arrangement, threshold: 0.05, slope: 0.02 }, { emf: 1, resistance: 0.1 });
  const flow = flowOf(topology, drive);
  const [from, to] = [0.1, 2.6];
  // Start where the flow itself has led, so that every current is one that the mode allows.
  const at = flow(start, from - 1.3, from).end;
  const { end, stretches } = flow(at, from, to);
  expect(stretches.filter(({ event }) => event).length).toBeGreaterThan(0);
  const step = 1e-6;
  const direction = flow(
    start.map((i) => 1.02 * i),
    from - 1.3,
    from,
  ).end.map((i, k) => i - at[k]);
  const size = Math.hypot(...direction);
  const moved = flow(
    at.map((i, k) => i + (direction[k] / size) * step),
    from,
    to,
  ).end;
  const derivative = passageDerivative(stretches);
  end.forEach((i, k) => {
    const foretold = direction.reduce((sum, d, c) => sum + derivative[k * phases + c] * (d / size), 0);
    expect((moved[k] - i) / step).toBeCloseTo(foretold, 4);
  });
});
