import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Block, Column } from './document';
import { expectedReadings } from './expected-readings';
import { celsius, hertz, ohms, rpm, volts } from './figures';
import { effectiveConnection } from './joins';

/** Coils side by side in the table of each coil's readings. */
const ACROSS = 3;

const numbered: Column = { head: 'Coil', share: 0.09, align: 'right' };
const box = (head: string, share: number): Column => ({ head, share, box: 'write' });

/** What the meter must read, with boxes for what it did read. */
export function readingsBlocks(design: Design, results: Results): Block[] {
  const expected = expectedReadings(design, results);
  const { ohms: r, speeds, temperature } = expected;
  const kind = effectiveConnection(design.winding.connection, design.winding.phases);
  const drill = speeds[0];
  return [
    {
      kind: 'text',
      text: `Ohms at ${celsius(temperature)} in the room; ${design.winding.wire.metal} reads 0.4 % more for every degree warmer. Take off what the meter reads with its own leads touching. ${phaseWords[kind]} Volts are AC, nothing connected.${results.stages.winding.balanced ? '' : ' The phases of this winding are not alike: what stands here is phase A.'}${dangerWords(speeds)}`,
    },
    {
      kind: 'table',
      columns: [
        { head: 'Ohms', share: 0.34 },
        { head: 'must read', share: 0.22, align: 'right' },
        box('did read', 0.22),
        box('at °C', 0.22),
      ],
      rows: [
        ['One coil alone', ohms(r.coil), '', ''],
        ['One phase', ohms(r.phase), '', ''],
        ['Line: terminal to next', ohms(r.line), '', ''],
      ],
    },
    {
      kind: 'table',
      columns: [
        { head: 'Volts and hertz', share: 0.28 },
        ...speeds.flatMap((): Column[] => [{ head: 'must', share: 0.115, align: 'right' }, box('did', 0.125)]),
      ],
      rows: [
        ['Turning at', ...speeds.flatMap((s) => [rpm(s.rpm), ''])],
        ['Frequency', ...speeds.flatMap((s) => [hertz(s.hertz), ''])],
        ['One coil alone', ...speeds.flatMap((s) => [volts(s.coil), ''])],
        ['One phase', ...speeds.flatMap((s) => [volts(s.phase), ''])],
        ['Line: terminal to next', ...speeds.flatMap((s) => [volts(s.line), ''])],
      ],
    },
    { kind: 'heading', text: 'Each coil by itself' },
    {
      kind: 'text',
      text: `Each must read ${ohms(r.coil)} and, at ${rpm(drill.rpm)}, ${volts(drill.coil)}. One that is low in both has a short or too few turns; one that differs by more than 2 % from the others has been counted wrong.`,
    },
    {
      kind: 'table',
      columns: Array.from({ length: ACROSS }, () => [numbered, box('Ω', 0.122), box('V', 0.122)]).flat(),
      rows: threes(results.stages.winding.coils.map(({ coil }) => String(coil))),
    },
  ];
}

/** Alternating volts above which bare terminals are not to be touched: IEC 61140, extra-low voltage. */
const TOUCHABLE = 50;

function dangerWords(speeds: { rpm: number; line: number }[]): string {
  const high = speeds.find(({ line }) => line > TOUCHABLE);
  return high ? ` At ${rpm(high.rpm)} the line passes ${TOUCHABLE} V: clip the meter on before turning and touch nothing bare.` : '';
}

const phaseWords = {
  star: 'A phase is read from its terminal to the star point.',
  delta: 'A phase is read with the corners still open; the line once they are joined.',
  separate: 'A phase is read between its own two terminals, so phase and line are the same.',
};

function threes(labels: string[]): string[][] {
  const rows = Math.ceil(labels.length / ACROSS);
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: ACROSS }, (_, column) => [labels[column * rows + row] ?? '', '', '']).flat(),
  );
}
