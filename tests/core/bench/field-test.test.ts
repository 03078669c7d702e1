import { describe, expect, test } from 'vitest';
import { coefficientFit, fieldTest } from '../../../core/bench/field-test';
import { plantOf } from '../../../core/chain/plant';
import type { Reading } from '../../../core/design/readings';
import { turbineStage } from '../../../core/turbine/stage';
import { demo } from './fixture';

const { design, results } = demo('hill-cabin');
const { stages } = results;
const plant = plantOf(design, stages.field, stages.winding, stages.wire, stages.emf);
const wheel = turbineStage(design.turbine, design.site);
const say = (reading: Partial<Reading>) => fieldTest({ label: '', on: 'dc', number: 1, ...reading }, 0, design, plant, wheel);

describe('a wheel of 2 m in air of 1.2 kg/m³', () => {
  // ½ · 1.2 · π · 6³ = 407 W.
  test('claimed to give 120 W in 6 m/s takes 29 % of the wind', () => {
    const test = say({ wind: 6, volts: 24, amps: 5 });
    expect(test?.windWatts).toBeCloseTo(0.6 * Math.PI * 216, 6);
    expect(test?.overall).toBeCloseTo(120 / (0.6 * Math.PI * 216), 6);
    expect(test?.verdict).toBe('possible');
    expect(test?.wrong).toEqual([]);
  });

  test('a claim a little above 16/27 is doubtful, one far above impossible, and the wind is the likeliest to be wrong', () => {
    const doubtful = say({ wind: 6, volts: 26, amps: 10 });
    expect(doubtful?.verdict).toBe('doubtful');
    const impossible = say({ wind: 6, volts: 26, amps: 16 });
    expect(impossible?.verdict).toBe('impossible');
    expect(impossible?.wrong[0].what).toBe('wind');
    // The wind that would do: by the cube root.
    const over = impossible ? impossible.coefficient / impossible.ceiling : NaN;
    expect(impossible?.wrong[0].needed).toBeCloseTo(6 * Math.cbrt(over), 9);
    for (const [i, wrong] of (impossible?.wrong ?? []).entries())
      if (i > 0) expect(wrong.deviations).toBeGreaterThanOrEqual(impossible?.wrong[i - 1].deviations ?? 0);
  });

  test('5 % of wind are 15 % of power, and gusts widen the band', () => {
    const calm = say({ wind: 6, volts: 24, amps: 5 });
    const gusty = say({ wind: 6, windSpread: 2, volts: 24, amps: 5 });
    const width = (t: ReturnType<typeof say>) => (t ? Math.log(t.high / t.low) : NaN);
    expect(width(calm)).toBeCloseTo(2 * 3 * 1.96 * 0.05, 1);
    expect(width(gusty)).toBeGreaterThan(width(calm));
    // 1 + 3 (s/v)² with s half of the spread.
    expect((gusty?.windWatts ?? 0) / (calm?.windWatts ?? 1)).toBeCloseTo(1 + 3 / 36, 6);
  });

  test('two rows may take 0.64 where one may take 0.593', () => {
    const two = fieldTest(
      { label: '', on: 'dc', number: 1, wind: 6, volts: 25, amps: 10 },
      0,
      { ...design, turbine: { ...design.turbine, rows: 2 } },
      plant,
      wheel,
    );
    expect(two?.ceiling).toBeCloseTo(0.64, 9);
    expect(two?.verdict).toBe('possible');
  });

  test('with the speed known the losses of the generator are given back to the wheel', () => {
    const test = say({ wind: 7, speed: 38, speedBy: 'tachometer', volts: 25.5, amps: 6 });
    expect(test?.efficiency).toBeGreaterThan(0.3);
    expect(test?.efficiency).toBeLessThan(1);
    expect(test?.coefficient).toBeCloseTo((test?.overall ?? 0) / (test?.efficiency ?? 1), 9);
    expect(test?.tipSpeedRatio).toBeCloseTo(38 / 7, 9);
  });
});

test('a reading without wind is no field test', () => {
  expect(say({ volts: 24, amps: 5 })).toBeUndefined();
  expect(say({ wind: 5, amps: 5 })).toBeUndefined();
});

test('our own match curve, read as a field test, gives back the plan’s coefficient', () => {
  const tests = results.match
    .filter(({ wind, dcAmps }) => wind > 5 && wind < 10 && dcAmps > 1)
    .map(({ wind, rpm, dcVolts, dcAmps, coilTemperature }) =>
      say({ wind, speed: (rpm * 2 * Math.PI) / 60, speedBy: 'tachometer', volts: dcVolts, amps: dcAmps, temperature: coilTemperature }),
    )
    .filter((test) => test !== undefined);
  expect(tests.length).toBeGreaterThan(3);
  const factor = coefficientFit(tests);
  expect(factor?.value).toBeGreaterThan(0.98);
  expect(factor?.value).toBeLessThan(1.02);
});
