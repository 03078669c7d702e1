import { describe, expect, test } from 'vitest';
import { blankDesign, type Design, solve } from '../../../core/index';

const blank = blankDesign();
const gusty = (gustWind: number, more: Partial<Design> = {}) => {
  const { stages, rated } = solve({ ...blank, ...more, site: { ...blank.site, gustWind } });
  return { ...stages.gust, rated };
};

describe('a gust that lasts', () => {
  test('as strong as the rated wind turns the wheel as fast, and never brings the coils to a limit they settle below', () => {
    const { rpm, coilTemperature, seconds, rated } = gusty(blank.site.ratedWind);
    expect(rpm / rated.rpm).toBeCloseTo(1, 3);
    expect(Math.abs(coilTemperature - rated.coilTemperature)).toBeLessThan(1);
    expect(seconds).toBeNull();
  });

  test('stronger is faster, hotter and sooner at the limit', () => {
    const [less, more] = [11.5, 13].map((wind) => gusty(wind));
    expect(more.rpm).toBeGreaterThan(less.rpm);
    expect(more.coilTemperature).toBeGreaterThan(less.coilTemperature);
    expect(more.seconds!).toBeLessThan(less.seconds!);
    expect(more.seconds!).toBeGreaterThan(0);
  });

  test('beyond the end of the curve, the load open, it is the wheel’s run-away', () => {
    // 10 · 40 m/s over 1 m of radius are 3820 rpm, less what bearings and eddy currents take: the curve ends at 15 m/s.
    const turbine = { ...blank.turbine, diameter: 2, runawayRatio: 10 };
    const { rpm } = gusty(40, { load: { kind: 'open' }, turbine });
    expect(rpm).toBeLessThan(3820);
    expect(rpm).toBeGreaterThan(0.9 * 3820);
  });

  test('coils past their limit at rated wind have no time left', () => {
    expect(gusty(25, { surroundings: { ...blank.surroundings, formerLimit: 40 } }).seconds).toBe(0);
  });
});
