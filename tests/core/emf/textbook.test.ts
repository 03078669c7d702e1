import { expect, test } from 'vitest';
import type { GapSpectrum } from '../../../core/field/stage';
import { emfStage, NO_STEEL } from '../../../core/emf/stage';
import { sinePoleFlux, windingFactorVolts } from '../../../core/emf/textbook';
import { windingStage } from '../../../core/winding/stage';
import { coils, rings, spectrum, winding } from './machine';

/** A sine of 0.6 T round the disc, the same at every radius and height: the field that textbooks take. */
const sine: GapSpectrum = {
  ...spectrum(12),
  bz: spectrum(12).bz.map((_, i, { length }) => (i < length / spectrum(12).orders.length ? 0.6 : 0)),
};
const departure = (layout: Parameters<typeof winding>[0], field: GapSpectrum) => {
  const section = winding(layout);
  return emfStage(section, windingStage(section, 12), field, NO_STEEL).textbook!.departure;
};

// 4.44 f N k_w Φ, Pyrhönen, Jokinen & Hrabovcová 2008, ch. 2 (from memory).
test('volts are 4.44 times frequency, turns, winding factor and flux', () => {
  expect(windingFactorVolts(2 * Math.PI * 5, 10, 100, 0.945, 0.004)).toBeCloseTo((2 * Math.PI * 50 * 100 * 0.945 * 0.004) / Math.SQRT2, 12);
  expect(windingFactorVolts(2 * Math.PI * 5, 10, 100, 0.945, 0.004) / (4.44 * 50 * 100 * 0.945 * 0.004)).toBeCloseTo(1, 2);
});

test('a pole’s flux is two thirds and a bit of its crest over its area', () => {
  const area = (Math.PI / 6) * 0.127 * 0.046;
  expect(sinePoleFlux(0.6, 0.127, 0.046, 6)).toBeCloseTo((2 / Math.PI) * 0.6 * area, 12);
});

test('in the textbook’s field thin rings give what the short cut says, and thin coils nearly', () => {
  expect(departure({ ...rings('stacked'), legWidth: 1e-5 }, sine)).toBeCloseTo(0, 3);
  const [inner, outer] = [0.104, 0.15].map((r) => 2 * r * Math.tan(Math.PI / 9));
  expect(
    Math.abs(departure({ ...coils(9), legWidth: 1e-4, holeInnerWidth: inner - 2e-4, holeOuterWidth: outer - 2e-4 }, sine)),
  ).toBeLessThan(0.02);
});

test('where the field falls off towards the rims, the short cut gives too much', () => {
  expect(departure(rings('stacked'), spectrum(12))).toBeGreaterThan(0.01);
});
