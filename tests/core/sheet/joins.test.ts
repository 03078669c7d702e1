import { describe, expect, it } from 'vitest';
import { type Connection, junctions, joinWords, phaseEnds } from '../../../core/sheet/joins';
import { type Coil, windingStage } from '../../../core/winding/stage';
import { coilEmf } from '../../../core/emf/waveform';
import { potentials } from './circuit';
import { concentrated, designWith, resultsFor } from './fixture';

const coilsOf = (count: number, phases: number, parallelPaths: number) =>
  resultsFor(designWith({ layout: concentrated(count), phases, parallelPaths })).stages.winding.coils;

const cases: [coils: number, phases: number, paths: number, connection: Connection][] = [
  [9, 3, 1, 'star'],
  [9, 3, 1, 'delta'],
  [12, 3, 2, 'separate'],
  [60, 6, 2, 'star'],
  [60, 6, 5, 'delta'],
  [20, 5, 1, 'star'],
  [8, 2, 2, 'star'],
  [6, 1, 1, 'star'],
  [6, 1, 3, 'delta'],
  [120, 3, 40, 'delta'],
];

describe.each(cases)('%i coils in %i phases of %i paths, %s', (count, phases, paths, connection) => {
  const coils = coilsOf(count, phases, paths);
  const nodes = junctions(coils, phases, connection);
  const named = (name: string) => nodes.find((n) => n.name === name)!;

  it('walked from terminal to terminal, every coil of a phase adds its EMF with the sign of its direction', () => {
    const instant = 0.4;
    const phaseEmf = (phase: number) => Math.cos(instant - (2 * Math.PI * (phase - 1)) / phases);
    const volts = potentials(nodes, coils, (coil) => coil.direction * phaseEmf(coil.phase));
    for (let phase = 1; phase <= phases; phase++) {
      const { begin, end } = phaseEnds(phase, phases, connection);
      expect(volts.get(named(begin))! - volts.get(named(end))!).toBeCloseTo((count / phases / paths) * phaseEmf(phase), 9);
    }
  });

  it('joins each end of each coil exactly once, and names what it joins from both sides', () => {
    const ends = nodes.flatMap((n) => n.ends.map((e) => `${e.end} of ${e.coil}`));
    expect(ends).toHaveLength(2 * count);
    expect(new Set(ends).size).toBe(2 * count);
    for (const node of nodes.filter((n) => n.kind === 'joint')) {
      const [a, b] = node.ends;
      expect(joinWords(a, nodes)).toBe(`${b.end} of ${b.coil}`);
      expect(joinWords(b, nodes)).toBe(`${a.end} of ${a.coil}`);
    }
  });
});

it('a star brings out one terminal a phase and one star point', () => {
  const names = junctions(coilsOf(9, 3, 1), 3, 'star')
    .filter((n) => n.kind !== 'joint')
    .map((n) => n.name);
  expect(names).toEqual(['A', 'B', 'C', 'star point']);
});

it('each corner of a delta gathers the beginning of one phase and the end of another', () => {
  const corners = junctions(coilsOf(3, 3, 1), 3, 'delta');
  expect(corners.map((n) => [n.name, n.ends.map((e) => `${e.end} of ${e.coil}`)])).toEqual([
    ['A', ['start of 1', 'finish of 3']],
    ['B', ['finish of 1', 'start of 2']],
    ['C', ['finish of 2', 'start of 3']],
  ]);
});

it('separate phases share nothing', () => {
  const names = junctions(coilsOf(3, 3, 1), 3, 'separate').map((n) => n.name);
  expect(names).toEqual(['A1', 'A2', 'B1', 'B2', 'C1', 'C2']);
});

it('one wrongly joined coil in parallel paths shows as a circulating current', () => {
  const coils = coilsOf(12, 3, 2);
  const nodes = junctions(coils, 3, 'star');
  expect(() => potentials(nodes, coils, (coil) => (coil.coil === 4 ? -1 : 1) * coil.direction)).toThrow(/circulates/);
});

describe('the machine as the program assigns its coils', () => {
  it.each([
    [9, 12, 3, 1],
    [12, 16, 3, 2],
    [12, 10, 3, 1],
    [24, 20, 6, 2],
    [8, 10, 2, 1],
    [10, 8, 5, 1],
    [6, 4, 1, 1],
  ])('%i coils on %i poles, %i phases of %i paths: the joins give the EMF that is worked out', (count, poles, phases, parallelPaths) => {
    const { winding } = designWith({ layout: concentrated(count), phases, parallelPaths, connection: 'star' }, poles);
    const placed = windingStage(winding, poles);
    const { coils } = placed;
    const emfOf = ({ angle }: Coil) => coilEmf([1], [1], poles / 2, angle, 1);
    const nodes = junctions(coils, phases, 'star');
    for (const part of ['cos', 'sin'] as const) {
      const volts = potentials(nodes, coils, (coil) => emfOf(coil)[part][0]);
      for (let phase = 1; phase <= phases; phase++) {
        const { begin, end } = phaseEnds(phase, phases, 'star');
        const across = volts.get(nodes.find((n) => n.name === begin)!)! - volts.get(nodes.find((n) => n.name === end)!)!;
        const own = coils.filter((coil) => coil.phase === phase);
        expect(across).toBeCloseTo(
          own.reduce((sum, coil) => sum + (coil.direction * emfOf(coil)[part][0]) / parallelPaths, 0),
          6,
        );
      }
    }
  });
});
