import { describe, expect, it } from 'vitest';
import { pathOf } from '../../renderer/drawing/strokes';
import { centre, fitted, panned, zoomed } from '../../renderer/drawing/view-box';

const whole = fitted({ minX: -100, minY: -50, maxX: 100, maxY: 70 });

describe('the view of a drawing', () => {
  it('shows the whole drawing, y turned down', () => {
    expect(whole).toEqual({ x: -100, y: -70, width: 200, height: 120 });
  });

  it('keeps the point under the pointer where it is when magnified', () => {
    const at = { x: 40, y: -20 };
    const near = zoomed(whole, whole, 4, at);
    expect(near.width).toBeCloseTo(50, 9);
    expect((at.x - near.x) / near.width).toBeCloseTo((at.x - whole.x) / whole.width, 9);
    expect((at.y - near.y) / near.height).toBeCloseTo((at.y - whole.y) / whole.height, 9);
  });

  it('never goes farther out than the whole, nor in without end', () => {
    expect(zoomed(whole, whole, 0.2)).toEqual(whole);
    let view = whole;
    for (let i = 0; i < 100; i++) view = zoomed(view, whole, 2);
    expect(view.width).toBeGreaterThan(1);
  });

  it('does not lose the drawing out of sight', () => {
    const far = panned(zoomed(whole, whole, 4), whole, 1e6, -1e6);
    const { x, y } = centre(far);
    expect(x).toBeLessThanOrEqual(100 + 1e-9);
    expect(y).toBeGreaterThanOrEqual(-70 - 1e-9);
  });
});

describe('pathOf', () => {
  it('turns y down', () => {
    expect(pathOf({ kind: 'polyline', layer: 'outline', closed: true, points: [[0, 0], [2, 3], [4, 0]] })).toBe('M0 0 L2 -3 L4 0 Z'); // prettier-ignore
  });

  it('draws an arc counter-clockwise as the core means it', () => {
    expect(pathOf({ kind: 'arc', layer: 'outline', centre: [0, 0], radius: 2, start: 0, sweep: Math.PI / 2 })).toBe('M2 0 A2 2 0 0 0 0 -2');
    expect(pathOf({ kind: 'arc', layer: 'outline', centre: [0, 0], radius: 2, start: 0, sweep: -1.5 * Math.PI })).toBe(
      'M2 0 A2 2 0 1 1 0 -2',
    );
  });
});
