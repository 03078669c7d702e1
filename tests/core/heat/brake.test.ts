import { expect, test } from 'vitest';
import { adiabaticSeconds, shortedLoss } from '../../../core/heat/brake';

test('1 kg of copper with 1000 W at 20 °C is at 120 °C after 32.5 s', () => {
  // 385 / (0.00393 · 1000) · ln(1 + 0.00393 · 100) = 97.96 · 0.33146 = 32.47
  expect(adiabaticSeconds(1000, 385, 20, 120, 0.00393)).toBeCloseTo(32.47, 2);
});

test('with a loss that does not grow it would take 38.5 s', () => {
  // 385 J/K · 100 K / 1000 W
  expect(adiabaticSeconds(1000, 385, 20, 120, 1e-9)).toBeCloseTo(38.5, 4);
});

const winding = { emf: 20, phases: 3, reactance: 0.3, resistanceAt: () => 0.4 };

test('three phases of 20 V, 0.4 Ω and 0.3 Ω of reactance lose 1920 W shorted', () => {
  // Z = 0.5 Ω, I = 40 A, 3 · 40² · 0.4 = 1920
  expect(shortedLoss(winding, 20)).toBeCloseTo(1920, 9);
});

test('without reactance a warmer winding brakes less hard', () => {
  const warming = { ...winding, reactance: 0, resistanceAt: (t: number) => 0.4 * (1 + 0.00393 * (t - 20)) };
  expect(shortedLoss(warming, 20)).toBeCloseTo(3000, 9);
  expect(shortedLoss(warming, 120)).toBeCloseTo(3000 / 1.393, 9);
});
