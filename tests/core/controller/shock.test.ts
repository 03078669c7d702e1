import { expect, test } from 'vitest';
import { shockCautions } from '../../../core/controller/shock';

// IEC 61140: 50 V AC, 120 V DC. 0.5 V·s/rad RMS passes 50 V at 100 rad/s = 955 rpm; 0.8 V·s/rad DC passes 120 V at 150 rad/s.
test('the speed at which extra-low voltage ends is that of whichever limit comes first', () => {
  const [caution] = shockCautions(0.5, 0.8, 200);
  expect(caution.severity).toBe('danger');
  expect(caution.message).toContain('955 rpm');
  expect(caution.message).toContain('100 V AC');
});

test('a machine that cannot reach it is not cautioned', () => expect(shockCautions(0.5, 0.8, 99)).toEqual([]));

test('where rectified volts come first, 120 V DC rules', () => {
  // 120 / 0.8 = 150 rad/s = 1432 rpm, long before 50 / 0.1 = 500 rad/s.
  expect(shockCautions(0.1, 0.8, 149)).toEqual([]);
  expect(shockCautions(0.1, 0.8, 200)[0].message).toContain('1432 rpm');
});
