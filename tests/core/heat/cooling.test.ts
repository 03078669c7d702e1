import { describe, expect, test } from 'vitest';
import { naturalConvection, radiation } from '../../../core/heat/convection';
import { coolingConductance, settledTemperature, type Cooling } from '../../../core/heat/cooling';

const cooling: Cooling = { area: 0.2, height: 0.35, discRadius: 0.18, skin: 0.0005, clearance: 0.0015 };

describe('conductance from copper to air', () => {
  test('under a thick skin the film is that of the cooler face', () => {
    const buried = { ...cooling, skin: 0.01, clearance: 0 };
    const flow = coolingConductance(buried, 0, 120, 20) * (120 - 20);
    const face = 120 - ((flow / 0.2) * 0.01) / 0.2;
    expect(face).toBeLessThan(90);
    const film = naturalConvection(0.35, face, 20) + radiation(0.9, face, 20);
    expect((0.2 * film * (face - 20)) / flow).toBeCloseTo(1, 2);
  });

  test('bare in still air it is natural convection and radiation', () => {
    const bare = { ...cooling, skin: 0, clearance: 0 };
    const expected = 0.2 * (naturalConvection(0.35, 80, 20) + radiation(0.9, 80, 20));
    expect(coolingConductance(bare, 0, 80, 20)).toBeCloseTo(expected, 10);
  });

  test('a skin of 2 mm at 0.2 W/(m·K) is in series with the film', () => {
    // The film is that of a face a little cooler than the copper, so the two do not add up exactly.
    const bare = coolingConductance({ ...cooling, skin: 0 }, 40, 80, 20);
    const skinned = coolingConductance({ ...cooling, skin: 0.002 }, 40, 80, 20);
    expect(skinned).toBeCloseTo(1 / (1 / bare + 0.002 / 0.2 / 0.2), 1);
  });

  test('a narrow gap hinders it while the discs stand', () => {
    const open = coolingConductance({ ...cooling, clearance: 0 }, 0, 80, 20);
    const narrow = coolingConductance(cooling, 0, 80, 20);
    expect(narrow).toBeLessThan(open);
    expect(narrow).toBeGreaterThan(open / 2);
  });

  test('turning discs cool better, and smoothly so through the speed where their rims turn turbulent', () => {
    let before = 0;
    for (let speed = 0; speed < 300; speed += 2) {
      const here = coolingConductance(cooling, speed, 80, 20);
      expect(here).toBeGreaterThan(before);
      expect(here - before).toBeLessThan(speed === 0 ? Infinity : 0.2);
      before = here;
    }
  });
});

describe('settled temperature', () => {
  test('the loss is what the conductance carries away at that temperature', () => {
    for (const loss of [1, 20, 150, 1000]) {
      const settled = settledTemperature(loss, 15, cooling, 35, 1084);
      expect(coolingConductance(cooling, 35, settled, 15) * (settled - 15)).toBeCloseTo(loss, 2);
    }
  });

  test('wherever it is looked for first, it is found, and at itself too', () => {
    for (const loss of [0.01, 20, 1000]) {
      const settled = settledTemperature(loss, 15, cooling, 35, 1084);
      for (const guess of [settled, 15, 15.001, 80, 1084])
        expect(settledTemperature(loss, 15, cooling, 35, 1084, guess)).toBeCloseTo(settled, 5);
    }
    expect(settledTemperature(1e6, 15, cooling, 35, 1084, 60)).toBe(1084);
  });

  test('no loss, no rise', () => expect(settledTemperature(0, 12, cooling, 35, 1084)).toBe(12));

  test('a loss that nothing can carry away stops at the hottest', () => {
    expect(settledTemperature(1e6, 15, cooling, 35, 1084)).toBe(1084);
  });
});
