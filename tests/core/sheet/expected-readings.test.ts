import { expect, it } from 'vitest';
import { expectedReadings, lineResistance } from '../../../core/sheet/expected-readings';
import { designWith, resultsFor } from './fixture';

it('a meter across two lines sees two phases of a star, two thirds of one in a delta, and one where each stands by itself', () => {
  expect(lineResistance(3, 3, 'star')).toBe(6);
  expect(lineResistance(3, 3, 'delta')).toBe(2);
  expect(lineResistance(3, 3, 'separate')).toBe(3);
});

it('a ring of m equal resistors read across one is that one beside m − 1 in series', () => {
  for (const m of [3, 4, 5, 6]) expect(lineResistance(1, m, 'delta')).toBeCloseTo(1 / (1 + 1 / (m - 1)), 12);
});

it('a single phase reads the same however it is called', () => {
  for (const connection of ['star', 'delta', 'separate'] as const) expect(lineResistance(1.5, 1, connection)).toBe(1.5);
});

it('a cold room lowers the ohms by 0.393 % a degree', () => {
  const design = designWith({});
  const cold = { ...design, surroundings: { ...design.surroundings, airTemperature: 5 } };
  const [warm, chilly] = [design, cold].map((d) => expectedReadings(d, resultsFor(d)).ohms.coil);
  expect(chilly / warm).toBeCloseTo(1 - 15 * 0.00393, 12);
});

it('volts and hertz rise with the speed', () => {
  const design = designWith({});
  const { speeds } = expectedReadings(design, resultsFor(design));
  expect(speeds.map((s) => s.rpm)).toEqual([60, 150, 300]);
  expect(speeds[2].line / speeds[0].line).toBeCloseTo(5, 12);
  // Twelve poles are six pairs: one turn a second makes 6 Hz.
  expect(speeds[0].hertz).toBeCloseTo(6, 12);
});
