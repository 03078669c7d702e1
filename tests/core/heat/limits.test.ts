import { expect, test } from 'vitest';
import { coilLimit } from '../../../core/heat/limits';

test('a printed former that softens at 80 °C rules over wire of class H', () => {
  expect(coilLimit(180, 80)).toEqual({ temperature: 80, where: 'surroundings.formerLimit' });
});

test('wire of class E rules in a resin that stands 150 °C', () => {
  expect(coilLimit(120, 150)).toEqual({ temperature: 120, where: 'winding.wire.thermalClass' });
});
