import { expect, test } from 'vitest';
import { gustHeatCautions, runawayCautions } from '../../../core/chain/heat-cautions';
import type { Gust } from '../../../core/chain/gust';
import type { Plant } from '../../../core/chain/operating-point';
import type { MatchPoint } from '../../../core/chain/results';

const limit = { temperature: 110, where: 'surroundings.formerLimit' };
const gust = (seconds: number | null, runsAway = false) => ({ seconds, runsAway }) as Gust;

test('a gust that burns the coils before it is over is a warning, one that would have to last a note', () => {
  const [soon] = gustHeatCautions(gust(6.9, true), 25, limit);
  expect(soon).toMatchObject({ severity: 'warning', where: limit.where });
  for (const words of ['25 m/s', '110 °C in 6.9 s', 'runs away']) expect(soon.message).toContain(words);
  const [late] = gustHeatCautions(gust(104), 25, limit);
  expect(late.severity).toBe('note');
  expect(late.message).toContain('in 1.7 minutes, and go on warming');
});

test('nothing is said of a gust the coils stand, nor of coils past their limit before it', () => {
  expect(gustHeatCautions(gust(null), 25, limit)).toEqual([]);
  expect(gustHeatCautions(gust(0), 25, limit)).toEqual([]);
});

test('runaway is said with the wind from which it comes', () => {
  const match = [80, 300, 1085].map((coilTemperature, i) => ({ wind: 10 + i, coilTemperature }) as MatchPoint);
  const [caution] = runawayCautions({ melts: 1085 } as Plant, match, limit);
  expect(caution).toMatchObject({ severity: 'danger', where: limit.where });
  expect(caution.message).toContain('From 12.0 m/s on the coils’ temperature runs away');
  expect(runawayCautions({ melts: 1085 } as Plant, match.slice(0, 2), limit)).toEqual([]);
});
