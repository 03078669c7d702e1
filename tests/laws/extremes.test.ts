/*
 * Any wheel, winding and controller that can be entered yield numbers
 *   heat        settled temperatures and times
 *   turbine     run-away, start, balances, the wind that reaches a speed, the year
 *   controller  verdicts, their advice, braking
 */
import { expect, test } from 'vitest';
import { brakingWind } from '../../core/controller/braking';
import { controllerCheck } from '../../core/controller/check';
import { METALS } from '../../core/constants';
import { settledTemperature } from '../../core/heat/cooling';
import { balances, settledSpeed, windToReach } from '../../core/turbine/match';
import { turbineStage } from '../../core/turbine/stage';
import { yearEnergy } from '../../core/turbine/yearly';

/** Numbers between 0 and 1 from a seed: Park & Miller 1988. */
function draws(seed: number): (low: number, high: number) => number {
  let state = seed;
  return (low, high) => {
    state = (state * 48271) % 2147483647;
    return low + (high - low) * (state / 2147483647);
  };
}

const ROUNDS = 300;

test('windings settle somewhere between the air and where their metal melts', () => {
  const draw = draws(11);
  for (let round = 0; round < ROUNDS; round++) {
    const air = draw(-60, 70);
    const cooling = {
      area: 10 ** draw(-4, 1),
      height: draw(0.004, 3.2),
      discRadius: draw(0.01, 1.6),
      skin: draw(0, 0.01),
      clearance: draw(0, 0.02),
    };
    const speed = round % 5 === 0 ? 0 : 10 ** draw(-2, 4.5);
    const settled = settledTemperature(10 ** draw(-3, 5), air, cooling, speed, METALS.aluminium.meltingPoint);
    expect(settled).toBeGreaterThanOrEqual(air);
    expect(settled).toBeLessThanOrEqual(METALS.aluminium.meltingPoint);
  }
});

test('wheels start, run away, balance and reach speeds at finite numbers', () => {
  const draw = draws(5);
  for (let round = 0; round < ROUNDS; round++) {
    const tipSpeedRatio = draw(0.3, 15);
    const drawn = [draw(0, 5), draw(5.1, 9), draw(9.1, 30)].map((ratio): [number, number] => [ratio, draw(-0.3, 0.6)]);
    const turbine = turbineStage(
      {
        rows: 1 + Math.floor(draw(0, 5)),
        diameter: draw(0.1, 20),
        peakCp: draw(0.01, 0.66),
        tipSpeedRatio,
        runawayRatio: tipSpeedRatio * (1 + draw(1e-3, 1)),
        ...(round % 3 === 0 && { curve: drawn }),
      },
      { airDensity: draw(0.5, 1.6) },
    );
    const top = (turbine.runawayRatio * 20) / turbine.wheel.radius;
    const load = Array.from({ length: 30 }, (_, i) => ((i + 0.5) * top) / 29.5).map((speed) => ({ speed, shaftWatts: 10 ** draw(-3, 4) }));
    const numbers = [
      turbine.runawayRatio,
      turbine.startWind,
      settledSpeed(balances(turbine.wheel, draw(0, 20), load)),
      windToReach(turbine, 10 ** draw(-2, 3), round % 4 === 0 ? 0 : 10 ** draw(-4, 6)),
      brakingWind(turbine, (speed) => 0.01 * speed ** 2, 25),
    ];
    for (const number of numbers) expect(number === null || (Number.isFinite(number) && number >= 0)).toBe(true);
  }
});

test('the year has a finite energy, no more than the greatest power all year round', () => {
  const draw = draws(3);
  for (let round = 0; round < ROUNDS; round++) {
    const curve = Array.from({ length: 20 }, (_, i) => ({ wind: i * draw(0.1, 2) + i, watts: draw(0, 5000) })).sort(
      (a, b) => a.wind - b.wind,
    );
    const energy = yearEnergy(curve, draw(0.5, 20), draw(0.8, 6));
    expect(energy).toBeGreaterThanOrEqual(0);
    expect(energy).toBeLessThanOrEqual(Math.max(...curve.map(({ watts }) => watts)) * 365.25 * 86400);
  }
});

test('controllers are judged in words without a number that is none', () => {
  const draw = draws(7);
  for (let round = 0; round < ROUNDS; round++) {
    const volts = () => (round % 6 === 0 ? 0 : 10 ** draw(-2, 4));
    const verdicts = controllerCheck(
      {
        maxInputVoltage: draw(1, 2000),
        minInputVoltage: round % 7 === 0 ? 0 : draw(0, 1000),
        maxInputCurrent: draw(0.1, 1000),
        maxPower: draw(1, 1e5),
        batteryVoltage: draw(1, 1000),
        maxChargeCurrent: draw(0.1, 2000),
      },
      {
        turns: 1 + Math.floor(draw(0, 500)),
        connection: (['star', 'delta', 'separate'] as const)[round % 3],
        rated: { amps: volts(), watts: volts() },
        greatestWatts: volts(),
        gustVolts: volts(),
        ratedOpenVolts: volts(),
        lightVolts: volts(),
        ...(round % 2 === 0 && { wakeWind: round % 4 === 0 ? null : draw(0, 40) }),
      },
    );
    expect(verdicts).toHaveLength(5);
    for (const { value, limit, advice } of verdicts) {
      expect(Number.isFinite(value) && Number.isFinite(limit)).toBe(true);
      expect(advice).not.toMatch(/NaN|Infinity|undefined|null|-\d/);
      expect(advice.length).toBeGreaterThan(5);
    }
  }
});
