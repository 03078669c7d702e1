import { describe, expect, test } from 'vitest';
import { windToReach } from '../../../core/turbine/match';
import type { TurbineSection } from '../../../core/turbine/section';
import { turbineStage } from '../../../core/turbine/stage';

const turbine: TurbineSection = { rows: 1, diameter: 2, peakCp: 0.35, tipSpeedRatio: 6, runawayRatio: 11 };
const air = { airDensity: 1.225 };

describe('a wheel from three numbers', () => {
  test('has its peak and its run-away where they were said to be', () => {
    const { best, runawayRatio, cautions } = turbineStage(turbine, air);
    expect(best).toEqual({ coefficient: 0.35, tipSpeedRatio: 6 });
    expect(runawayRatio).toBeCloseTo(11, 9);
    expect(turbineStage({ ...turbine, runawayRatio: 11.005 }, air).runawayRatio).toBeCloseTo(11.005, 9);
    expect(cautions).toEqual([]);
  });

  test('above 16/27 it is flagged as a wind read too low', () => {
    // (0.64 / 0.5926)^(1/3) = 1.026
    const [caution] = turbineStage({ ...turbine, peakCp: 0.64 }, air).cautions;
    expect(caution).toMatchObject({ severity: 'warning', where: 'turbine.peakCp' });
    expect(caution.message).toContain('0.593');
    expect(caution.message).toContain('by 3 % or more');
  });

  test('two wheels in a row may reach 0.62', () => {
    expect(turbineStage({ ...turbine, rows: 2, peakCp: 0.62 }, air).cautions).toEqual([]);
  });
});

describe('a wheel from measured points', () => {
  const measured = (curve: [number, number][]) => turbineStage({ ...turbine, curve }, air);

  test('peaks at its best point and runs away past its last', () => {
    const { best, runawayRatio } = measured([
      [2, 0.1],
      [5, 0.3],
      [8, 0.2],
    ]);
    expect(best).toEqual({ coefficient: 0.3, tipSpeedRatio: 5 });
    expect(runawayRatio).toBeGreaterThan(8);
    expect(runawayRatio).toBeLessThan(16);
  });

  test('points that rise to the end still run away', () => {
    const { runawayRatio } = measured([
      [2, 0.1],
      [5, 0.2],
      [8, 0.3],
    ]);
    expect(runawayRatio).toBeCloseTo(16, 6);
  });

  test('a curve that never gives power says so, and no wind reaches any speed', () => {
    const braking = measured([
      [0, 0],
      [4, -0.1],
      [8, -0.2],
    ]);
    expect(braking.cautions[0].message).toContain('only brakes');
    expect(windToReach(braking, 20, 3)).toBeNull();
  });

  test('a wheel that brakes at low speed must be spun up', () => {
    const { startWind, cautions } = measured([
      [0, 0],
      [2, -0.02],
      [6, 0.4],
      [9, 0],
    ]);
    expect(startWind).toBeNull();
    expect(cautions[0].message).toContain('must be spun up');
  });

  test('a wheel that pulls hardly at low speed starts late', () => {
    // Cp/λ 0.0002 up to λ = 2: ½ · 1.225 · π · v² · 1 m · 0.0002 = 0.04 N·m, its bearings' drag, at v = √103.9 = 10.2 m/s.
    const { startWind, cautions } = measured([
      [0, 0],
      [2, 0.0004],
      [6, 0.4],
      [9, 0],
    ]);
    expect(startWind).toBeCloseTo(10.2, 1);
    expect(cautions[0].message).toContain('only at 10.2 m/s');
  });

  test('power at standstill is a measuring error', () => {
    const { cautions } = measured([
      [0, 0.05],
      [4, 0.3],
      [8, 0],
    ]);
    expect(cautions[0].message).toContain('standstill');
  });
});
