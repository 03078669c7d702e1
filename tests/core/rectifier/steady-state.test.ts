import { describe, expect, test } from 'vitest';
import { steadyState, type Bridge, type Source } from '../../../core/rectifier/steady-state';
import { balancedSource } from './source';

const ideal: Bridge = { arrangement: 'bridge', threshold: 0, slope: 0 };
const real: Bridge = { arrangement: 'bridge', threshold: 0.7, slope: 0.02 };

describe('against closed forms', () => {
  // A bridge of ideal diodes into a resistor turns nothing but signs: the phase sees the resistor itself. I = E/√2 / |R + jX|.
  test('one phase through an ideal bridge into a resistor carries what the resistor alone would', () => {
    const source = balancedSource('star', 1, { peak: 1, resistance: 0.5, inductance: 4e-3, line: 0.1 });
    const state = steadyState(source, ideal, { emf: 0, resistance: 3 }, 200);
    const amps = 200 / Math.SQRT2 / Math.hypot(0.5 + 0.2 + 3, 0.8);
    expect(state.phaseAmps[0] / amps).toBeCloseTo(1, 4);
    expect(state.dcAmpsRms / amps).toBeCloseTo(1, 4);
    expect(state.copperLoss / (0.5 * amps ** 2)).toBeCloseTo(1, 4);
    expect(state.lineLoss / (0.2 * amps ** 2)).toBeCloseTo(1, 4);
  });

  // Sine E behind R charges V: mean of (E·sin − V)/R while positive = (2E/πR)(√(1 − x²) − x·acos x), x = V/E.
  test('one phase without inductance charges a battery by arcs of a sine', () => {
    const source = balancedSource('star', 1, { peak: 0.2, resistance: 0.5, inductance: 0 });
    const state = steadyState(source, real, { emf: 24, resistance: 0.06 }, 200);
    const x = (24 + 1.4) / 40;
    expect(state.dcAmps / (((2 * 40) / (Math.PI * 0.6)) * (Math.sqrt(1 - x * x) - x * Math.acos(x)))).toBeCloseTo(1, 3);
  });

  // Above √3·cos 30° of the phase's peak the six line voltages take turns: 6 pulses, (√3E·cos θ − V)/(2R + R_dc) each.
  test('a star just above cut-in gives six separate pulses a period', () => {
    const source = balancedSource('star', 3, { peak: 0.2, resistance: 0.5, inductance: 0 });
    const state = steadyState(source, real, { emf: 61.6, resistance: 0.06 }, 200);
    const [line, total] = [Math.sqrt(3) * 40, 1.1];
    const x = 63 / line;
    expect(state.dcAmps / (((6 * line) / (Math.PI * total)) * (Math.sqrt(1 - x * x) - x * Math.acos(x)))).toBeCloseTo(1, 3);
  });

  // Round the delta: 3·e₃ over 3·(R + j·3ω(L + 2M)).
  test('a delta’s third harmonic drives a current round it with nothing connected', () => {
    const source = balancedSource('delta', 3, { peak: 0.3, shares: { 1: 1, 3: 0.1 }, resistance: 0.4, inductance: 1e-3, mutual: 1e-4 });
    const state = steadyState(source, real, { emf: 1e4, resistance: 0 }, 200);
    const amps = (0.1 * 60) / Math.SQRT2 / Math.hypot(0.4, 3 * 200 * 1.2e-3);
    expect(state.dcAmps).toBe(0);
    for (const phase of state.phaseAmps) expect(phase / amps).toBeCloseTo(1, 4);
    for (const line of state.lineAmps) expect(line).toBeCloseTo(0, 6);
    expect(state.emfWatts / (3 * 0.4 * amps ** 2)).toBeCloseTo(1, 4);
  });
});

describe('two ways to the same circuit', () => {
  const shares = { 1: 1, 5: 0.06, 7: -0.03 };
  const dc = { emf: 24, resistance: 0.05 };

  test('a delta without third harmonic is a star of 1/√3 the EMF, a third of the resistance and inductance', () => {
    const delta = balancedSource('delta', 3, { peak: 0.3, shares, resistance: 0.6, inductance: 3e-3, mutual: -3e-4, line: 0.1 });
    const star = balancedSource('star', 3, {
      peak: 0.3 / Math.sqrt(3),
      shares,
      resistance: 0.2,
      inductance: 1e-3,
      mutual: -1e-4,
      line: 0.1,
    });
    // The star of a delta is turned by 30°: harmonics of order 6k − 1 change sign against the fundamental.
    star.phaseEmf.forEach((emf) => [emf.cos, emf.sin].forEach((part) => (part[1] *= -1)));
    star.phaseEmf.forEach((emf) => [emf.cos, emf.sin].forEach((part) => (part[2] *= -1)));
    const [a, b] = [delta, star].map((source) => steadyState(source, real, dc, 200));
    expect(a.dcAmps).toBeGreaterThan(5);
    expect(a.dcAmps / b.dcAmps).toBeCloseTo(1, 5);
    expect(a.diodeLoss / b.diodeLoss).toBeCloseTo(1, 5);
    expect(a.copperLoss / b.copperLoss).toBeCloseTo(1, 5);
    expect(a.lineAmps[0] / b.lineAmps[0]).toBeCloseTo(1, 5);
  });

  test('in a star it does not matter whether a resistance is in the phase or in the line', () => {
    const [inside, outside] = [
      { resistance: 0.5, line: 0 },
      { resistance: 0.3, line: 0.2 },
    ].map((parts) => steadyState(balancedSource('star', 3, { peak: 0.2, shares, inductance: 2e-3, ...parts }), real, dc, 200));
    expect(inside.dcAmps / outside.dcAmps).toBeCloseTo(1, 4);
    expect((outside.copperLoss + outside.lineLoss) / inside.copperLoss).toBeCloseTo(1, 4);
  });

  test('bridges in parallel on a stiff battery do not know of one another', () => {
    const options = { peak: 0.2, shares, inductance: 2e-3 };
    const stiff = { emf: 24, resistance: 0 };
    const one = steadyState(balancedSource('separate', 1, options), real, stiff, 200);
    const three = steadyState(balancedSource('separate', 3, options), { ...real, arrangement: 'bridges-in-parallel' }, stiff, 200);
    expect(three.dcAmps / one.dcAmps).toBeCloseTo(3, 5);
    expect(three.diodeLoss / one.diodeLoss).toBeCloseTo(3, 5);
  });

  test('two bridges in series on EMFs in step are one of twice the EMF, resistance, inductance and thresholds', () => {
    const single = balancedSource('separate', 1, { peak: 0.1, shares, inductance: 1e-3, resistance: 0.3 });
    const pair: Source = {
      ...single,
      phaseEmf: [single.phaseEmf[0], single.phaseEmf[0]],
      inductance: [
        [1e-3, 0],
        [0, 1e-3],
      ],
    };
    const twice = balancedSource('separate', 1, { peak: 0.2, shares, inductance: 2e-3, resistance: 0.6 });
    const a = steadyState(pair, { ...real, arrangement: 'bridges-in-series' }, dc, 200);
    const b = steadyState(twice, { ...real, threshold: 1.4, slope: 0.04 }, dc, 200);
    expect(b.dcAmps).toBeGreaterThan(1);
    expect(a.dcAmps / b.dcAmps).toBeCloseTo(1, 5);
    expect(a.diodeLoss / b.diodeLoss).toBeCloseTo(1, 5);
  });

  test('a star of two phases is one phase across both', () => {
    const two = balancedSource('star', 2, { peak: 0.2, inductance: 1e-3, resistance: 0.3, line: 0.05 });
    const one = balancedSource('star', 1, { peak: 0.2 * Math.SQRT2, inductance: 2e-3, resistance: 0.6, line: 0.05 });
    const [a, b] = [two, one].map((source) => steadyState(source, real, dc, 200));
    expect(b.dcAmps).toBeGreaterThan(1);
    expect(a.dcAmps / b.dcAmps).toBeCloseTo(1, 5);
  });
});

test('at standstill nothing flows', () => {
  const state = steadyState(balancedSource('star', 3), real, { emf: 0, resistance: 1 }, 0);
  expect([state.dcAmps, state.emfWatts, ...state.phaseAmps]).toEqual([0, 0, 0, 0, 0]);
});
