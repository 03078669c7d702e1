import { expect, test } from 'vitest';
import { gapLength } from '../../../core/field/gap';

const layer = { thickness: 0.006, phases: 3, skin: 0.0005, runningClearance: 0.0015 };

test('stacked phases each take their thickness, phases in one layer take it once', () => {
  expect(gapLength({ ...layer, stacked: false })).toBeCloseTo(0.01, 12);
  expect(gapLength({ ...layer, stacked: true })).toBeCloseTo(0.022, 12);
});
