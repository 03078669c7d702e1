import { expect, it } from 'vitest';
import { standingCautions } from '../../../core/controller/cautions';
import { windingSheet } from '../../../core/sheet/build';
import type { Block } from '../../../core/sheet/document';
import { reelLength } from '../../../core/sheet/shopping';
import { generatedDesigns } from './generated';
import { concentrated, designWith, resultsFor, serpentine } from './fixture';

const wordsOf = (block: Block): string[] => {
  switch (block.kind) {
    case 'facts':
      return block.rows.map((row) => row.join(': '));
    case 'table':
      return block.rows.map((row) => row.join(' | '));
    case 'steps':
      return block.steps;
    case 'cautions':
      return block.cautions.map((c) => c.message);
    case 'drawing':
      return [block.drawing.title];
    default:
      return [block.text];
  }
};
const words = (design = designWith({})) =>
  windingSheet(design, resultsFor(design))
    .blocks.flatMap(wordsOf)
    .map((line) => line.replaceAll('\u00a0', ' '));

it('says the machine in a line', () => {
  const design = designWith({});
  expect(windingSheet(design, resultsFor(design)).machine).toBe(
    '12 poles, two discs facing, blocks 46 × 30 × 10 mm; 9 coils of 60 turns, 3 phases, star.',
  );
});

it('a serpentine is told its pegs, a coil its former', () => {
  expect(words(designWith({ layout: serpentine })).join('\n')).toMatch(
    /Set two pegs of 12 mm diameter on a board, 743.5 mm from centre to centre/,
  );
  expect(words().join('\n')).toMatch(/a core 25.5 to 36.8 mm wide, 46 mm long and 10 mm thick/);
});

it('layers add up to the wires that are wound', () => {
  for (const [turns, inHand, thickness] of [
    [60, 1, 0.01],
    [30, 2, 0.01],
    [31, 3, 0.008],
    [2, 1, 0.01],
  ]) {
    const { wire } = designWith({}).winding;
    const [step] = words(designWith({ turns, thickness, wire: { ...wire, inHand } })).filter((line) =>
      line.startsWith(`Wind ${turns} turns`),
    );
    const [, layers = '0', across = '0'] = /(\d+) layers? of (\d+) wires?/.exec(step) ?? [];
    const [, over = '0'] = /(\d+) wires? in (?:the last|one layer)/.exec(step) ?? [];
    expect(Number(layers) * Number(across) + Number(over)).toBe(turns * inHand);
    if (Number(layers) > 0) expect(Number(across)).toBe(Math.floor(thickness / wire.overallDiameter + 1e-9));
  }
});

it('the steps say where the start lies, when to tape and how long the leads are', () => {
  for (const layout of [concentrated(9), serpentine]) {
    const text = words(designWith({ layout })).join('\n');
    expect(text).toMatch(/upper face/);
    expect(text).toMatch(/turn of tape/);
    expect(text).toMatch(/Tape 150 mm of the start/);
    expect(text).toMatch(/Solder leads to the terminals, [\d.]+ m in all to a phase/);
  }
});

it('every coil has a row with what its start and finish join', () => {
  expect(words()).toEqual(
    expect.arrayContaining([
      '1 | A | ↺ | terminal A |  | finish of 4 | ',
      '4 | A | ↻ | start of 7 |  | finish of 1 | ',
      '9 | C | ↺ | start of 6 |  | star point | ',
    ]),
  );
});

it('every caution is there, the program’s own and the standing ones, dangers first', () => {
  const design = designWith({});
  const cautions = windingSheet(design, resultsFor(design)).blocks.flatMap((b) => (b.kind === 'cautions' ? b.cautions : []));
  expect(cautions).toHaveLength(resultsFor(design).cautions.length + standingCautions.length);
  const firstMild = cautions.findIndex((c) => c.severity !== 'danger');
  expect(cautions.slice(firstMild).some((c) => c.severity === 'danger')).toBe(false);
});

it('a winding that does not fit says how many turns to take out', () => {
  const design = designWith({});
  const results = resultsFor(design);
  const tight = {
    ...results,
    coils: { ...results.coils, fits: false },
    stages: { ...results.stages, wire: { ...results.stages.wire, turnsTooMany: 7 } },
  };
  const facts = windingSheet(design, tight).blocks.flatMap(wordsOf).join('\n');
  expect(facts).toMatch(/it does not fit; take out 7 turns/);
});

it('a reel on the shelf is weighed against what is needed', () => {
  const reel = { label: 'Reel 3', metal: 'copper' as const, conductorDiameter: 1.4e-3, overallDiameter: 1.47e-3, mass: 2 };
  // 9 coils with two ends of 0.15 m each and a twentieth over: 2.835 m more than for what is wound.
  // 2 kg over 8890 kg/m³ and π/4 · 1.4² mm²: 146.1 m by hand.
  expect(reelLength(reel)).toBeCloseTo(146.1, 1);
  expect(words({ ...designWith({}), shelf: [reel] })).toContain('on the shelf: Reel 3: 146.1 m, short by 53.36 m');
});

it.each(generatedDesigns)('what is to be bought is enough for all that is to be cut, and a twentieth over: %s', (_, design, results) => {
  const blocks = windingSheet(design, results)
    .blocks.flatMap(wordsOf)
    .map((line) => line.replaceAll('\u00a0', ' '));
  const read = (pattern: RegExp) => Number(blocks.map((line) => pattern.exec(line)?.[1]).find(Boolean));
  const { inHand } = design.winding.wire;
  const strand = read(/^Cut for each: (?:\d+ × )?([\d.]+) m/);
  const leads = read(/^Leads: ([\d.]+) m per phase/) * design.winding.phases;
  const cut = inHand * (results.coils.count * strand + leads);
  // Lengths are printed to three figures and more.
  expect(read(/^to buy: ([\d.]+) m/) / cut).toBeCloseTo(1.05, 2);
});

it('the trace changes with any entry and with nothing else', () => {
  const trace = (turns: number) => windingSheet(designWith({ turns }), resultsFor(designWith({ turns }))).trace;
  expect(trace(60)).toBe(trace(60));
  expect(trace(61)).not.toBe(trace(60));
});

it('a design with a hundred and twenty coils has a place for each reading', () => {
  const design = designWith({ layout: concentrated(120), parallelPaths: 40 }, 40);
  const labels = windingSheet(design, resultsFor(design)).blocks.flatMap((b) =>
    b.kind === 'table' && b.columns.filter((c) => c.head === 'Coil').length === 3 ? b.rows.flatMap((row) => [row[0], row[3], row[6]]) : [],
  );
  expect(
    labels
      .filter(Boolean)
      .map(Number)
      .sort((a, b) => a - b),
  ).toEqual(Array.from({ length: 120 }, (_, i) => i + 1));
});
