/*
 * Laws heat must obey
 *   more loss is hotter, never cooler than the air
 *   more face, more speed, thinner skin, wider view of the air: cooler
 *   warmer air is hotter by about as much
 *   what is made is what is carried away
 *   twice the heat capacity takes twice the time; a limit nearer by is reached sooner
 *   where it settles, it takes for ever to get to
 */
import { describe, expect, test } from 'vitest';
import { METALS } from '../../core/constants';
import { coolingConductance, settledTemperature as settledBelow, type Cooling } from '../../core/heat/cooling';
import { secondsToReach } from '../../core/heat/network';

const settledTemperature = (loss: number, air: number, cooling: Cooling, speed: number) =>
  settledBelow(loss, air, cooling, speed, METALS.copper.meltingPoint);

const machines: Cooling[] = [
  { area: 0.05, height: 0.18, discRadius: 0.09, skin: 0.0003, clearance: 0.001 },
  { area: 0.2, height: 0.36, discRadius: 0.18, skin: 0.001, clearance: 0.002 },
  { area: 1, height: 0.9, discRadius: 0.45, skin: 0.003, clearance: 0 },
];
const losses = [0, 1, 5, 20, 60, 150, 400];
const speeds = [0, 5, 20, 60, 150];
const rising = (values: number[]) => values.slice(1).every((value, i) => value > values[i]);

describe.each(machines)('a winding $height m high', (cooling) => {
  test('more loss is hotter, never cooler than the air', () => {
    for (const speed of speeds) {
      const settled = losses.map((loss) => settledTemperature(loss, 25, cooling, speed));
      expect(settled[0]).toBe(25);
      expect(rising(settled.filter((t) => t < 999))).toBe(true);
    }
  });

  test('more speed, more face and a thinner skin are cooler', () => {
    const at = (change: Partial<Cooling>, speed = 20) => settledTemperature(40, 20, { ...cooling, ...change }, speed);
    expect(rising([...speeds].reverse().map((speed) => at({}, speed)))).toBe(true);
    expect(rising([2, 1.4, 1, 0.8].map((share) => at({ area: cooling.area * share })))).toBe(true);
    expect(rising([0, 0.001, 0.004, 0.01].map((skin) => at({ skin })))).toBe(true);
    expect(rising([0, 0.001, 0.004].map((clearance) => at({ clearance }, 2)))).toBe(true);
  });

  test('warmer air is hotter by about as much', () => {
    const warm = settledTemperature(30, 40, cooling, 25) - settledTemperature(30, 20, cooling, 25);
    expect(warm).toBeGreaterThan(15);
    expect(warm).toBeLessThan(22);
  });

  test('what is made is what is carried away', () => {
    for (const watts of [2, 10, 40]) {
      const temperature = settledTemperature(watts, 20, cooling, 30);
      expect(coolingConductance(cooling, 30, temperature, 20) * (temperature - 20)).toBeCloseTo(watts, 3);
    }
  });

  test('time goes with heat capacity and grows towards where it settles', () => {
    const balance = { lossAt: () => 30, conductance: (t: number) => coolingConductance(cooling, 30, t, 20), airTemperature: 20 };
    const last = settledTemperature(30, 20, cooling, 30);
    const times = [0.2, 0.5, 0.8, 0.95].map((share) => secondsToReach(balance, 500, 20, 20 + share * (last - 20))!);
    expect(rising(times)).toBe(true);
    expect(secondsToReach(balance, 1000, 20, 20 + 0.5 * (last - 20))! / times[1]).toBeCloseTo(2, 9);
    expect(secondsToReach(balance, 500, 20, last + 0.01)).toBeUndefined();
  });
});
