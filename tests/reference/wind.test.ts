import { describe, expect, test } from 'vitest';
import { TURBINE_CLASSES } from '../../core/turbine/classes';
import { powerCeiling } from '../../core/turbine/power-coefficient';
import { windPower } from '../../core/turbine/wind';
import { gamma, yearEnergy } from '../../core/turbine/yearly';

// Sources: wind.source.md.

const YEAR = 365.25 * 86400;

describe('ceiling of the power coefficient', () => {
  test('one disc: Betz', () => {
    expect(powerCeiling(1)).toBeCloseTo(16 / 27, 12);
  });

  test('two discs in a row: Newman', () => {
    expect(powerCeiling(2)).toBeCloseTo(0.64, 12);
  });

  test('many discs come to two thirds', () => {
    expect(powerCeiling(100)).toBeCloseTo(2 / 3, 4);
  });
});

test.each([
  [5, 80],
  [10, 610],
  [15, 2070],
  [20, 4900],
])('wind of %d m/s carries about %d W/m²', (wind, watts) => {
  const radius = Math.sqrt(1 / Math.PI);
  expect(Math.abs(windPower(wind, radius, 1.225) - watts)).toBeLessThan(5);
});

test.each([
  [0.5, Math.sqrt(Math.PI)],
  [1, 1],
  [1.25, 0.9064024771],
  [4 / 3, 0.8929795116],
  [1.5, 0.8862269255],
  [1.75, 0.9190625268],
  [5, 24],
])('Γ(%d) is in the table', (x, value) => {
  expect(gamma(x)).toBeCloseTo(value, 9);
});

/** A machine that takes v³ watts in any wind, in steps of a hundredth of the mean. */
const cubic = (mean: number, top: number) =>
  Array.from({ length: 100 * top + 1 }, (_, i) => (i * mean) / 100).map((wind) => ({ wind, watts: wind ** 3 }));

describe('energy of a year', () => {
  test('Rayleigh: the mean of v³ is 6/π times the cube of the mean', () => {
    expect(yearEnergy(cubic(5, 10), 5, 2) / YEAR / 5 ** 3).toBeCloseTo(6 / Math.PI, 3);
  });

  test('exponential: six times the cube of the mean', () => {
    expect(yearEnergy(cubic(4, 40), 4, 1) / YEAR / 4 ** 3).toBeCloseTo(6, 3);
  });

  test('Weibull of shape 3: 1/Γ(4/3)³ times the cube of the mean', () => {
    expect(yearEnergy(cubic(6, 6), 6, 3) / YEAR / 6 ** 3).toBeCloseTo(0.8929795116 ** -3, 3);
  });

  test('a Rayleigh site blows above its mean for exp(−π/4) of the time', () => {
    const switched = [
      { wind: 0, watts: 0 },
      { wind: 6, watts: 0 },
      { wind: 6, watts: 1 },
      { wind: 100, watts: 1 },
    ];
    expect(yearEnergy(switched, 6, 2) / YEAR).toBeCloseTo(Math.exp(-Math.PI / 4), 6);
  });
});

test('classes of small turbines', () => {
  expect(TURBINE_CLASSES.map(({ name, referenceWind, meanWind }) => [name, referenceWind, meanWind])).toEqual([
    ['I', 50, 10],
    ['II', 42.5, 8.5],
    ['III', 37.5, 7.5],
    ['IV', 30, 6],
  ]);
});
