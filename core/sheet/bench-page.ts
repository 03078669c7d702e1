import { comparedReadings, deviationsOf, isOpenCircuit, percentOff, placeWords, toneOf, toneWords, type Compared } from '../bench/compared';
import type { Results } from '../chain/results';
import type { Reading } from '../design/readings';
import type { Design } from '../design/schema';
import type { Block, Column } from './document';
import { amps, celsius, hertz, nb, ohms, rpm, volts } from './figures';
import { effectiveConnection } from './joins';
import { type Bands, passBands } from './tolerances';

/** On a slow drill. [rpm] */
const TURNING = 150;

const units: Record<Compared['figure'], (value: number) => string> = { ohms, acVolts: volts, dcVolts: volts, dcAmps: amps, hertz };

const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The back of the sheet: each place with the band it passes in, boxes to write in, and what was read so far. */
export function benchPage(design: Design, results: Results): Block[] {
  return [
    {
      kind: 'table',
      columns: [box('Date', 0.18), box('Meter', 0.2), box('Leads touching, Ω', 0.26), box('Room, °C', 0.16), box('Speed by', 0.2)],
      rows: [['', '', '', '', '']],
    },
    ...bands(design, results),
    ...record(design, results),
  ];
}

const box = (head: string, share: number): Column => ({ head, share, box: 'write' });

function bands(design: Design, results: Results): Block[] {
  const places = placesOf(design);
  const speed = (TURNING * 2 * Math.PI) / 60;
  const asked = places.map(
    ({ on, number }): Reading => ({
      ...{ label: '', on, number, speed, volts: 1, meter: 'rms' },
      ...(on === 'dc' ? { load: 'none' } : { ohms: 1 }),
    }),
  );
  const planned = comparedReadings({ ...design, bench: asked }, results);
  const shares = passBands(design, results);
  const band = (row: number, kind: keyof Bands) => {
    const found = planned.find((c) => c.row === row && (c.figure === 'ohms') === (kind === 'ohms'));
    return found ? fromTo(units[found.figure], found.planned, shares[kind]) : '';
  };
  return [
    {
      kind: 'text',
      text: `Ohms at ${celsius(design.surroundings.airTemperature)}, those of the leads taken off; volts RMS at ${rpm(TURNING)}, nothing connected but the meter. The bands are those of “What the meter must read”. A reading outside: read it again, then enter it on the Bench worksheet, which also knows what a meter without true RMS shows.`,
    },
    {
      kind: 'table',
      columns: [
        { head: 'Meter on', share: 0.2 },
        { head: 'ohms', share: 0.22, align: 'right' },
        box('did read', 0.16),
        { head: 'volts', share: 0.22, align: 'right' },
        box('did read', 0.2),
      ],
      rows: places.map((place, row) => [place.words, band(row, 'ohms'), '', band(row, 'volts'), '']),
    },
  ];
}

/** As in "4.66 to 5.13 V", a unit that both ends share once. */
function fromTo(say: (value: number) => string, value: number, share: number): string {
  const [low, high] = [-1, 1].map((side) => say(value * (1 + side * share)).split(nb));
  return `${low[1] === high[1] ? low[0] : low.join(nb)} to ${high.join(nb)}`;
}

type Place = Pick<Reading, 'on' | 'number'> & { words: string };

/** Each kind of place that shows a fault of its own; coils by themselves have their boxes before. */
function placesOf({ winding: { phases, connection } }: Design): Place[] {
  const each = (on: 'phase' | 'line'): Place[] =>
    Array.from({ length: phases }, (_, k) => ({ on, number: k + 1, words: capital(placeWords({ label: '', on, number: k + 1 })) }));
  return [
    { on: 'coil', number: 1, words: 'Any coil alone' },
    ...each('phase'),
    ...(effectiveConnection(connection, phases) === 'separate' ? [] : each('line')),
    { on: 'dc', number: 1, words: 'DC side' },
  ];
}

/** What the design's file holds of readings already. */
function record(design: Design, results: Results): Block[] {
  const readings = design.bench ?? [];
  const compared = comparedReadings(design, results);
  if (compared.length === 0) return [];
  return [
    { kind: 'heading', text: 'Read so far' },
    {
      kind: 'table',
      columns: [
        { head: 'Meter on', share: 0.3 },
        { head: 'must', share: 0.15, align: 'right' },
        { head: 'did', share: 0.15, align: 'right' },
        { head: 'off by', share: 0.16, align: 'right' },
        { head: 'that is', share: 0.24 },
      ],
      rows: compared.map((c) => {
        const reading = readings[c.row];
        const say = units[c.figure];
        return [
          `${reading.label ? `${reading.label}, ` : ''}${placeWords(reading)}`,
          say(c.planned),
          isOpenCircuit(c) ? 'open' : say(c.measured),
          percentOff(c).replace(' ', nb),
          toneWords(toneOf(deviationsOf(c))),
        ];
      }),
    },
  ];
}
