import { describe, expect, test } from 'vitest';
import { benchMachine } from '../../../core/bench/machine';
import { predicted, questionOf } from '../../../core/bench/predict';
import { measurementsOf, type Measurement } from '../../../core/bench/readings';
import { steadyState } from '../../../core/rectifier/steady-state';
import { expectedReadings } from '../../../core/sheet/expected-readings';
import { demo, demoMachine, everyPlace } from './fixture';

describe.each(['hill-cabin', 'shed-light', 'farm-tracker'])('%s as planned', (name) => {
  const { design, results } = demo(name);
  const machine = benchMachine(design, results);
  const speed = (2 * Math.PI * 300) / 60;

  test('shows what the winding sheet says it must', () => {
    const sheet = expectedReadings(design, results);
    const at = sheet.speeds.find(({ rpm }) => rpm === 300);
    const { measurements } = measurementsOf({
      ...design,
      bench: everyPlace(design, speed).map((reading) => ({ ...reading, meter: 'rms' as const })),
    });
    const first = (on: 'coil' | 'phase' | 'line', figure: Measurement['figure']) =>
      measurements.find((m) => m.place?.on === on && m.figure === figure && JSON.stringify(m.place).includes('1'));
    for (const on of ['coil', 'phase', 'line'] as const) {
      const [ohms, volts] = [first(on, 'ohms'), first(on, 'acVolts')];
      if (!ohms || !volts) continue;
      expect(predicted(machine, ohms) / sheet.ohms[on]).toBeCloseTo(1, 6);
      expect(predicted(machine, volts) / (at?.[on] ?? 0)).toBeCloseTo(1, 3);
    }
  });

  test('gives into a resistor what the full steady state gives', () => {
    const dc = { emf: 0, resistance: 6 };
    const turning = { value: 25, accuracy: 0.01, isCommon: false };
    const measurement: Measurement = {
      row: 0,
      figure: 'dcAmps',
      value: 1,
      accuracy: 0.02,
      step: 0,
      temperature: 20,
      warmth: 0,
      dc,
      speed: turning,
    };
    const side = { ...dc, resistance: dc.resistance + machine.dcCableResistance };
    const full = steadyState(machine.plan.source(20), machine.bridge, side, 25).dcAmps;
    expect(questionOf(machine, measurement).planned / full).toBeCloseTo(1, 6);
  });
});

test('copper reads 0.393 % more for each degree above 20 °C', () => {
  const machine = demoMachine('hill-cabin');
  const ohms: Measurement = {
    row: 0,
    figure: 'ohms',
    value: 1,
    accuracy: 0.02,
    step: 0,
    temperature: 20,
    warmth: 0,
    place: { on: 'phase', phase: 1 },
  };
  expect(predicted(machine, { ...ohms, temperature: 45 }) / predicted(machine, ohms)).toBeCloseTo(1 + 25 * 0.00393, 9);
});

test('a meter’s last digit weighs where the ohms are small', () => {
  const machine = demoMachine('hill-cabin');
  const ohms: Measurement = {
    row: 0,
    figure: 'ohms',
    value: 0.2,
    accuracy: 0.01,
    step: 0.1,
    temperature: 20,
    warmth: 0,
    place: { on: 'coil', coil: 1 },
  };
  expect(questionOf(machine, ohms).sigma).toBeGreaterThan(0.05);
  expect(questionOf(machine, { ...ohms, step: 0 }).sigma).toBeLessThan(0.005);
});
