/*
 * Laws
 *   ceiling     the wheel never gives more than its best coefficient of the wind's power
 *   cube        twice the wind at the same tip-speed ratio gives eight times the power
 *   matched     where wheel and generator balance, the generator takes what the wheel gives, and no more than the wind's best
 *   faster      in more wind the pair settles faster and gives more
 *   energy      a windier site gives more, until its winds outrun the curve
 */
import { expect, test } from 'vitest';
import { balances, settledSpeed, type LoadPoint } from '../../core/turbine/match';
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

/** Generators of several strengths on a battery: drag, then torque that grows past cut-in and bends over with reactance. */
const loads = [5, 12, 25, 60].flatMap((cutIn) =>
  [0.5, 2, 8].map((stiffness): LoadPoint[] =>
    Array.from({ length: 120 }, (_, i) => (i + 0.5) * 1.5).map((speed) => {
      const past = Math.max(0, speed - cutIn);
      return { speed, shaftWatts: 0.05 * speed + (stiffness * past * speed) / Math.hypot(1, past / 40) };
    }),
  ),
);
const between = (load: readonly LoadPoint[], speed: number) => {
  const i = load.findIndex((point) => point.speed > speed);
  const share = (speed - load[i - 1].speed) / (load[i].speed - load[i - 1].speed);
  return load[i - 1].shaftWatts + share * (load[i].shaftWatts - load[i - 1].shaftWatts);
};

test('where the pair balances the generator takes what the wheel gives, never more than the wind has to give', () => {
  for (const load of loads)
    for (let wind = 2; wind < 15; wind += 0.5)
      for (const { speed } of balances(wheel, wind, load)) {
        const taken = between(load, speed);
        expect(taken).toBeCloseTo(wheelPower(wheel, wind, speed), 3);
        expect(taken).toBeLessThanOrEqual(0.38 * windPower(wind, 1.2, 1.2) * (1 + 1e-9));
      }
});

test('in more wind the pair settles faster and gives more', () => {
  for (const load of loads) {
    const speeds = Array.from({ length: 24 }, (_, i) => settledSpeed(balances(wheel, 2 + i * 0.5, load)));
    speeds.slice(1).forEach((speed, i) => expect(speed).toBeGreaterThanOrEqual(speeds[i]));
  }
});
