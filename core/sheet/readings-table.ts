import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Block, Column } from './document';
import { expectedReadings } from './expected-readings';
import { celsius, digits, hertz, ohms, rpm, volts } from './figures';
import { effectiveConnection } from './joins';

/** Coils side by side in the table of each coil's readings. */
const ACROSS = 3;

const box = (head: string, share: number): Column => ({ head, share, box: true });

/** What the meter must read, with boxes for what it did read. */
export function readingsBlocks(design: Design, results: Results): Block[] {
  const expected = expectedReadings(design, results);
  const { ohms: r, speeds, temperature } = expected;
  const kind = effectiveConnection(design.winding.connection, design.winding.phases);
  const drill = speeds[0];
  return [
    {
      kind: 'text',
      text: `Ohms at ${celsius(temperature)} in the room; ${design.winding.wire.metal} reads 0.4 % more for every degree warmer. Take off what the meter reads with its own leads touching. ${phaseWords[kind]} Volts are AC, nothing connected.`,
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
    ...speeds.map(
      (speed): Block => ({
        kind: 'table',
        columns: [
          { head: `At ${rpm(speed.rpm)}`, share: 0.34 },
          { head: 'must read', share: 0.22, align: 'right' },
          box('did read', 0.22),
          box('at rpm', 0.22),
        ],
        rows: [
          ['Frequency', hertz(speed.hertz), '', ''],
          ['One coil alone', volts(speed.coil), '', ''],
          ['One phase', volts(speed.phase), '', ''],
          ['Line: terminal to next', volts(speed.line), '', ''],
        ],
      }),
    ),
    { kind: 'heading', text: 'Each coil by itself' },
    {
      kind: 'text',
      text: `Each must read ${ohms(r.coil)} and, at ${rpm(drill.rpm)}, ${volts(drill.coil)}. One that is low in both has a short or too few turns; one that differs by more than 2 % from the others has been counted wrong.`,
    },
    {
      kind: 'table',
      columns: Array.from({ length: ACROSS }, () => [
        { head: 'Coil', share: 0.09, align: 'right' } as Column,
        box('Ω', 0.122),
        box('V', 0.122),
      ]).flat(),
      rows: threes(results.stages.winding.coils.map(({ coil }) => digits(coil, 1 + Math.floor(Math.log10(coil))))),
    },
  ];
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
