import { expect, test } from 'vitest';
import { CABLE_SECTIONS, cableCautions, cableChoices, cableDrop, cableResistance } from '../../../core/rectifier/cable';

test('a direct-current cable counts there and back, an alternating-current one a line at a time', () => {
  // 20 m of 10 mm² copper at 20 °C: 20/58/10 = 34.48 mΩ one way (IEC 60028).
  const cable = { length: 20, section: 10e-6, metal: 'copper' } as const;
  expect(cableResistance({ ...cable, side: 'ac' }, 20)).toEqual({ acLine: expect.closeTo(0.03448, 5) as number, dc: 0 });
  expect(cableResistance({ ...cable, side: 'dc' }, 20)).toEqual({ acLine: 0, dc: expect.closeTo(0.06897, 5) as number });
});

// 20 A through 0.1 Ω to 24 V: 2 V of 26 V lost, 40 W beside 480 W.
test('the drop is the share of the volts at the beginning', () => {
  expect(cableDrop(40, 480)).toBeCloseTo(2 / 26);
  expect(cableDrop(0, 0)).toBe(0);
});

// 5 % of 24 V/0.95 are 1.263 V, 63.2 mΩ at 20 A: 6 mm² · 0.1/0.0632 = 9.5 mm², so 10 mm².
test('a cable that eats too much is told the section that would do', () => {
  expect(cableCautions({ section: 6e-6 }, 24, 480)).toEqual([]);
  const [caution] = cableCautions({ section: 6e-6 }, 40, 480);
  expect(caution.where).toBe('cable.section');
  expect(caution.message).toContain('8 % of the volts and 40 W');
  expect(caution.message).toContain('10 mm² would');
});

test('where no section would do it says what would', () => {
  expect(cableCautions({ section: 300e-6 }, 400, 480)[0].message).toContain('a higher voltage');
});

test('sections rise', () => expect([...CABLE_SECTIONS].sort((a, b) => a - b)).toEqual(CABLE_SECTIONS));

// 6 mm² keeps 40 of 520 W. 10 mm²: 24 of 504 W, 4.76 %, the least that does; 4 mm²: 60 of 540 W, 11.1 %.
test('sections to choose from stand about the least that would do, the cable’s own among them', () => {
  const choices = cableChoices({ section: 6e-6 }, 40, 480);
  expect(choices.map(({ section }) => Math.round(section * 1e6))).toEqual([4, 6, 10, 16, 25]);
  expect(choices.map(({ enough }) => enough)).toEqual([false, false, true, true, true]);
  expect(choices[0].drop).toBeCloseTo(60 / 540, 9);
  expect(choices[2].lost).toBeCloseTo(24, 9);
  expect(cableChoices({ section: 7e-6 }, 40, 480).map(({ section }) => section)).toContain(7e-6);
  expect(cableChoices({ section: 6e-6 }, 0, 480)).toEqual([]);
});
