import { describe, expect, test } from 'vitest';
import { shortedLoss, shortedSeconds } from '../../../core/heat/brake';

const warming = (t: number) => 0.4 * (1 + 0.00393 * (t - 20));

describe('a winding shorted', () => {
  test('three phases of 20 V, 0.4 Ω and 0.3 Ω of reactance lose 1920 W', () => {
    // 40 rad/s; Z = 0.5 Ω, I = 40 A, 3 · 40² · 0.4 = 1920
    const winding = { phases: 3, emf: 0.5, reactance: 0.0075, resistanceAt: () => 0.4 };
    expect(shortedLoss(winding, 40, 20)).toBeCloseTo(1920, 9);
    expect(shortedLoss({ ...winding, phases: 1 }, 40, 20)).toBeCloseTo(640, 9);
  });

  test('without reactance a warmer winding brakes less hard, and takes ever longer', () => {
    const winding = { phases: 3, emf: 0.5, reactance: 0, resistanceAt: warming };
    expect(shortedLoss(winding, 40, 20)).toBeCloseTo(3000, 9);
    expect(shortedLoss(winding, 40, 120)).toBeCloseTo(3000 / 1.393, 9);
    // C/P₀ ∫ (1 + α x) dx = 385/3000 · (100 + 0.00393 · 100²/2) = 15.355 s
    expect(shortedSeconds(winding, 40, 385, 20, 120)).toBeCloseTo(15.355, 3);
  });

  test('where reactance rules the current is constant', () => {
    const winding = { phases: 3, emf: 0.5, reactance: 0.5, resistanceAt: warming };
    // I = 1 A however fast it turns.
    expect(shortedLoss(winding, 1000, 20)).toBeCloseTo(1.2, 5);
    // Constant current: C/(αP₀) · ln(1 + α · 100) = 385 / (0.00393 · 1.2) · 0.331460 = 27059 s.
    expect(shortedSeconds(winding, 1000, 385, 20, 120) / 27059).toBeCloseTo(1, 4);
  });

  test('has no time left at its limit', () => {
    expect(shortedSeconds({ phases: 3, emf: 0.5, reactance: 0, resistanceAt: warming }, 40, 385, 120, 110)).toBe(0);
  });
});
