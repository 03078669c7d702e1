import { expect, test } from 'vitest';
import { diversionLoad } from '../../../core/charging/diversion';

// By hand: 800 W and a quarter are 1000 W; at 28 V that is 784 V² / 1000 W = 0.784 Ω.
test('a diversion load takes a quarter more than the whole output', () => {
  const load = diversionLoad(800, 28);
  expect(load.watts).toBe(1000);
  expect(load.resistance).toBeCloseTo(0.784);
});
