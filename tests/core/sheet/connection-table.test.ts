import { describe, expect, it } from 'vitest';
import { METALS } from '../../../core/constants';
import type { Design } from '../../../core/design/schema';
import { emfFromShape, type PhaseEmf } from '../../../core/emf/stage';
import { combined } from '../../../core/emf/waveform';
import { createRandom } from '../../../core/numeric/random';
import { connectionBlocks } from '../../../core/sheet/connection-table';
import { expectedReadings } from '../../../core/sheet/expected-readings';
import { effectiveConnection, phaseLetter } from '../../../core/sheet/joins';
import { windingStage } from '../../../core/winding/stage';
import { wireStage } from '../../../core/wire/stage';
import { concentrated, designWith, resultsFor, serpentine } from './fixture';
import { tableCircuit } from './table-circuit';

/** Strengths of linkage at three harmonics, so that a wrong pitch or sense shows in more than one. */
const ORDERS = [1, 3, 5];
const LINKAGE = [0.011, 0.0017, 0.0006];

/** What core makes of a design before it is joined on the bench: coils, ohms and volts. */
function machine(design: Design) {
  const { winding, discs } = design;
  const placed = windingStage(winding, discs.poles);
  const wire = wireStage(winding, winding.wire, placed);
  const shape = { polePairs: discs.poles / 2, orders: ORDERS, linkage: placed.coils.map(() => LINKAGE) };
  const emf = emfFromShape(
    winding,
    placed,
    shape,
    placed.coils.map(() => placed.coils.map(() => 0)),
    wire,
  );
  const blank = resultsFor(design);
  const { coilResistance20, phaseResistance20 } = wire;
  const results = {
    ...blank,
    coils: { ...blank.coils, count: placed.coils.length, coilResistance20, phaseResistance20 },
    stages: { ...blank.stages, winding: placed, wire, emf },
  };
  const table = connectionBlocks(design, results).flatMap((b) => (b.kind === 'table' ? b.rows : []));
  return { design, results, table };
}

type Machine = ReturnType<typeof machine>;

/** Sixty machines with phases alike, drawn by chance: coils, poles, phases, paths, connection, wire. */
const machines = ((): Machine[] => {
  const random = createRandom(20260314);
  const among = <T>(list: readonly T[]) => list[Math.floor(random.uniform() * list.length)];
  const found: Machine[] = [];
  while (found.length < 60) {
    const phases = 1 + Math.floor(random.uniform() * 6);
    const poles = 2 * (2 + Math.floor(random.uniform() * 19));
    const ring = random.uniform() < 0.2;
    const coils = phases * (1 + Math.floor(random.uniform() * 10));
    const parallelPaths = ring ? 1 : among([1, 2, 3].filter((paths) => (coils / phases) % paths === 0));
    const layout = ring ? serpentine : concentrated(coils);
    const turns = 5 + Math.floor(random.uniform() * 90);
    const wire = { ...designWith({}).winding.wire, inHand: among([1, 2, 3]), metal: among(['copper', 'aluminium'] as const) };
    // Leads are soldered on at the terminals and are no part of the table.
    const design = designWith(
      { layout, phases, parallelPaths, turns, wire, leadLength: 0, connection: among(['star', 'delta', 'separate'] as const) },
      poles,
    );
    const made = machine(design);
    // Paths of unequal volts share no one phase voltage with each other before a current flows.
    const alike = (made.results.stages.emf.circulating ?? 0) < 1e-9;
    if (made.results.stages.winding.balanced && alike) found.push(made);
  }
  return found;
})();

/** Pairs of terminals that core names volts for, and those volts. */
function predicted({ design, results }: Machine): { from: string; to: string; emf: PhaseEmf }[] {
  const { phases } = design.winding;
  const { phaseEmf } = results.stages.emf;
  const kind = effectiveConnection(design.winding.connection, phases);
  const common = combined(
    phaseEmf,
    phaseEmf.map(() => 1 / phases),
  );
  return phaseEmf.map((emf, i) => {
    const letter = phaseLetter(i + 1);
    if (kind === 'star') return { from: letter, to: 'star point', emf };
    if (kind === 'separate') return { from: `${letter}1`, to: `${letter}2`, emf };
    return { from: letter, to: phaseLetter(((i + 1) % phases) + 1), emf: combined([emf, common], [1, -1]) };
  });
}

/** Greatest departure of the walked table from what core predicts, as a share of the phase's volts or ohms. */
function departure(made: Machine, table: string[][]): number {
  const { results, design } = made;
  const { coilEmf } = results.stages.emf;
  const circuit = tableCircuit(table, results.coils.coilResistance20);
  const scale = Math.hypot(...results.stages.emf.phaseEmf[0].cos, ...results.stages.emf.phaseEmf[0].sin);
  const pairs = predicted(made);
  const volts = (['cos', 'sin'] as const).flatMap((part) =>
    ORDERS.flatMap((_, h) => {
      const potential = circuit.potentials((coil) => coilEmf[coil - 1][part][h]);
      return pairs.map(({ from, to, emf }) => Math.abs(potential(from) - potential(to) - emf[part][h]) / scale);
    }),
  );
  // As the meter must read it, brought back to 20 °C.
  const { ohms, temperature } = expectedReadings(design, results);
  const warm = 1 + METALS[design.winding.wire.metal].temperatureCoefficient * (temperature - 20);
  const star = effectiveConnection(design.winding.connection, design.winding.phases) === 'star';
  const [{ from, to }] = pairs;
  const read = circuit.resistance(from, star ? 'B' : to) * warm;
  return Math.max(...volts, Math.abs(read / ohms.line - 1));
}

describe('the printed connection table, walked as a circuit', () => {
  it('gives the volts and the ohms that core predicts, for sixty machines', () => {
    for (const made of machines) {
      const { winding, discs } = made.design;
      const name = `${made.results.coils.count} coils, ${discs.poles} poles, ${winding.phases} phases in ${winding.connection}, ${winding.parallelPaths} paths`;
      expect([name, departure(made, made.table) < 1e-9]).toEqual([name, true]);
    }
  });

  it('one coil joined the other way round is caught in each of them', () => {
    const random = createRandom(7);
    for (const made of machines) {
      const wrong = 1 + Math.floor(random.uniform() * made.results.coils.count);
      const swapped = (words: string) =>
        words.replace(/(start|finish)(\sof\s)(\d+)/g, (all, end: string, of: string, coil: string) =>
          Number(coil) === wrong ? `${end === 'start' ? 'finish' : 'start'}${of}${coil}` : all,
        );
      const table = made.table.map((row) => {
        const words = row.map(swapped);
        return words[0] === String(wrong) ? [...words.slice(0, 3), words[5], words[4], words[3], words[6]] : words;
      });
      expect(departure(made, table)).toBeGreaterThan(0.01);
    }
  });

  it('the sixty hold every number of phases, every connection, rings and parallel paths', () => {
    const kinds = new Set(
      machines.flatMap(({ design: { winding } }) => [
        String(winding.phases),
        winding.connection,
        winding.layout.kind,
        `${winding.parallelPaths} paths`,
      ]),
    );
    expect([...kinds].sort()).toEqual(
      ['1', '2', '3', '4', '5', '6', 'star', 'delta', 'separate', 'serpentine', 'concentrated', '1 paths', '2 paths', '3 paths'].sort(),
    );
  });
});
