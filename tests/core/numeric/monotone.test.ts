import { expect, test } from 'vitest';
import { monotoneCurve } from '../../../core/numeric/monotone';

const x = [0, 1, 2.5, 3, 6];
const y = [0, 0.1, 0.9, 1, 1];
const curve = monotoneCurve(x, y);

test('goes through its points', () => x.forEach((at, i) => expect(curve(at)).toBeCloseTo(y[i], 12)));

test('never swings past its points', () => {
  for (let at = 0; at < 6; at += 0.01) expect(curve(at + 0.01)).toBeGreaterThanOrEqual(curve(at) - 1e-12);
});

test('has no corners', () => {
  const slope = (at: number) => (curve(at + 1e-6) - curve(at)) / 1e-6;
  for (const at of x.slice(1, -1)) expect(slope(at)).toBeCloseTo(slope(at - 1e-6), 4);
});

test('is flat at a peak', () => {
  const hump = monotoneCurve([0, 1, 2], [0, 1, 0.5]);
  expect((hump(1.0001) - hump(0.9999)) / 0.0002).toBeCloseTo(0, 3);
});

test('a straight line stays one, and goes on beyond its ends', () => {
  const line = monotoneCurve([1, 2, 4, 5], [3, 5, 9, 11]);
  for (const at of [-1, 1.3, 3, 4.9, 8]) expect(line(at)).toBeCloseTo(2 * at + 1, 12);
});

test('one point is no curve', () => expect(() => monotoneCurve([1], [1])).toThrow('at least two points'));
