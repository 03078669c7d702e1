import { beforeAll, describe, expect, it } from 'vitest';
import type { Results } from '../../../core/chain/results';
import { solve } from '../../../core/chain/solve';
import { METALS } from '../../../core/constants';
import type { Design } from '../../../core/design/schema';
import { sheetPdf, type SheetPaper } from '../../../core/print/pdf';
import { demo } from '../../demo';
import { overlapping } from '../sheet/boxes';
import { generatedDesigns } from '../sheet/generated';
import { fontBase64, type Page, readPdf } from './sheet-pdf';

const demos = ['shed-light', 'hill-cabin', 'farm-tracker'].map((name): [string, Design, Results] => {
  const design = demo(name);
  return [name, design, solve(design)];
});

/** Points that most printers leave white. Common practice, no source. */
const MARGIN = 25;

/** What one of each printed unit is in SI. */
const UNITS: Record<string, number> = { '': 1, mm: 1e-3, m: 1, g: 1e-3, kg: 1, mΩ: 1e-3, Ω: 1, mH: 1e-3, V: 1, Hz: 1, '%': 0.01 };

/** What is printed behind some words, read as a number with its unit. */
interface Expected {
  what: string;
  /** The words before the figure, as a pattern. */
  after: string;
  value: number;
  /** Figures that count. */
  significant: number;
}

/** Every figure of `solve --json` for turns, wire, lengths, resistances and readings, and the words it stands behind. */
function figures({ winding, surroundings }: Design, results: Results): Expected[] {
  const { coils, emf, stages } = JSON.parse(JSON.stringify(results)) as Results;
  const { wire } = winding;
  const find = (what: string, after: string, value: number, significant = 3): Expected => ({ what, after, value, significant });
  const whole = (what: string, after: string, value: number) => find(what, after, value, String(value).length);
  const room = 1 + METALS[wire.metal].temperatureCoefficient * (surroundings.airTemperature - 20);
  const joined = winding.phases === 1 ? 'separate' : winding.connection;
  const phasesRead = { star: 2, delta: (winding.phases - 1) / winding.phases, separate: 1 }[joined];
  const reading = (rpm: number, row: string, per1000: number) =>
    find(`${row} at ${rpm} rpm`, ` ${rpm} rpm Frequency .*?${row}`, (per1000 * rpm) / 1000);
  return [
    whole('coils', 'What to wind (?:Coils|Rings) ', coils.count),
    whole('turns', 'Turns in each ', winding.turns),
    find('wire bare', ` Wire ${wire.metal}, `, wire.conductorDiameter),
    find('wire covered', ' mm bare, ', wire.overallDiameter),
    whole('wires in hand', 'Wires in hand ', wire.inHand),
    find('a coil’s wire', 'Cut for each [^(]*\\(', stages.wire.coilLength),
    find('leads', ' Leads ', winding.leadLength),
    find('wire in all', 'Wire in all ', coils.wireLength),
    find('mass', 'Wire in all [\\d.]+ m, ', coils.wireMass),
    find('mean turn', 'Mean turn ', stages.winding.meanTurn),
    find('fill', ' Fill ', coils.fill, 1),
    ...(coils.pegDistance === undefined ? [] : [find('pegs', ' Pegs ', coils.pegDistance)]),
    find('coil at 20 °C', 'At 20 °C coil ', coils.coilResistance20),
    find('phase at 20 °C', 'phase with its leads ', coils.phaseResistance20),
    find('phase hot', 'Phase when hot ', coils.phaseResistance),
    find('inductance', 'Phase when hot [\\d.]+ m?Ω, ', coils.phaseInductance),
    find('phase volts', 'At 1000 rpm ', emf.phaseRmsPer1000rpm),
    find('line volts', ' per phase, ', emf.lineRmsPer1000rpm),
    find('hertz', ' between lines, ', emf.hertzPer1000rpm),
    find('coil ohms in the room', 'did read at °C One coil alone ', coils.coilResistance20 * room),
    find('phase ohms in the room', 'did read at °C .*?One phase ', coils.phaseResistance20 * room),
    find('line ohms in the room', 'did read at °C .*?Line: terminal to next ', coils.phaseResistance20 * room * phasesRead),
    ...[60, 150, 300].flatMap((rpm) => [
      reading(rpm, '', emf.hertzPer1000rpm),
      reading(rpm, 'One coil alone ', stages.emf.coilRmsPer1000rpm),
      reading(rpm, 'One phase ', emf.phaseRmsPer1000rpm),
      reading(rpm, 'Line: terminal to next ', emf.lineRmsPer1000rpm),
    ]),
  ];
}

/** Nothing where the first figure behind the words is the value, rounded to its last printed digit. */
function faults(text: string, { what, after, value, significant }: Expected): string[] {
  const found = new RegExp(`${after}([\\d.]+) ?(mm|mΩ|mH|m|kg|g|Ω|V|Hz|%|)(?![\\wΩ])`).exec(text);
  if (!found) return [`${what}: no figure behind “${after}”`];
  const [, number, unit] = found;
  const off = Math.abs(Number(number) * UNITS[unit] - value);
  const decimals = number.split('.')[1]?.length ?? 0;
  if (off > (0.5 + 1e-6) * 10 ** -decimals * UNITS[unit]) return [`${what}: prints ${number} ${unit} for ${value}`];
  const figuresShown = number.replace('.', '').replace(/^0+/, '').length;
  // What is exact need not be filled up with zeros.
  return figuresShown >= significant || off < 1e-9 * value ? [] : [`${what}: ${number} ${unit} is too coarse for ${value}`];
}

const papers = ['a4', 'letter'] as const;
/** Both papers for the demos and for the fullest pages, in turn for the others. */
const sheets = [
  ...demos.flatMap((each) => papers.map((paper) => [each, paper] as const)),
  ...generatedDesigns.flatMap((each, i) => {
    const full = each[1].discs.poles === 40;
    return papers.filter((_, k) => full || i % 2 === k).map((paper) => [each, paper] as const);
  }),
].map(([[name, design, results], paper]) => [`${name} on ${paper}`, design, results, paper] as const);

describe.each(sheets)('the sheet of %s', (_, design, results, paper) => {
  let pages: Page[];
  beforeAll(async () => {
    const change: SheetPaper = { paper, fileName: 'x.gapwright', date: '2026-03-14', fontBase64 };
    pages = await readPdf(sheetPdf(design, results, change));
  });

  it('prints every figure of the solution, rounded to what it shows', () => {
    const text = pages
      .flatMap((p) => p.words.map((w) => w.words))
      .join(' ')
      .replace(/\s+/g, ' ');
    expect(figures(design, results).flatMap((expected) => faults(text, expected))).toEqual([]);
    expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  it('no words lie on each other or leave the page', () => {
    for (const { width, height, words } of pages) {
      expect(overlapping(words)).toEqual([]);
      const outside = words.filter(({ corners }) =>
        corners.some(([x, y]) => x < MARGIN || x > width - MARGIN || y < MARGIN || y > height - MARGIN),
      );
      expect(outside.map((w) => w.words)).toEqual([]);
    }
  });
});

it('a figure that is wrong in its last digit, too coarse or not there is told', () => {
  const one = (text: string) => faults(text, { what: 'mean turn', after: 'Mean turn ', value: 0.21786, significant: 3 });
  expect(one('Mean turn 217.9 mm Fill')).toEqual([]);
  expect(one('Mean turn 217.8 mm Fill')).toEqual(['mean turn: prints 217.8 mm for 0.21786']);
  expect(one('Mean turn 0.22 m')).toEqual(['mean turn: 0.22 m is too coarse for 0.21786']);
  expect(one('Middle turn 217.9 mm')).toEqual(['mean turn: no figure behind “Mean turn ”']);
});
