import { expect, test } from 'vitest';
import { siteCautions } from '../../../core/turbine/cautions';
import { turbineClass } from '../../../core/turbine/classes';

test('the mildest class that covers both mean and gust is named', () => {
  expect(turbineClass(5, 40)?.name).toBe('IV');
  expect(turbineClass(6, 42)?.name).toBe('IV');
  expect(turbineClass(7, 40)?.name).toBe('III');
  // 1.4 · 42.5 = 59.5
  expect(turbineClass(5, 59)?.name).toBe('II');
  expect(turbineClass(5, 60)?.name).toBe('I');
});

const site = { ratedWind: 10, gustWind: 60, meanWind: 6, weibullShape: 2, airDensity: 1.225 };

test('a site beyond class I asks for a design of its own', () => {
  expect(siteCautions(site)).toEqual([]);
  expect(siteCautions({ ...site, gustWind: 75 })[0]).toMatchObject({ severity: 'warning', where: 'site.gustWind' });
  expect(siteCautions({ ...site, meanWind: 11 })[0]).toMatchObject({ severity: 'warning', where: 'site.meanWind' });
});
