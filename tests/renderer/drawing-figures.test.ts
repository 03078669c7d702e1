import { describe, expect, it } from 'vitest';
import { coilDrawing, type CurvePoint, planDrawing, sectionDrawing } from '../../core';
import { layerInk, lineInk } from '../../renderer/drawing/inks';
import { workingRange } from '../../renderer/drawing/working-range';
import { bareLength } from '../../renderer/units';
import { legDrawing } from '../../renderer/worksheets/wire/leg-drawing';
import { designWith, resultsFor, serpentine } from '../core/sheet/fixture';

describe('a leg cut across', () => {
  const circles = (drawing: ReturnType<typeof legDrawing>['drawing']) => drawing.strokes.filter((s) => s.kind === 'circle');

  it('shows every strand with its metal and its covering', () => {
    const design = designWith({ turns: 60, wire: { ...designWith({}).winding.wire, inHand: 2 } });
    const leg = legDrawing(design, resultsFor(design));
    expect([leg.strandsIn, leg.strandsOut]).toEqual([120, 0]);
    expect(circles(leg.drawing)).toHaveLength(240);
  });

  it('puts the strands of turns that do not fit beside the window', () => {
    const design = designWith({ layout: serpentine, turns: 60 });
    const results = resultsFor(design);
    results.coils.fits = false;
    results.stages.wire.turnsTooMany = 9;
    const leg = legDrawing(design, results);
    expect([leg.strandsIn, leg.strandsOut]).toEqual([51, 9]);
    const beyond = circles(leg.drawing).filter((c) => c.kind === 'circle' && c.centre[0] > 10);
    expect(beyond).toHaveLength(9);
    for (const c of beyond) expect(c.kind === 'circle' && c.centre[0] + c.radius).toBeLessThanOrEqual(leg.drawing.bounds.maxX);
  });

  it('draws the thinnest wire without end of circles', () => {
    const design = designWith({
      turns: 5000,
      wire: { ...designWith({}).winding.wire, inHand: 20, conductorDiameter: 5e-5, overallDiameter: 5e-5 },
    });
    const leg = legDrawing(design, resultsFor(design));
    expect(leg.strandsIn).toBe(100_000);
    expect(circles(leg.drawing).length).toBeLessThanOrEqual(6000);
  });
});

describe.each([
  ['plan', planDrawing],
  ['section', sectionDrawing],
  ['coil', coilDrawing],
])('the %s in inches', (_, draw) => {
  it.each([designWith({}), designWith({ layout: serpentine })])('says the lengths of the one in millimetres over 25.4', (design) => {
    const inches = bareLength({ length: 'in', wire: 'awg', temperature: 'C' });
    const lengths = (length?: typeof inches) =>
      draw(design, resultsFor(design), length).strokes.flatMap((stroke) => {
        const found =
          stroke.kind === 'text' && !/turn/.test(stroke.text) ? stroke.text.match(/(?<![\d.])\d+(?:\.\d+)?(?![A-Z\d.°])/g) : null;
        return found ?? [];
      });
    const [inMm, inInches] = [lengths().map(Number), lengths(inches).map(Number)];
    expect(inMm.length).toBeGreaterThan(3);
    expect(inInches.length).toBe(inMm.length);
    // Half of the last digit of either.
    inMm.forEach((mm, i) => expect(Math.abs(inInches[i] - mm / 25.4)).toBeLessThanOrEqual(0.0005 + 0.05 / 25.4 + 1e-9));
  });
});

describe('inks', () => {
  it('tell six phases apart by colour and by dash, by day and by night', () => {
    for (const mode of ['light', 'dark'] as const) {
      const phases = [0, 1, 2, 3, 4, 5].map((i) => lineInk(i, mode));
      expect(new Set(phases.map((p) => p.colour)).size).toBe(6);
      expect(new Set(phases.map((p) => p.dash)).size).toBe(6);
      expect(layerInk('phase-3', mode).stroke).toBe(lineInk(2, mode).colour);
    }
  });

  it('tell north from south', () => {
    for (const mode of ['light', 'dark'] as const)
      expect(layerInk('magnet-north', mode).fill).not.toBe(layerInk('magnet-south', mode).fill);
  });
});

describe('the range a machine works in', () => {
  const point = (rpm: number) => ({ rpm }) as CurvePoint;
  const curve = [100, 200, 300, 400, 500, 1000].map(point);

  it('ends a little past the fastest that the wind turns it', () => {
    const results = resultsFor(designWith({}));
    expect(workingRange({ ...results, curve }).map((p) => p.rpm)).toEqual([100, 200, 300, 400]);
  });

  it('is the whole curve where the wheel does not turn', () => {
    const results = resultsFor(designWith({}));
    const still = { ...results, curve, cutIn: { rpm: null, wind: null }, rated: { ...results.rated, rpm: 0 } };
    expect(workingRange(still)).toHaveLength(6);
  });
});
