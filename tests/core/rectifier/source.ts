import type { Source } from '../../../core/rectifier/steady-state';

/** A balanced source of e_k = E Σ share_n sin(n (x − k·2π/m)) at one radian per second and pole pair. */
export function balancedSource(
  connection: Source['connection'],
  phases: number,
  options: {
    peak?: number;
    shares?: Record<number, number>;
    resistance?: number;
    inductance?: number;
    mutual?: number;
    line?: number;
  } = {},
): Source {
  const { peak = 1, shares = { 1: 1 }, resistance = 0.5, inductance = 1e-3, mutual = 0, line = 0 } = options;
  const orders = Object.keys(shares).map(Number);
  const apart = phases === 2 ? Math.PI / 2 : (2 * Math.PI) / phases;
  return {
    connection,
    polePairs: 1,
    orders,
    phaseEmf: Array.from({ length: phases }, (_, k) => ({
      cos: orders.map((n) => -peak * shares[n] * Math.sin(n * k * apart)),
      sin: orders.map((n) => peak * shares[n] * Math.cos(n * k * apart)),
    })),
    resistance,
    inductance: Array.from({ length: phases }, (_, i) => Array.from({ length: phases }, (_, j) => (i === j ? inductance : mutual))),
    lineResistance: line,
  };
}
