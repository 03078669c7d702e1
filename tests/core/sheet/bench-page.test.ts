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

test('it begins overleaf', () => {
  const { design, results } = demo('hill-cabin');
  expect(benchPage(design, results)[0]).toEqual({ kind: 'heading', text: 'Bench record', newPage: true });
});

test.each([
  ['hill-cabin', 1 + 3 + 3 + 1],
  ['shed-light', 1 + 1 + 1],
])('%s has a row for each place that shows a fault of its own', (name, count) => {
  expect(rowsOf(demo(name))[3]).toHaveLength(count);
});

test('the bands lie about what the front of the sheet says, no wider than the meter, the tachometer and two hand-wound coils differ', () => {
  const { design, results } = demo('hill-cabin');
  const { ohms, speeds } = expectedReadings(design, results);
  const [coil, phase] = rowsOf(demo('hill-cabin'))[3];
  const at150 = speeds.find(({ rpm }) => rpm === 150);
  for (const [row, r, v] of [
    [coil, ohms.coil, at150?.coil],
    [phase, ohms.phase, at150?.phase],
  ] as const) {
    for (const [band, middle = NaN] of [
      [row[1], r],
      [row[3], v],
    ] as const) {
      const [low, high] = ends(band);
      // Volts: a plain meter beside true RMS, which our wave parts by a few parts in a hundred.
      expect(low).toBeLessThan(middle);
      expect(high).toBeGreaterThan(middle);
      expect((high - low) / middle).toBeGreaterThan(0.08);
      expect((high - low) / middle).toBeLessThan(0.12);
    }
  }
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
