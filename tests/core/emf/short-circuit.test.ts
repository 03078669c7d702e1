import { expect, test } from 'vitest';
import { poleAmpereTurns, shortedPeak } from '../../../core/emf/short-circuit';

test('without inductance the current is Ohm’s law, without resistance the crest is twice the steady one', () => {
  expect(shortedPeak(10, 0.5, 0)).toBeCloseTo(20, 12);
  expect(shortedPeak(10, 0, 0.5)).toBeCloseTo(40, 12);
});

// Stepped: L i′ + R i = Ê cos(ωt + φ) from i = 0, over the instants of switching.
test('it is the greatest crest of the stepped circuit, whenever switched', () => {
  for (const [resistance, reactance] of [
    [0.2, 1],
    [0.5, 0.5],
    [1, 0.3],
  ]) {
    let most = 0;
    for (let k = 0; k < 48; k++) {
      let i = 0;
      const step = 2e-3;
      for (let x = 0; x < 7; x += step) {
        const rate = (at: number, current: number) => (10 * Math.cos(at + (2 * Math.PI * k) / 48) - resistance * current) / reactance;
        i += step * rate(x + step / 2, i + (step / 2) * rate(x, i));
        most = Math.max(most, Math.abs(i));
      }
    }
    const crest = shortedPeak(10, resistance, reactance);
    expect(most).toBeLessThan(1.001 * crest);
    expect(most).toBeGreaterThan(0.995 * crest);
  }
});

test('three rings act on a pole with all the turns of one, six with twice as many, coils with their own', () => {
  expect(poleAmpereTurns({ kind: 'serpentine' }, 3, 40, 10)).toBe(400);
  expect(poleAmpereTurns({ kind: 'serpentine' }, 6, 40, 10) / 400).toBeCloseTo(1.91, 2);
  expect(poleAmpereTurns({ kind: 'concentrated' }, 6, 40, 10)).toBe(400);
});
