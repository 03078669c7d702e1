import { expect, test } from 'vitest';
import type { MagnetsSection } from '../../../core/magnets/section';
import { magnetsStage } from '../../../core/magnets/stage';

const magnets: MagnetsSection = {
  shape: { kind: 'block', radial: 0.046, tangential: 0.03, axial: 0.01 },
  grade: 'N42',
  remanence: 1.3,
  remanenceTempCoefficient: -0.0012,
  intrinsicCoercivity: 955e3,
  recoilPermeability: 1.05,
  maxTemperature: 80,
};
const severities = (section: MagnetsSection, temperature: number) =>
  magnetsStage(section, temperature).cautions.map((c) => `${c.severity} ${c.where}`);

test('cool magnets of a sound shape raise no caution', () => {
  const result = magnetsStage(magnets, 40);
  expect(result.cautions).toEqual([]);
  expect(result.remanence).toBeCloseTo(1.3 * 0.976, 12);
  expect(result.intrinsicCoercivity).toBeCloseTo(955e3 * 0.87, 6);
});

test('above the grade’s limit is a danger, close below it a warning', () => {
  expect(severities(magnets, 75)).toContain('warning surroundings.magnetTemperature');
  expect(severities(magnets, 90)).toContain('danger surroundings.magnetTemperature');
});

test('a magnet too flat for its coercivity is questioned at any temperature', () => {
  const thin: MagnetsSection = { ...magnets, shape: { kind: 'cylinder', diameter: 0.03, axial: 0.001 } };
  expect(severities(thin, 0)).toEqual(['warning magnets.shape.axial']);
  expect(severities({ ...thin, intrinsicCoercivity: 1592e3 }, 0)).toEqual([]);
});

test('without a coercivity nothing is said about the knee', () => {
  const thin: MagnetsSection = { ...magnets, shape: { kind: 'cylinder', diameter: 0.03, axial: 0.001 }, intrinsicCoercivity: undefined };
  const result = magnetsStage(thin, 60);
  expect(result.intrinsicCoercivity).toBeUndefined();
  expect(result.cautions).toEqual([]);
});

test('a remanence that the named grade is not sold with is questioned', () => {
  expect(severities({ ...magnets, remanence: 1.2 }, 20)).toEqual(['warning magnets.remanence']);
});

test('magnets with nothing left are a danger, and still yield numbers', () => {
  const result = magnetsStage({ ...magnets, remanenceTempCoefficient: -0.01 }, 150);
  expect(result.remanence).toBe(0);
  expect(result.cautions.map((c) => c.where)).toContain('magnets.remanenceTempCoefficient');
});
