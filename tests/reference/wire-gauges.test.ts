import { expect, test } from 'vitest';
import { awgDiameter, awgGauges, metricGauges } from '../../core/wire/gauges';

// ASTM B258, mils. See wire-gauges.source.md.
test.each([
  [-3, 460],
  [4, 204.3],
  [8, 128.5],
  [10, 101.9],
  [12, 80.8],
  [14, 64.1],
  [16, 50.8],
  [18, 40.3],
  [20, 32],
  [22, 25.3],
  [24, 20.1],
  [26, 15.9],
  [28, 12.6],
  [30, 10],
  [36, 5],
])('gauge %d is %d mils thick', (gauge, mils) => {
  expect(Math.abs(awgDiameter(gauge) / 25.4e-6 - mils)).toBeLessThanOrEqual(0.05 + 1e-9);
});

test('metric sizes climb by the preferred steps, and coverings lie between least and greatest', () => {
  for (const grade of [1, 2] as const) {
    const sizes = metricGauges.filter((gauge) => gauge.grade === grade);
    sizes.forEach(({ conductorDiameter, leastOverallDiameter, overallDiameter }, i) => {
      expect(leastOverallDiameter).toBeGreaterThan(conductorDiameter);
      expect(overallDiameter).toBeGreaterThan(leastOverallDiameter);
      // R 20 of ISO 3: each size is the one before times the twentieth root of ten, rounded.
      const before = sizes[i - 1];
      if (before) expect(conductorDiameter / before.conductorDiameter).toBeCloseTo(10 ** (1 / 20), 1);
    });
  }
});

test('grade 2 is always covered thicker than grade 1', () => {
  const two = metricGauges.filter(({ grade }) => grade === 2);
  metricGauges
    .filter(({ grade }) => grade === 1)
    .forEach((one, i) => {
      expect(two[i]?.overallDiameter).toBeGreaterThan(one.overallDiameter);
      expect(two[i]?.leastOverallDiameter).toBeGreaterThan(one.leastOverallDiameter);
    });
});

test('AWG wire is covered by 2 to 15 % of its thickness over the range a builder buys', () => {
  for (const { conductorDiameter, overallDiameter } of awgGauges.filter((g) => g.conductorDiameter > 0.4e-3)) {
    expect(overallDiameter / conductorDiameter).toBeGreaterThan(1.02);
    expect(overallDiameter / conductorDiameter).toBeLessThan(1.15);
  }
});
