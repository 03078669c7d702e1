import { describe, expect, test } from 'vitest';
import { adiabaticSeconds, shortedLoss, shortedSeconds } from '../../../core/heat/brake';

describe('copper that keeps its heat at constant current', () => {
  test('1 kg with 1000 W at 20 °C is at 120 °C after 32.5 s', () => {
    // 385 / (0.00393 · 1000) · ln(1 + 0.00393 · 100) = 97.96 · 0.33146 = 32.47
    expect(adiabaticSeconds(1000, 385, 20, 120, 0.00393)).toBeCloseTo(32.47, 2);
  });

  test('with a loss that does not grow it would take 38.5 s', () => {
    // 385 J/K · 100 K / 1000 W
    expect(adiabaticSeconds(1000, 385, 20, 120, 1e-9)).toBeCloseTo(38.5, 4);
  });
});

const warming = (t: number) => 0.4 * (1 + 0.00393 * (t - 20));

describe('a winding shorted', () => {
  test('three phases of 20 V, 0.4 Ω and 0.3 Ω of reactance lose 1920 W', () => {
    // 40 rad/s; Z = 0.5 Ω, I = 40 A, 3 · 40² · 0.4 = 1920
    const winding = { phases: 3, emf: 0.5, reactance: 0.0075, resistanceAt: () => 0.4 };
    expect(shortedLoss(winding, 40, 20)).toBeCloseTo(1920, 9);
    expect(shortedLoss({ ...winding, phases: 1 }, 40, 20)).toBeCloseTo(640, 9);
  });

  test('without reactance a warmer winding brakes less hard, and takes longer to its limit than at constant current', () => {
    const winding = { phases: 3, emf: 0.5, reactance: 0, resistanceAt: warming };
    expect(shortedLoss(winding, 40, 20)).toBeCloseTo(3000, 9);
    expect(shortedLoss(winding, 40, 120)).toBeCloseTo(3000 / 1.393, 9);
    // C/P₀ ∫ (1 + α x) dx = 385/3000 · (100 + 0.00393 · 100²/2) = 15.355 s
    expect(shortedSeconds(winding, 40, 385, 20, 120)).toBeCloseTo(15.355, 3);
    expect(adiabaticSeconds(3000, 385, 20, 120, 0.00393)).toBeLessThan(15.355);
  });

  test('where reactance rules the current is constant', () => {
    const winding = { phases: 3, emf: 0.5, reactance: 0.5, resistanceAt: warming };
    // I = 1 A however fast it turns.
    expect(shortedLoss(winding, 1000, 20)).toBeCloseTo(1.2, 5);
    const closed = adiabaticSeconds(shortedLoss(winding, 1000, 20), 385, 20, 120, 0.00393);
    expect(shortedSeconds(winding, 1000, 385, 20, 120) / closed).toBeCloseTo(1, 4);
  });

  test('has no time left at its limit', () => {
    expect(shortedSeconds({ phases: 3, emf: 0.5, reactance: 0, resistanceAt: warming }, 40, 385, 120, 110)).toBe(0);
  });
});
