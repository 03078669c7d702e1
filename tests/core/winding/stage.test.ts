import { expect, test } from 'vitest';
import type { Layout, WindingSection } from '../../../core/winding/section';
import { windingStage } from '../../../core/winding/stage';

const coils = (count: number): Extract<Layout, { kind: 'concentrated' }> => ({
  kind: 'concentrated',
  coils: count,
  holeInnerRadius: 0.104,
  holeOuterRadius: 0.15,
  holeInnerWidth: 0.0255,
  holeOuterWidth: 0.0368,
  legWidth: 0.012,
});
const rings = (placement: 'stacked' | 'interleaved', legWidth = 0.01): Layout => ({
  kind: 'serpentine',
  innerRadius: 0.104,
  outerRadius: 0.15,
  legWidth,
  placement,
});
const winding = (layout: Layout, changes: Partial<WindingSection> = {}): WindingSection => ({
  layout,
  thickness: 0.01,
  skin: 0.0005,
  phases: 3,
  turns: 60,
  connection: 'star',
  parallelPaths: 1,
  leadLength: 1,
  ...changes,
});
const dangers = (w: WindingSection, poles = 12) =>
  windingStage(w, poles)
    .cautions.filter(({ severity }) => severity === 'danger')
    .map(({ where }) => where);

test('coils stand evenly round the axle, the first on +x', () => {
  const { coils: placed } = windingStage(winding(coils(9)), 12);
  placed.forEach(({ coil, angle }, i) => {
    expect(coil).toBe(i + 1);
    expect(angle).toBeCloseTo((2 * Math.PI * i) / 9, 12);
  });
});

test('rings are turned by two thirds of a pole pitch and stacked round the mid-plane', () => {
  const { coils: placed, copperHeight } = windingStage(winding(rings('stacked')), 12);
  const pitch = Math.PI / 6;
  placed.forEach(({ angle }, i) => expect(angle).toBeCloseTo((i * 2 * pitch) / 3, 12));
  expect(placed.map(({ height }) => height)).toEqual([-0.01, 0, 0.01]);
  expect(copperHeight).toBeCloseTo(0.03, 12);
});

test('interleaved rings lie in one layer', () => {
  const { coils: placed, copperHeight } = windingStage(winding(rings('interleaved')), 12);
  expect(placed.every(({ height }) => height === 0)).toBe(true);
  expect(copperHeight).toBeCloseTo(0.01, 12);
});

test('two rings are turned by half a pole pitch', () => {
  expect(windingStage(winding(rings('stacked'), { phases: 2 }), 12).coils[1]?.angle).toBeCloseTo(Math.PI / 12, 12);
});

test('a sound winding raises no danger and balances', () => {
  const result = windingStage(winding(coils(9)), 12);
  expect(result.balanced).toBe(true);
  expect(result.cautions).toEqual([]);
  expect(result.seriesCoils).toBe(3);
});

test('overlapping coils are told by how much', () => {
  const [caution] = windingStage(winding({ ...coils(9), legWidth: 0.025 }), 12).cautions;
  expect(caution?.severity).toBe('danger');
  expect(caution?.where).toBe('winding.layout.legWidth');
  const overlap = Number(/overlap by ([\d.]+) mm/.exec(caution?.message ?? '')?.[1]);
  expect(dangers(winding({ ...coils(9), legWidth: 0.025 - overlap / 2000 - 5e-5 }))).toEqual([]);
});

test('coils that phases or paths do not divide are dangers that name the entry', () => {
  expect(dangers(winding(coils(10)))).toContain('winding.layout.coils');
  expect(dangers(winding(coils(9), { parallelPaths: 2 }))).toEqual(['winding.parallelPaths']);
  expect(dangers(winding(rings('stacked'), { parallelPaths: 2 }))).toEqual(['winding.parallelPaths']);
  expect(dangers(winding(coils(2)))).toContain('winding.layout.coils');
});

test('parallel paths get the same set of EMFs wherever one exists', () => {
  const { coils: placed } = windingStage(winding(coils(12), { parallelPaths: 2 }), 10);
  for (let phase = 1; phase <= 3; phase++) {
    const angles = [1, 2].map((path) =>
      placed
        .filter((coil) => coil.phase === phase && coil.path === path)
        .map(({ angle, direction }) => ((((angle * 5 + (direction === 1 ? 0 : Math.PI)) / (2 * Math.PI)) % 1) + 1.0001) % 1)
        .map((share) => share.toFixed(3))
        .sort(),
    );
    expect(angles[0]).toEqual(angles[1]);
  }
});

test('interleaved legs wider than a third of the pole pitch are a danger, the same stacked are not', () => {
  expect(dangers(winding(rings('interleaved', 0.02)))).toEqual(['winding.layout.legWidth']);
  expect(dangers(winding(rings('stacked', 0.02)))).toEqual([]);
});

test('interleaved rings of four phases would lie in each other', () => {
  expect(dangers(winding(rings('interleaved', 0.005), { phases: 4 }))).toEqual(['winding.layout.placement']);
});

test('a serpentine is told not to flatten its skein', () => {
  const { cautions } = windingStage(winding(rings('stacked')), 12);
  expect(cautions.map(({ severity, message }) => [severity, /one slot/.test(message)])).toContainEqual(['note', true]);
});

test('an unbalanced count is told what would balance', () => {
  const { cautions, balanced, nearestBalanced } = windingStage(winding(coils(12)), 12);
  expect(balanced).toBe(false);
  expect(nearestBalanced.length).toBeGreaterThan(0);
  expect(cautions.find(({ severity }) => severity === 'warning')?.message).toContain(nearestBalanced[0]);
});

test('a coil two pole pitches wide is told that it gives next to nothing', () => {
  const wide = { ...coils(6), holeInnerWidth: 0.058, holeOuterWidth: 0.07, legWidth: 0.004 };
  expect(windingStage(winding(wide), 24).cautions.map(({ where }) => where)).toContain('winding.layout.holeOuterWidth');
});

test('the peg distance closes on the mean turn', () => {
  const { pegs, meanTurn } = windingStage(winding(rings('stacked')), 12);
  expect(pegs && 2 * pegs.distance + Math.PI * (pegs.diameter + pegs.bundleDepth)).toBeCloseTo(meanTurn, 12);
});

test('every poor design gives finite numbers', () => {
  for (const w of [winding(coils(1)), winding(coils(2)), winding(coils(7)), winding(coils(9), { phases: 6, parallelPaths: 40 })])
    for (const poles of [4, 12, 80]) {
      const numbers: number[] = [];
      JSON.stringify(windingStage(w, poles), (_, value: unknown) => {
        if (typeof value === 'number') numbers.push(value);
        return value;
      });
      expect(numbers.every(Number.isFinite)).toBe(true);
    }
});
