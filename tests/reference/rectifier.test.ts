import { readFileSync } from 'node:fs';
import { describe, test } from 'vitest';
import { steadyState, type Bridge, type DcSide, type Source } from '../../core/rectifier/steady-state';
import { held } from './held';

// rectifier.json: ngspice, exponential diode. See rectifier.source.md.
interface Case {
  inputs: {
    emf_peak_V: number;
    frequency_Hz: number;
    R_ohm_per_phase: number;
    L_H_per_phase: number;
    third_harmonic_fraction: number;
    fifth_harmonic_fraction: number;
  };
  outputs: {
    dc_current_avg_A: number;
    phase_current_rms_A: number;
    phase_current_peak_A: number;
    dc_current_rms_A: number;
    copper_loss_W: number;
    diode_loss_W: number;
  };
}
const table = JSON.parse(readFileSync(new URL('rectifier.json', import.meta.url), 'utf8')) as { outputs: Record<string, Case[]> };

/**
 * Threshold and slope in place of the table's diode, I = IS·exp((V − I·RS)/(N·Vt)): the straight line of least squares through the diode's
 * volts over 10–100 % of the case's own peak diode current: the phase's peak; in delta, where a
 * diode carries two phases, (4/π)·RMS²/mean of the direct current, the peak of half-sine pulses.
 */
function fittedDiode(peak: number): { threshold: number; slope: number } {
  const amps = Array.from({ length: 19 }, (_, i) => peak * (0.1 + 0.05 * i));
  const volts = amps.map((i) => 1.4 * 0.025865 * Math.log(1 + i / 1e-8) + 0.015 * i);
  const mean = (x: number[]) => x.reduce((a, b) => a + b, 0) / x.length;
  const [mi, mv] = [mean(amps), mean(volts)];
  const slope = amps.reduce((sum, i, k) => sum + (i - mi) * (volts[k] - mv), 0) / amps.reduce((sum, i) => sum + (i - mi) ** 2, 0);
  return { threshold: mv - slope * mi, slope };
}

function solved(topology: string, load: string, { inputs, outputs }: Case) {
  const separate = topology.startsWith('3x1ph') || topology === '1ph';
  const phases = topology === '1ph' ? 1 : 3;
  const { emf_peak_V: e, frequency_Hz: f } = inputs;
  const shares = [1, inputs.third_harmonic_fraction, inputs.fifth_harmonic_fraction];
  const orders = [1, 3, 5];
  const speed = 2 * Math.PI * f;
  const source: Source = {
    connection: separate ? 'separate' : (topology as 'star' | 'delta'),
    polePairs: 1,
    orders,
    // e = E Σ h sin(n (x − k·120°))
    phaseEmf: Array.from({ length: phases }, (_, k) => ({
      cos: orders.map((n, h) => (-e * shares[h] * Math.sin((n * k * 2 * Math.PI) / 3)) / speed),
      sin: orders.map((n, h) => (e * shares[h] * Math.cos((n * k * 2 * Math.PI) / 3)) / speed),
    })),
    resistance: inputs.R_ohm_per_phase,
    inductance: Array.from({ length: phases }, (_, i) => Array.from({ length: phases }, (_, j) => (i === j ? inputs.L_H_per_phase : 0))),
    lineResistance: 0,
  };
  const arrangement: Bridge['arrangement'] = topology.endsWith('series')
    ? 'bridges-in-series'
    : separate
      ? 'bridges-in-parallel'
      : 'bridge';
  const dc: DcSide = load === 'battery' ? { emf: 12.6, resistance: 0.05 } : { emf: 0, resistance: 10 };
  const pulse = ((4 / Math.PI) * outputs.dc_current_rms_A ** 2) / Math.max(outputs.dc_current_avg_A, 1e-6);
  const peak = topology === 'delta' ? pulse : outputs.phase_current_peak_A;
  return steadyState(source, { arrangement, ...fittedDiode(Math.max(peak, 0.05)) }, dc, speed);
}

const holdAmps = held('exponential diode, currents, share of 2 % or 30 mA', 1);
const holdWatts = held('exponential diode, losses, share of 3 % or 50 mW', 1);

const within = (value: number, reference: number, share: number, floor: number) =>
  Math.abs(value - reference) / Math.max(share * Math.abs(reference), floor);

describe.each(Object.entries(table.outputs))('%s', (name, cases) => {
  const [topology, load] = name.split('__');
  test.each(cases.map((c, i) => ({ c, i })))('case $i: currents within 2 % or 30 mA, losses within 3 % or 50 mW', ({ c }) => {
    const state = solved(topology, load, c);
    const rms = Math.max(...state.phaseAmps);
    holdAmps(within(state.dcAmps, c.outputs.dc_current_avg_A, 0.02, 0.03));
    holdAmps(within(rms, c.outputs.phase_current_rms_A, 0.02, 0.03));
    holdWatts(within(state.copperLoss, c.outputs.copper_loss_W, 0.03, 0.05));
    holdWatts(within(state.diodeLoss, c.outputs.diode_loss_W, 0.03, 0.05));
  });
});
