import type { Stretch } from './flow';
import type { Mode } from './mode';

/**
 * How currents at the end of a passage change with those at its start.
 *
 * @param stretches  Of the passage, in turn, at least one. [rad]
 * @returns          Derivative, phases × phases row by row. [A/A]
 *
 * Source    modal decay between events; across an event, which a different start meets earlier or later, the saltation matrix: Leine & Nijmeijer
 *           2004, Dynamics and Bifurcations of Non-Smooth Mechanical Systems, ch. 7 (from memory).
 * Checked   tests/core/rectifier/derivative.test.ts
 */
export function passageDerivative(stretches: readonly Stretch[]): Float64Array {
  const m = stretches[0].mode.space.drop.length;
  let derivative = unity(m);
  for (const { mode, from, to, event } of stretches) {
    const modal = passed(mode, derivative, to - from);
    derivative = inCurrents(mode, modal);
    if (!event) continue;
    for (let c = 0; c < m; c++) {
      let later = 0;
      for (let j = 0; j < mode.count; j++) later -= (mode.guards.free[event.guard * mode.count + j] * modal[j * m + c]) / event.slope;
      for (let i = 0; i < m; i++) derivative[i * m + c] += event.bend[i] * later;
    }
  }
  return derivative;
}

function unity(m: number): Float64Array {
  const one = new Float64Array(m * m);
  for (let i = 0; i < m; i++) one[i * m + i] = 1;
  return one;
}

/** The derivative in a mode's own degrees of freedom, k × m, after an angle in it. */
function passed({ count, flux, rates, space }: Mode, derivative: Float64Array, angle: number): Float64Array {
  const m = space.drop.length;
  const modal = new Float64Array(count * m);
  for (let j = 0; j < count; j++) {
    const left = Math.exp(-rates[j] * angle);
    for (let i = 0; i < m; i++) {
      const share = left * flux[i * count + j];
      for (let c = 0; c < m; c++) modal[j * m + c] += share * derivative[i * m + c];
    }
  }
  return modal;
}

/** From a mode's degrees of freedom to phase currents, m × m. */
function inCurrents(mode: Mode, modal: Float64Array): Float64Array {
  const m = mode.space.drop.length;
  const derivative = new Float64Array(m * m);
  for (let i = 0; i < m; i++)
    for (let j = 0; j < mode.count; j++) {
      const share = mode.currents[i * mode.count + j];
      for (let c = 0; c < m; c++) derivative[i * m + c] += share * modal[j * m + c];
    }
  return derivative;
}
