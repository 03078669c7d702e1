import { describe, expect, test } from 'vitest';
import { fit } from '../../../core/bench/fit';
import { benchMachine } from '../../../core/bench/machine';
import { questionOf } from '../../../core/bench/predict';
import { measurementsOf } from '../../../core/bench/readings';
import type { Reading } from '../../../core/design/readings';
import { createRandom } from '../../../core/numeric/random';
import { built, readOff } from './built';
import { demo, demoMachine, everyPlace, questionsAs } from './fixture';
import { randomGeometry, randomWinding, woundOn } from './random-machines';

const healthy = { family: 'healthy' as const, subject: '' };

describe('1,000 machines whose field and resistance are off by up to a tenth, meters good to 2 %', () => {
  const random = createRandom(19);
  const uniform = () => random.uniform();
  const inside = { field: 0, resistance: 0 };
  const RUNS = 1000;
  const machines = Array.from({ length: 10 }, () => {
    const geometry = randomGeometry(uniform);
    const { design, results } = woundOn(geometry, randomWinding(uniform));
    const coils = results.stages.winding.coils.length;
    const exact = { field: 1, resistance: 1, coil: Array.from({ length: coils }, () => 1) };
    const wanted: Reading[] = everyPlace(design)
      .slice(0, coils + 1)
      .map((reading) => ({ ...reading, hertz: (reading.speed ?? 0) * (design.discs.poles / 4 / Math.PI) }));
    const bench = readOff(built(geometry, design.winding, healthy, exact), wanted, () => 0);
    return { design, bench, planned: benchMachine(design, results) };
  });
  for (let run = 0; run < RUNS; run++) {
    const { design, bench, planned } = machines[run % machines.length];
    const truth = { field: 0.9 + 0.2 * uniform(), resistance: 0.9 + 0.2 * uniform() };
    const noisy = (value: number | undefined, factor: number) => (value === undefined ? {} : value * factor * (1 + 0.02 * random.normal()));
    const read = bench.map(
      (reading) => ({ ...reading, ohms: noisy(reading.ohms, truth.resistance), volts: noisy(reading.volts, truth.field) }) as Reading,
    );
    const found = fit(
      planned,
      measurementsOf({ ...design, bench: read }).measurements.map((m) => questionOf(planned, m)),
    );
    for (const key of ['field', 'resistance'] as const) {
      const { low, high } = found[key] ?? { low: NaN, high: NaN };
      if (low <= truth[key] && truth[key] <= high) inside[key]++;
    }
  }

  console.log(`of ${RUNS} fits ${inside.field} hold the true field in their 95 % interval, ${inside.resistance} the true resistance`);

  test.each(['field', 'resistance'] as const)('the true %s lies within the stated 95 %% interval in 93 to 97 %% of them', (key) => {
    expect(inside[key] / RUNS).toBeGreaterThanOrEqual(0.93);
    expect(inside[key] / RUNS).toBeLessThanOrEqual(0.97);
  });
});

describe('the hill cabin', () => {
  const { design } = demo('hill-cabin');
  const planned = demoMachine('hill-cabin');

  test('read exactly is exactly as planned, whatever loads it', () => {
    const dc: Reading = {
      label: '',
      on: 'dc',
      number: 1,
      speed: 25,
      speedBy: 'tachometer',
      amps: 1,
      volts: 1,
      load: 'resistor',
      loadResistance: 5,
    };
    const found = fit(planned, questionsAs(planned, planned, design, [...everyPlace(design), dc]));
    expect(found.field?.value).toBeCloseTo(1, 4);
    expect(found.resistance?.value).toBeCloseTo(1, 4);
    expect(Math.max(...found.residuals.map(({ deviations }) => Math.abs(deviations)))).toBeLessThan(1e-3);
  });

  test('from ohms alone tells nothing of the field', () => {
    const ohms = everyPlace(design).map(({ label, on, number, ohms }): Reading => ({ label, on, number, ohms }));
    const found = fit(planned, questionsAs(planned, planned, design, ohms));
    expect(found.field).toBeUndefined();
    expect(found.resistance?.value).toBeCloseTo(1, 6);
  });

  test('from one reading has the meter’s own accuracy for its interval', () => {
    const [one] = everyPlace(design);
    const found = fit(planned, questionsAs(planned, planned, design, [{ ...one, ohms: undefined }]));
    expect(found.degrees).toBe(0);
    expect((found.field?.high ?? 0) - (found.field?.low ?? 0)).toBeGreaterThan(0.08);
  });

  test('turned by a drill, its field is known no better than the drill', () => {
    const drilled = everyPlace(design).map((reading) => ({ ...reading, speedBy: 'drill' as const }));
    const byDrill = fit(planned, questionsAs(planned, planned, design, drilled));
    const width = ({ low, high }: { low: number; high: number }) => high - low;
    expect(byDrill.field && width(byDrill.field)).toBeDefined();
    expect(byDrill.field?.value).toBeCloseTo(1, 4);
  });
});
