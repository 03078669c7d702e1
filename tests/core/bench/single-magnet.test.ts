import { expect, test } from 'vitest';
import { singleMagnetLinkage } from '../../../core/bench/single-magnet';
import { shapeModel } from '../../../core/magnets/shapes';
import type { Design } from '../../../core/design/schema';
import { demo } from './fixture';
import { geometryOf } from './random-machines';

const cabin = demo('hill-cabin').design;
/** Without steel a magnet is its own field and no images. */
const wooden: Design = { ...cabin, discs: { ...cabin.discs, backing: { kind: 'none' } } };

test.each([
  ['on steel', cabin],
  ['on wood', wooden],
])('all places together give the machine’s harmonics, %s', (_, design) => {
  const { gap, shape } = geometryOf(design);
  const [fundamental, third] = shape.linkage[0];
  const single = singleMagnetLinkage(design, gap, fundamental);
  expect(12 * single[5]).toBeCloseTo(fundamental, 12);
  // The third is a small difference of large parts: 8 % of it is 0.2 % of the fundamental.
  expect(Math.abs(12 * single[17] - third) / fundamental).toBeLessThan(0.003);
});

test('one place’s linkage with a turn agrees with its field summed over the turn’s area', () => {
  const { gap, shape } = geometryOf(wooden);
  const single = singleMagnetLinkage(wooden, gap, shape.linkage[0][0]);
  const { magnets, discs, winding } = wooden;
  if (winding.layout.kind !== 'concentrated') throw new Error('the hill cabin has coils by themselves');
  const { holeInnerRadius: a, holeOuterRadius: b, holeInnerWidth: v, holeOuterWidth: w, legWidth } = winding.layout;
  const model = shapeModel(magnets.shape);
  const into = model.fieldInto(magnets.shape, magnets.shape.axial, 1e-6);
  const out = [0, 0, 0];
  /** Both magnets of the place, turned by an angle against the coil. */
  const bz = (x: number, y: number, angle: number) => {
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    out.fill(0);
    for (const side of [-1, 1]) into(x * c + y * s - discs.pitchRadius, y * c - x * s, (side * (gap + magnets.shape.axial)) / 2, 1, out);
    return out[2];
  };
  /** Share of the turns round a place: 1 in the hole, falling to 0 across the leg. */
  const slope = (w - v) / 2 / (b - a);
  const shareAt = (x: number, y: number) => {
    const beyond = Math.max(a - x, x - b, (Math.abs(y) - (v / 2 + slope * (x - a))) / Math.hypot(1, slope));
    return Math.min(1, Math.max(0, 1 - beyond / legWidth));
  };
  const step = 0.0015;
  const linked = (angle: number) => {
    let sum = 0;
    for (let x = a - legWidth + step / 2; x < b + legWidth; x += step)
      for (let y = -0.05 + step / 2; y < 0.05; y += step) {
        const share = shareAt(x, y);
        if (share > 0) sum += share * bz(x, y, angle) * step * step;
      }
    return sum;
  };
  const bySeries = (angle: number) => single.reduce((sum, l, i) => sum + l * Math.cos((i + 1) * angle), 0);
  const pitch = (2 * Math.PI) / discs.poles;
  // A constant flux drops out of both: differences against the far side of the turn.
  const scale = (bySeries(0) - bySeries(Math.PI)) / (linked(0) - linked(Math.PI));
  for (const share of [0.25, 0.5, 0.75, 1, 1.5]) {
    const [series, area] = [bySeries(share * pitch) - bySeries(Math.PI), scale * (linked(share * pitch) - linked(Math.PI))];
    expect(Math.abs(series - area) / (bySeries(0) - bySeries(Math.PI))).toBeLessThan(0.02);
  }
});

test('every magnet passes a serpentine ring alike', () => {
  const { design, results } = demo('shed-light');
  expect(design.winding.layout.kind).toBe('serpentine');
  expect(results.stages.emf.coilEmf.length).toBeGreaterThan(0);
});
