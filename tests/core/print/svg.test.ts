import { describe, expect, it } from 'vitest';
import { svgText } from '../../../core/print/svg';
import type { Drawing } from '../../../core/sheet/drawing';
import { planDrawing } from '../../../core/sheet/plan-drawing';
import { designWith, resultsFor } from '../sheet/fixture';

const square: Drawing = {
  title: 'A & B <1>',
  bounds: { minX: -10, minY: -20, maxX: 50, maxY: 20 },
  strokes: [
    {
      kind: 'polyline',
      layer: 'steel',
      points: [
        [0, 0],
        [10, 0],
        [10, 5],
      ],
      closed: true,
      name: 'plate',
    },
    { kind: 'circle', layer: 'outline', centre: [5, 5], radius: 2, filled: true },
    { kind: 'arc', layer: 'copper', centre: [0, 0], radius: 10, start: 0, sweep: Math.PI / 2 },
    { kind: 'arc', layer: 'copper', centre: [0, 0], radius: 10, start: 0, sweep: -1.5 * Math.PI },
    { kind: 'text', layer: 'text', at: [1, 2], text: 'a < b', size: 3, anchor: 'middle', angle: Math.PI / 2 },
  ],
};

describe('a drawing as SVG', () => {
  const svg = svgText(square);

  it('is as large as the drawing, a millimetre to the millimetre, y downwards', () => {
    expect(svg).toContain('width="60mm" height="40mm" viewBox="-10 -20 60 40"');
    expect(svg).toContain('d="M0 0 L10 0 L10 -5 Z"');
  });

  it('turns arcs the way they are given', () => {
    expect(svg).toContain('d="M10 0 A10 10 0 0 0 0 -10"');
    expect(svg).toContain('d="M10 0 A10 10 0 1 1 0 -10"');
  });

  it('writes text so that its capitals have the height asked for, and escapes it', () => {
    expect(svg).toContain('font-size="4.115" text-anchor="middle" transform="rotate(-90 1 -2)">a &lt; b</text>');
    expect(svg).toContain('<title>A &amp; B &lt;1&gt;</title>');
  });

  it('marks each element with its layer and names what has a name', () => {
    expect(svg.match(/data-layer=/g)).toHaveLength(square.strokes.length);
    expect(svg).toContain('<title>plate</title></path>');
  });
});

it('the plan of a machine has the size of the machine and no number that is none', () => {
  const design = designWith({});
  const plan = planDrawing(design, resultsFor(design));
  const svg = svgText(plan);
  const width = Number(/width="([\d.]+)mm"/.exec(svg)![1]);
  expect(width).toBeCloseTo(plan.bounds.maxX - plan.bounds.minX, 2);
  expect(width).toBeGreaterThan(336);
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
});
