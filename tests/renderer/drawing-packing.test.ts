import { describe, expect, it } from 'vitest';
import { spreadCircles } from '../../renderer/drawing/packing';

const nearest = (points: { x: number; y: number }[]) =>
  points.reduce((least, a, i) => points.slice(i + 1).reduce((l, b) => Math.min(l, Math.hypot(a.x - b.x, a.y - b.y)), least), Infinity);

describe('spreadCircles', () => {
  it('draws every circle inside the window', () => {
    for (const count of [1, 2, 7, 60, 90, 133]) {
      const circles = spreadCircles(count, 22, 12, 0.9);
      expect(circles).toHaveLength(count);
      for (const { x, y } of circles) {
        expect(x).toBeGreaterThanOrEqual(0.45 - 1e-9);
        expect(x).toBeLessThanOrEqual(21.55 + 1e-9);
        expect(y).toBeGreaterThanOrEqual(0.45 - 1e-9);
        expect(y).toBeLessThanOrEqual(11.55 + 1e-9);
      }
    }
  });

  it('lays wires that fit by hand without overlap', () => {
    for (const [width, height] of [
      [22, 12],
      [10, 10],
      [5, 30],
    ] as const)
      for (const diameter of [0.5, 1, 1.6]) {
        const count = Math.floor((0.6 * width * height) / ((Math.PI / 4) * diameter ** 2));
        expect(nearest(spreadCircles(count, width, height, diameter))).toBeGreaterThanOrEqual(diameter);
      }
  });

  it('puts one circle in the middle and draws nothing for none', () => {
    expect(spreadCircles(1, 10, 4, 1)).toEqual([{ x: 5, y: 2 }]);
    expect(spreadCircles(0, 10, 4, 1)).toEqual([]);
  });
});
