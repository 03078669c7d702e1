import { expect, test } from 'vitest';
import type { MatchPoint } from '../../core';
import { balanceInWords, rangesInWords } from '../../renderer/worksheets/turbine/words';

const units = { length: 'mm', wire: 'metric', temperature: 'C' } as const;
const point = (wind: number, state: MatchPoint['state'], balances: MatchPoint['balances'] = []) =>
  ({ wind, state, balances }) as MatchPoint;

const told = (match: MatchPoint[], cutIn: number | null = null, start: number | null = null) =>
  rangesInWords({ match, cutIn: { rpm: null, wind: cutIn }, stages: { start: { wind: start } } }, units);

test('what the pair does is told a range of winds at a time, from where it starts and charges', () => {
  const match = [
    point(1, 'still'),
    point(2, 'idling'),
    point(3, 'charging'),
    point(4, 'charging'),
    point(5, 'stalled'),
    point(6, 'stalled'),
  ];
  expect(told(match, 2.25, 1.5).map((line) => line.split(':')[0])).toEqual([
    'Up to 1.50 m/s it stands still.',
    'From 1.50 m/s to 2.25 m/s it turns without charging',
    'From 2.25 m/s to about 4.5 m/s it charges.',
    'From about 4.5 m/s to 6.00 m/s the load holds the blades back so far that they stall',
  ]);
});

test('a load that takes no more is told from one that is only waking', () => {
  const match = [point(3, 'limited'), point(4, 'charging'), point(5, 'limited')];
  const [waking, , running] = told(match);
  expect(waking).toContain('least volts');
  expect(running).toContain('towards run-away');
});

test('where two speeds hold it is said from where to where', () => {
  const two = [
    { rpm: 100, stable: true },
    { rpm: 200, stable: false },
    { rpm: 300, stable: true },
  ];
  const lines = told([point(4, 'charging'), point(5, 'charging', two), point(6, 'charging', two)]);
  expect(lines.at(-1)).toMatch(/^From 5.00 m\/s to 6.00 m\/s more than one speed holds/);
  expect(balanceInWords(two, 0, units)).toContain('brakes it back');
  expect(balanceInWords(two, 1, units)).toBe('A little slower and it falls to 100 rpm, a little faster and it rises to 300 rpm.');
  expect(balanceInWords(two.slice(1), 0, units)).toContain('comes to a stop');
});
