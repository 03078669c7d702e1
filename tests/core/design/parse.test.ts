import { expect, test } from 'vitest';
import { blankDesign, entryAt, kindDefaults, sectionDefaults } from '../../../core/design/form';
import { parseDesign, readDesign } from '../../../core/design/parse';
import type { Design } from '../../../core/design/schema';
import { serializeDesign } from '../../../core/design/serialize';

const problemsOf = (change: (design: Design & Record<string, unknown>) => void) => {
  const design = structuredClone(blankDesign()) as Design & Record<string, unknown>;
  change(design);
  const parsed = readDesign(design);
  return parsed.ok ? [] : parsed.problems.map((p) => `${p.where}: ${p.message}`);
};

const hub = { shaftHole: 0.002, magnetFit: 1e-4, mountingBolts: 6, mountingHole: 0.0085 };

test('the blank design is a good one and survives saving and opening', () => {
  expect(parseDesign(serializeDesign(blankDesign()))).toEqual({ ok: true, design: blankDesign() });
});

test('a byte-order mark is no fault', () => {
  expect(parseDesign(`\uFEFF${serializeDesign(blankDesign())}`).ok).toBe(true);
});

test.each<[string, (d: Design & Record<string, unknown>) => void, RegExp]>([
  ['odd poles', (d) => void (d.discs.poles = 7), /^discs\.poles: must be an even number; received 7$/],
  [
    'negative clearance',
    (d) => void (d.discs.runningClearance = -1e-3),
    /^discs\.runningClearance: must be between 0\.0001 and 0\.02; received -0\.001$/,
  ],
  [
    'text where a number belongs',
    (d) => void (d.winding.turns = 'sixty' as never),
    /^winding\.turns: must be a number between .*; received "sixty"$/,
  ],
  ['not a number', (d) => void (d.winding.turns = NaN), /^winding\.turns: must be a number/],
  ['too long a text', (d) => void (d.notes = 'x'.repeat(20_001)), /^notes: must have at most 20000 characters; received 20001$/],
  [
    'an empty text',
    (d) => void ((d.load as { chemistry: string }).chemistry = ''),
    /^load\.chemistry: must have at least 1 characters; received 0$/,
  ],
  ['too long a list', (d) => void (d.shelf = Array(201).fill({}) as never), /^shelf: must have at most 200 entries; received 201$/],
  [
    'a point without its second number',
    (d) => void (d.turbine.curve = [[1], [2, 0.1], [3, 0.2]] as never),
    /^turbine\.curve\[0\]: must have at least 2 entries; received 1$/,
  ],
  ['an unknown key', (d) => void (d.colour = 'red'), /^colour: is not an entry/],
  ['an unknown key further down', (d) => void ((d.discs as Record<string, unknown>).pole = 4), /^discs\.pole: is not an entry/],
  ['an unknown kind', (d) => void (d.load = { kind: 'kettle' } as never), /^load(\.kind)?: must be one of "battery", .*received/],
  [
    'an unknown word',
    (d) => void (d.winding.connection = 'zigzag' as never),
    /^winding\.connection: must be one of "star", "delta", "separate"; received "zigzag"$/,
  ],
  [
    'a missing section',
    (d) => void delete (d as Partial<Design>).site,
    /^site: must be a object; received nothing$|^site: must be an object; received nothing$/,
  ],
  ['a newer version', (d) => void (d.version = 2 as never), /^version: this file is of version 2/],
  ['another kind of file', (d) => void (d.kind = 'letter' as never), /^kind: must be "gapwright-design"; received "letter"$/],
  [
    'a coil turned inside out',
    (d) => void (d.winding.layout = { ...d.winding.layout, holeOuterRadius: 0.05 } as never),
    /^winding\.layout\.holeOuterRadius: must be more than .*104 mm; received 50 mm$/,
  ],
  [
    'a hole that is all but a slit across the radius',
    (d) => void (d.winding.layout = { ...d.winding.layout, holeOuterRadius: 0.104001 } as never),
    /^winding\.layout\.holeOuterWidth: must be within 0\.02 mm of the hole's inner width of 22 mm, .*; received 34 mm$/,
  ],
  [
    'more bolts than the circle has room for', // spacers of 10 mm, a chord of 20 mm × sin 30° between two of six
    (d) => void (d.workshop = { ...hub, bolts: 6, boltCircle: 0.02, boltHole: 0.004 }),
    /^workshop\.bolts: must be at most 5, or spacers of 10 mm touch each other on a circle of 20 mm; received 6$/,
  ],
  [
    'a bolt circle too small for two',
    (d) => void (d.workshop = { ...hub, bolts: 2, boltCircle: 0.009, boltHole: 0.004 }),
    /^workshop\.boltCircle: must be more than 10 mm, or the spacers of only two bolts touch each other; received 9 mm$/,
  ],
  ['magnets through the axle', (d) => void (d.discs.pitchRadius = 0.02), /^discs\.pitchRadius: must be more than half/],
  [
    'a covering thinner than nothing',
    (d) => void (d.winding.wire.overallDiameter = 1e-3),
    /^winding\.wire\.overallDiameter: must be at least/,
  ],
  ['a tracker without its controller', (d) => void (d.load = { kind: 'tracker' }), /^controller: a maximum-power controller/],
])('%s is refused with the entry named', (_, change, expected) => {
  const problems = problemsOf(change);
  expect(problems).toHaveLength(1);
  expect(problems[0]).toMatch(expected);
});

test.each(['', '{', '[]', 'null', '3', '{"kind":"gapwright-design"', '\u0000'])('text %j is refused and never throws', (text) => {
  expect(parseDesign(text).ok).toBe(false);
});

test('a form knows range, default and choices of an entry, along the branch the design has taken', () => {
  const design = blankDesign();
  expect(entryAt('winding.turns', design)).toMatchObject({ optional: false, number: { min: 1, default: 30, whole: 'any' } });
  expect(entryAt('magnets.shape.radial', design)?.number?.default).toBe(0.046);
  expect(entryAt('magnets.shape.diameter', design)).toBeUndefined();
  expect(entryAt('magnets.shape', design)?.choices).toEqual(['block', 'cylinder', 'sector']);
  expect(entryAt('magnets.shape.kind', design)?.choices).toEqual(['block', 'cylinder', 'sector']);
  expect(entryAt('magnets.intrinsicCoercivity', design)?.optional).toBe(true);
  expect(entryAt('controller.maxPower', design)?.number?.max).toBe(1e5);
  expect(entryAt('winding.connection', design)?.choices).toEqual(['star', 'delta', 'separate']);
});

test('every kind of every union has defaults that are in range', () => {
  for (const path of ['magnets.shape', 'discs.backing', 'winding.layout', 'load'])
    for (const kind of entryAt(path, blankDesign())?.choices ?? []) expect(kindDefaults(path, kind)).toMatchObject({ kind });
  expect(sectionDefaults('controller')).toMatchObject({ maxPower: 1500 });
});
