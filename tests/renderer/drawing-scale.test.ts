import { describe, expect, it } from 'vitest';
import { scaleFor, tightScale } from '../../renderer/drawing/scale';

describe('scaleFor', () => {
  it('rounds outwards to whole steps', () => {
    expect(scaleFor([3, 97])).toEqual({ min: 0, max: 100, ticks: [0, 20, 40, 60, 80, 100] });
    expect(scaleFor([-0.42, 0.42])).toEqual({ min: -0.6, max: 0.6, ticks: [-0.6, -0.4, -0.2, 0, 0.2, 0.4, 0.6] });
  });

  it('begins at nothing when asked to', () => {
    expect(scaleFor([80, 95], { fromZero: true }).min).toBe(0);
    expect(scaleFor([-95, -80], { fromZero: true }).max).toBe(0);
  });

  it('has a width for one value, for none and for nothing but zeros', () => {
    for (const values of [[5], [], [0, 0], [Number.NaN], [-3]]) {
      const { min, max, ticks } = scaleFor(values);
      expect(max).toBeGreaterThan(min);
      expect(ticks.length).toBeGreaterThan(1);
      expect(ticks.every(Number.isFinite)).toBe(true);
    }
    expect(scaleFor([0, 0], { fromZero: true })).toMatchObject({ min: 0 });
  });

  it('covers every value in at most ten steps, whatever the size', () => {
    for (let power = -9; power <= 9; power++)
      for (const top of [1, 1.7, 2.3, 4.9, 6.6, 9.99]) {
        const values = [0.13 * 10 ** power, top * 10 ** power];
        const { min, max, ticks } = scaleFor(values);
        expect(min).toBeLessThanOrEqual(values[0]);
        expect(max).toBeGreaterThanOrEqual(values[1]);
        expect(ticks.length).toBeLessThanOrEqual(11);
        expect(ticks.length).toBeGreaterThanOrEqual(3);
      }
  });

  it('leaves no dust of binary fractions on its ticks', () => {
    expect(scaleFor([0, 0.7], { count: 7 }).ticks).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
  });
});

describe('tightScale', () => {
  it('ends where the values end', () => {
    expect(tightScale([0, 1234])).toEqual({ min: 0, max: 1234, ticks: [0, 250, 500, 750, 1000] });
  });

  it('divides a turn as a turn is divided', () => {
    expect(tightScale([0, 360], { count: 7, degrees: true }).ticks).toEqual([0, 90, 180, 270, 360]);
    expect(tightScale([0, 360], { count: 8, degrees: true }).ticks).toEqual([0, 45, 90, 135, 180, 225, 270, 315, 360]);
  });
});
