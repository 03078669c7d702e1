import { expect, test } from 'vitest';
import { stillSpeedAt, stillSpeeds } from '../../../core/turbine/strobe';

const rpm = (speed: number) => (speed * 60) / (2 * Math.PI);

test('three blades at 30 pictures a second look still at 600, 1200 and 1800 rpm', () => {
  // 60 · 30 · k / 3
  const found = stillSpeeds(30, 3, (2000 * 2 * Math.PI) / 60);
  expect(found.map(({ steps }) => steps)).toEqual([1, 2, 3]);
  found.forEach(({ speed }, i) => expect(rpm(speed)).toBeCloseTo(600 * (i + 1), 9));
});

test('nothing looks still below the first of them', () => expect(stillSpeeds(30, 3, 60)).toEqual([]));

test('62 Hz from 6 pole pairs, 620 rpm, was the first of them', () => {
  const { steps, speed, off } = stillSpeedAt(30, 3, 62, 6);
  expect(steps).toBe(1);
  expect(rpm(speed)).toBeCloseTo(600, 9);
  // 620 rpm is 1.0333 steps of 600.
  expect(off).toBeCloseTo(1 / 30, 9);
});
