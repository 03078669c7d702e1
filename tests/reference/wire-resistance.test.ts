import { expect, test } from 'vitest';
import { METALS } from '../../core/constants';
import { awgDiameter } from '../../core/wire/gauges';
import { temperatureFactor, wireResistance } from '../../core/wire/resistance';

test('a metre of a square millimetre of copper has 1/58 ohm at 20 °C', () => {
  expect(wireResistance('copper', 1, 1e-6, 20)).toBeCloseTo(1 / 58, 12); // IEC 60028
});

test('copper gains 0.393 % a kelvin and weighs 8.89 g/cm³', () => {
  expect(temperatureFactor('copper', 21) - 1).toBeCloseTo(0.00393, 10); // IEC 60028
  expect(METALS.copper.density).toBe(8890);
});

// NBS Handbook 100, table 5. [Ω per 1000 ft]
test.each([
  [10, 0.9989],
  [12, 1.588],
  [14, 2.525],
  [16, 4.016],
  [18, 6.385],
])('gauge %d has %d ohms per thousand feet', (gauge, ohms) => {
  const section = (Math.PI * awgDiameter(gauge) ** 2) / 4;
  expect(Math.abs(wireResistance('copper', 304.8, section, 20) / ohms - 1)).toBeLessThan(0.001);
});

test('aluminium conducts 61 % as well as copper', () => {
  expect(wireResistance('copper', 1, 1e-6, 20) / wireResistance('aluminium', 1, 1e-6, 20)).toBeCloseTo(0.61, 3); // IEC 60889
});
