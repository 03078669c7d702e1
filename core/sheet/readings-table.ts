import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import type { Block, Column } from './document';
import { expectedReadings } from './expected-readings';
import { celsius, hertz, ohms, rpm, volts } from './figures';
import { effectiveConnection } from './joins';
import { bandWords } from './tolerances';

/** Coils side by side in the table of each coil's readings. */
const ACROSS = 3;

const numbered: Column = { head: 'Coil', share: 0.09, align: 'right' };
const box = (head: string, share: number): Column => ({ head, share, box: 'write' });

/** What the meter must read, with boxes for what it did read. */
export function readingsBlocks(design: Design, results: Results): Block[] {
  const { ohms: r, speeds, temperature, bands } = expectedReadings(design, results);
  const kind = effectiveConnection(design.winding.connection, design.winding.phases);
  const slow = speeds[0];
  const banded = (write: (value: number) => string, value: number, band: number) => [
    write(value),
    `${write(value * (1 - band))} to ${write(value * (1 + band))}`,
  ];
  const resistance = (value: number) => [...banded(ohms, value, bands.ohms), '', ''];
  const voltage = (value: number) => [...banded(volts, value, bands.volts), ''];
  return [
    {
      kind: 'text',
      text: `Ohms at ${celsius(temperature)} in the room; ${design.winding.wire.metal} reads 0.4 % more for every degree warmer. Take off what the meter reads with its own leads touching. ${phaseWords[kind]}${r.coil < FEEBLE ? ' So few ohms are beyond most meters: send a known current of an ampere or two through, read the volts across the coil itself, and divide.' : ''} Volts are AC, nothing connected.${results.stages.winding.balanced ? '' : ' The phases of this winding are not alike: what stands here is phase A.'}${dangerWords(speeds)}`,
    },
    {
      kind: 'table',
      columns: [
        { head: 'Ohms', share: 0.29 },
        { head: 'must read', share: 0.15, align: 'right' },
        { head: 'passes from … to', share: 0.26, align: 'right' },
        box('did read', 0.17),
        box('at °C', 0.13),
      ],
      rows: [
        ['One coil alone', ...resistance(r.coil)],
        ['One phase', ...resistance(r.phase)],
        ['Line: terminal to next', ...resistance(r.line)],
      ],
    },
    {
      kind: 'table',
      columns: [
        { head: 'Volts at', share: 0.14 },
        { head: '', share: 0.28 },
        { head: 'must read', share: 0.15, align: 'right' },
        { head: 'passes from … to', share: 0.26, align: 'right' },
        box('did read', 0.17),
      ],
      rows: speeds.flatMap((s) => [
        [rpm(s.rpm), 'Frequency', hertz(s.hertz), '', ''],
        ['', 'One coil alone', ...voltage(s.coil)],
        ['', 'One phase', ...voltage(s.phase)],
        ['', 'Line: terminal to next', ...voltage(s.line)],
      ]),
    },
    {
      kind: 'text',
      text: `The hertz tell the speed: where they are off by a part, so must the volts be. The bands, ±${(100 * bands.ohms).toFixed(1)} % for ohms and ±${(100 * bands.volts).toFixed(1)} % for volts, hold the tolerances this machine is built to: ${bandWords(design)}.`,
    },
    { kind: 'heading', text: 'Each coil by itself' },
    {
      kind: 'text',
      text: `Each must read ${ohms(r.coil)} and, at ${rpm(slow.rpm)}, ${volts(slow.coil)}. One that is low in both has a short or too few turns; one that differs by more than 2 % from the others has been counted wrong.`,
    },
    {
      kind: 'table',
      columns: Array.from({ length: ACROSS }, () => [numbered, box('Ω', 0.122), box('V', 0.122)]).flat(),
      rows: threes(results.stages.winding.coils.map(({ coil }) => String(coil))),
    },
  ];
}

/** Ohms below which a meter's own leads are more than what it measures. Common practice, no source. [Ω] */
const FEEBLE = 0.5;

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
