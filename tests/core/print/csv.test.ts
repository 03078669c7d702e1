import { describe, expect, it } from 'vitest';
import { tableCsv, tableNames } from '../../../core/print/csv';
import { generatedDesigns } from '../sheet/generated';

/** A reader after RFC 4180 of its own: fields in quotes may hold commas, line ends and doubled quotes. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, plain, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/g)) {
    if (quoted === undefined && plain === '' && end === '') break;
    rows.at(-1)!.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === '\r\n') rows.push([]);
  }
  return rows.filter((row) => row.length > 0);
}

describe.each(generatedDesigns)('tables of %s', (_, design, results) => {
  const read = Object.fromEntries(tableNames.map((name) => [name, readCsv(tableCsv(name, design, results))]));

  it('every row has as many fields as the head', () => {
    for (const [name, [head, ...rows]] of Object.entries(read)) {
      expect(rows.length).toBeGreaterThan(0);
      expect([name, rows.every((row) => row.length === head.length)]).toEqual([name, true]);
      expect(rows.flat().join(' ')).not.toMatch(/NaN|Infinity|undefined|null/);
    }
  });

  it('coils and curves are those worked out, to seven figures', () => {
    const [, ...coils] = read['coil table'];
    expect(coils.map(([coil]) => Number(coil))).toEqual(results.stages.winding.coils.map(({ coil }) => coil));
    expect(Number(coils[0][6])).toBeCloseTo(results.stages.wire.coilLength, 5);
    const [head, ...curve] = read['generator curve'];
    const watts = head.indexOf('DC in W');
    curve.forEach((row, i) =>
      expect(Number(row[watts]) / (results.curve[i].dcWatts || 1)).toBeCloseTo(results.curve[i].dcWatts ? 1 : 0, 6),
    );
    expect(read['wind match']).toHaveLength(results.match.length + 1);
  });
});

it('commas and quotes in a reel’s name stay in its field', () => {
  const [, design, results] = generatedDesigns[0];
  const { metal, conductorDiameter, overallDiameter } = design.winding.wire;
  const shelf = [{ label: 'half, "the blue one"', metal, conductorDiameter, overallDiameter, mass: 2 }];
  const rows = readCsv(tableCsv('shopping list', { ...design, shelf }, results));
  expect(rows.map(([item]) => item)).toContain('on the shelf: half, "the blue one"');
});
