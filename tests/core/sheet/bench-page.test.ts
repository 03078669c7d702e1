import { expect, test } from 'vitest';
import type { Design } from '../../../core/design/schema';
import { benchPage } from '../../../core/sheet/bench-page';
import { expectedReadings } from '../../../core/sheet/expected-readings';
import { demo } from '../bench/fixture';

const rowsOf = ({ design, results }: ReturnType<typeof demo>, bench?: Design['bench']) =>
  benchPage({ ...design, ...(bench && { bench }) }, results).map((block) =>
    block.kind === 'table' ? block.rows.map((row) => row.map((cell) => cell.replaceAll('\u00a0', ' '))) : [],
  );

/** Ends of a band, as in "980 mV to 1.02 V", SI. */
function ends(band: string): [number, number] {
  const [, low, lowUnit, high, unit = ''] = /^([\d.]+)(?: (\S+))? to ([\d.]+) (\S+)$/.exec(band) ?? [];
  const size = (name: string) => (name.startsWith('m') ? 1e-3 : 1);
  return [Number(low) * size(lowUnit ?? unit), Number(high) * size(unit)];
}

test.each([
  ['hill-cabin', 1 + 3 + 3 + 1],
  ['shed-light', 1 + 1 + 1],
])('%s has a row for each place that shows a fault of its own', (name, count) => {
  expect(rowsOf(demo(name))[2]).toHaveLength(count);
});

test('its bands are those of the front, place by place', () => {
  const { design, results } = demo('hill-cabin');
  const { ohms, speeds, bands } = expectedReadings(design, results);
  const rows = rowsOf(demo('hill-cabin'))[2];
  const at150 = speeds.find(({ rpm }) => rpm === 150);
  const places = ['coil', 'phase', 'phase', 'phase', 'line', 'line', 'line'] as const;
  places.forEach((place, i) => {
    for (const [band, middle = NaN, share] of [
      [rows[i][1], ohms[place], bands.ohms],
      [rows[i][3], at150?.[place], bands.volts],
    ] as const) {
      // Three figures are printed.
      const [low, high] = ends(band);
      expect(Math.abs(low / middle - (1 - share))).toBeLessThan(0.006);
      expect(Math.abs(high / middle - (1 + share))).toBeLessThan(0.006);
    }
  });
});

test('without load the DC side reads the mean of a six-pulse bridge, 3√2/π of line volts, less two diodes', () => {
  // Mohan, Undeland and Robbins, Power Electronics, the three-phase bridge without inductance: V_d0 = 1.35 V_LL (from memory).
  const { design, results } = demo('hill-cabin');
  const [low, high] = ends(rowsOf({ design, results })[2][7][3]);
  const line = expectedReadings(design, results).speeds.find(({ rpm }) => rpm === 150)?.line ?? NaN;
  const six = ((3 * Math.SQRT2) / Math.PI) * line - 2 * design.rectifier.diode.threshold;
  // Three printed figures and the harmonics of this wave.
  expect(Math.abs((low + high) / 2 / six - 1)).toBeLessThan(0.01);
});

test('readings in the file stand below with what they are', () => {
  const { design, results } = demo('hill-cabin');
  const { ohms } = expectedReadings(design, results);
  const bench: Design['bench'] = [
    { label: 'first', on: 'coil', number: 1, ohms: ohms.coil },
    { label: '', on: 'coil', number: 2, ohms: 1.5 * ohms.coil },
    { label: '', on: 'coil', number: 3, ohms: 1e6 },
  ];
  const rows = rowsOf({ design, results }, bench).at(-1) ?? [];
  expect(rows.map(([place, , , off, verdict]) => [place, off, verdict])).toEqual([
    ['first, coil 1', '0.0 %', 'as it should be'],
    ['coil 2', '+50.0 %', 'not as planned'],
    ['coil 3', '–', 'not as planned'],
  ]);
  expect(rows[2][2]).toBe('open');
});
