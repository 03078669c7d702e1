import { expect, test } from 'vitest';
import { THERMAL_CLASSES } from '../../core/heat/limits';

// Source: cover-class.source.md.
test.each([
  ['Y', 90],
  ['A', 105],
  ['E', 120],
  ['B', 130],
  ['F', 155],
  ['H', 180],
  ['N', 200],
  ['R', 220],
])('class %s is %d °C', (letter, temperature) => {
  expect(THERMAL_CLASSES.find((each) => each.letter === letter)?.temperature).toBe(temperature);
});

test('there are no other letters', () => {
  expect(THERMAL_CLASSES).toHaveLength(8);
});
