import { expect, test } from 'vitest';
import { directField, fieldSource } from '../../../core/field/source';
import { circuitField, circuitHeight } from '../../../core/field/textbook';

test('without a gap the magnet’s own remanence, with a gap as tall as the magnet half of it', () => {
  expect(circuitField(1.2, 1.05, 0, 0.01)).toBe(1.2);
  expect(circuitField(1.2, 1, 0.01, 0.01)).toBeCloseTo(0.6, 12);
});

// The circuit leaves out what leaks and falls off: magnets far wider than their gap have none of either in the middle.
test('the full field comes to it as magnets grow wide for their gap, from below', () => {
  const departure = (width: number) => {
    const shape = { kind: 'block', radial: width, tangential: width, axial: 0.01 } as const;
    const discs = { arrangement: 'facing-pair', poles: 4, pitchRadius: width, backing: { kind: 'steel', thickness: 1 } } as const;
    const full = directField(fieldSource(shape, 1.2, { ...discs, runningClearance: 0.001 }, 0.01))(width, 0, 0)[2];
    return circuitField(1.2, 1, 0.01, circuitHeight(discs, 0.01)!) / full - 1;
  };
  const [narrow, wide, widest] = [0.02, 0.08, 0.3].map(departure);
  expect(narrow).toBeGreaterThan(0.05);
  expect(wide).toBeLessThan(narrow / 4);
  expect(Math.abs(widest)).toBeLessThan(1e-4);
});

test('flux crosses the magnets of both discs, of the one, or has no circuit', () => {
  const steel = { kind: 'steel', thickness: 0.008 } as const;
  expect(circuitHeight({ arrangement: 'facing-pair', backing: steel }, 0.01)).toBe(0.02);
  expect(circuitHeight({ arrangement: 'single-with-return', backing: steel }, 0.01)).toBe(0.01);
  expect(circuitHeight({ arrangement: 'single', backing: steel }, 0.01)).toBeUndefined();
  expect(circuitHeight({ arrangement: 'facing-pair', backing: { kind: 'none' } }, 0.01)).toBeUndefined();
});
