/*
 * Laws
 *   ceiling     the wheel never gives more than its best coefficient of the wind's power
 *   cube        twice the wind at the same tip-speed ratio gives eight times the power
 *   energy      a windier site gives more, until its winds outrun the curve
 */
import { expect, test } from 'vitest';
import { peakedCoefficient } from '../../core/turbine/power-coefficient';
import { wheelPower, windPower, type Wheel } from '../../core/turbine/wind';
import { yearEnergy } from '../../core/turbine/yearly';

const wheel: Wheel = { radius: 1.2, airDensity: 1.2, coefficient: peakedCoefficient(0.38, 6.5, 12) };

test('shaft power is never above the best coefficient of what the wind has', () => {
  for (let wind = 1; wind < 20; wind++)
    for (let speed = 0; speed < 150; speed += 5)
      expect(wheelPower(wheel, wind, speed)).toBeLessThanOrEqual(0.38 * windPower(wind, 1.2, 1.2) * (1 + 1e-12));
});

test('twice the wind at the same tip-speed ratio gives eight times the power', () => {
  expect(wheelPower(wheel, 12, 60) / wheelPower(wheel, 6, 30)).toBeCloseTo(8, 10);
});

test('no wind gives nothing', () => expect(wheelPower(wheel, 0, 30)).toBe(0));

test('a windier site gives more', () => {
  const curve = Array.from({ length: 31 }, (_, i) => ({ wind: i * 0.5, watts: i < 6 ? 0 : (i * 0.5) ** 3 }));
  const energies = [3, 4, 5, 6].map((mean) => yearEnergy(curve, mean, 2));
  energies.slice(1).forEach((energy, i) => expect(energy).toBeGreaterThan(energies[i]));
});
