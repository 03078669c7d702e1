import { expect, test } from 'vitest';
import { solve } from '../../../core/chain/solve';
import type { Design } from '../../../core/design/schema';
import { demo } from '../../demo';

const cabin = demo('hill-cabin');
const told = (magnets: Partial<Design['magnets']>, windings: Partial<Design['winding']> = {}) =>
  solve({ ...cabin, magnets: { ...cabin.magnets, ...magnets }, winding: { ...cabin.winding, ...windings } })
    .cautions.filter(({ where }) => where === 'magnets.intrinsicCoercivity')
    .map(({ severity, message }) => `${severity}: ${message.slice(0, 30)}`);

test('magnets of a good grade stand a shorted winding, poorer ones do not, and the poorest not even an open one', () => {
  expect(told({ intrinsicCoercivity: 1100e3 })).toEqual([]);
  expect(told({})).toEqual([expect.stringContaining('note: Shorted at')]);
  expect(told({ intrinsicCoercivity: 600e3 })).toEqual([expect.stringContaining('warning: Shorted at')]);
  expect(told({ intrinsicCoercivity: 200e3 })).toEqual([expect.stringContaining('danger: On their discs')]);
  expect(told({ intrinsicCoercivity: undefined })).toEqual([]);
});
