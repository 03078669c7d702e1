import { describe, expect, test } from 'vitest';
import { METALS } from '../../core/constants';
import { airAt } from '../../core/heat/air';
import { secondsToReach } from '../../core/heat/network';
import { naturalConvection, radiation, stirredConvection } from '../../core/heat/convection';

// Sources and tolerances: heat.source.md.

const relative = (value: number, expected: number) => Math.abs(value / expected - 1);

test.each([
  [250, 22.3e-3, 11.44e-6, 0.72],
  [300, 26.3e-3, 15.89e-6, 0.707],
  [350, 30.0e-3, 20.92e-6, 0.7],
  [400, 33.8e-3, 26.41e-6, 0.69],
  [450, 37.3e-3, 32.39e-6, 0.686],
])('air at %d K', (kelvin, conductivity, viscosity, prandtl) => {
  const air = airAt(kelvin - 273.15);
  expect(relative(air.conductivity, conductivity)).toBeLessThan(0.03);
  expect(relative(air.viscosity, viscosity)).toBeLessThan(0.03);
  expect(relative(air.prandtl, prandtl)).toBeLessThan(0.03);
});

describe('a glass fire screen at 232 °C in a room of 23 °C', () => {
  const [height, width, surface, room] = [0.71, 1.02, 232, 23];

  test('loses 7.0 W/(m²·K) by natural convection, 1060 W in all', () => {
    const h = naturalConvection(height, surface, room);
    expect(relative(h, 7.0)).toBeLessThan(0.02);
    expect(relative(h * height * width * (surface - room), 1060)).toBeLessThan(0.02);
  });

  test('radiates 2355 W if it is black', () => {
    expect(relative(radiation(1, surface, room) * height * width * (surface - room), 2355)).toBeLessThan(0.005);
  });
});

describe('a disc turning in free air', () => {
  const radius = 0.2;
  const film = 60;
  const { conductivity, viscosity } = airAt(film);
  const nusselt = (reynolds: number) => (stirredConvection(radius, (reynolds * viscosity) / radius ** 2, film) * radius) / conductivity;

  test('laminar: within a tenth of Wagner’s theory', () => {
    expect(relative(nusselt(1e5), 0.335 * Math.sqrt(1e5))).toBeLessThan(0.1);
  });

  test('turbulent: far out it follows Cobb and Saunders', () => {
    expect(relative(nusselt(1e7), 0.015 * 1e7 ** 0.8)).toBeLessThan(0.04);
  });

  test('does not jump where the rim turns turbulent', () => {
    expect(relative(nusselt(2.4e5 * 1.0001), nusselt(2.4e5 * 0.9999))).toBeLessThan(1e-3);
  });
});

test.each([
  ['PVC', 115, 70, 160],
  ['XLPE', 143, 90, 250],
])('copper in %s stands k = %d A√s/mm²', (_cover, k, from, to) => {
  // One metre of 1 mm² with k amperes for one second.
  const { resistivity, temperatureCoefficient, density, specificHeat } = METALS.copper;
  const section = 1e-6;
  const lossAt = (t: number) => (k ** 2 * resistivity * (1 + temperatureCoefficient * (t - 20))) / section;
  const seconds = secondsToReach({ lossAt, conductance: () => 0, airTemperature: from }, density * section * specificHeat, from, to)!;
  expect(Math.abs(Math.sqrt(seconds) - 1)).toBeLessThan(0.01);
});
