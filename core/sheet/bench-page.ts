import {
  AS_IT_SHOULD_BE,
  comparedReadings,
  deviationsOf,
  isOpenCircuit,
  percentOff,
  placeWords,
  toneOf,
  toneWords,
  type Compared,
} from '../bench/compared';
import { METER_ACCURACY, TACHOMETER_ACCURACY } from '../bench/readings';
import type { Results } from '../chain/results';
import type { Reading } from '../design/readings';
import type { Design } from '../design/schema';
import type { Block, Column } from './document';
import { amps, celsius, hertz, nb, ohms, percent, rpm, volts } from './figures';
import { effectiveConnection } from './joins';

/** On a slow drill. [rpm] */
const TURNING = 150;

const units: Record<Compared['figure'], (value: number) => string> = { ohms, acVolts: volts, dcVolts: volts, dcAmps: amps, hertz };

const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The back of the sheet: bands that good readings keep to, boxes to write them in, and what was read so far. */
export function benchPage(design: Design, results: Results): Block[] {
  return [
    { kind: 'heading', text: 'Bench record', newPage: true },
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
  const { winding } = design;
  const places = placesOf(design);
  const shaft = (TURNING * 2 * Math.PI) / 60;
  const asked = places.map(
    ({ on, number }): Reading => ({ label: '', on, number, speed: shaft, volts: 1, ...(on === 'dc' ? { load: 'none' } : { ohms: 1 }) }),
  );
  const planned = comparedReadings({ ...design, bench: asked }, results);
  // The plan's own value in place of what is not read yet: a meter's share goes with it.
  const answered = asked.map(
    (reading, row): Reading => ({
      ...reading,
      ...Object.fromEntries(planned.filter((c) => c.row === row).map((c) => [c.figure === 'ohms' ? 'ohms' : 'volts', c.planned])),
    }),
  );
  const expected = comparedReadings({ ...design, bench: answered }, results);
  const band = (row: number, isOhms: boolean) => {
    const found = expected.find((c) => c.row === row && (c.figure === 'ohms') === isOhms);
    return found ? fromTo(found) : '';
  };
  const words =
    effectiveConnection(winding.connection, winding.phases) === 'delta' ? ' Phases with the corners of the delta still open.' : '';
  return [
    {
      kind: 'text',
      text: `Ohms at ${celsius(design.surroundings.airTemperature)}, those of the leads taken off; volts at ${rpm(TURNING)}, nothing connected but the meter.${words} 95 of 100 good readings keep to these bands, by a plain meter good to ${percent(METER_ACCURACY)} and a tachometer good to ${percent(TACHOMETER_ACCURACY)}. One that does not: read it again, then enter it on the Bench worksheet.`,
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
      rows: places.map((place, row) => [place.words, band(row, true), '', band(row, false), '']),
    },
  ];
}

/** As in "4.66 to 5.13 V", a unit that both ends share once. */
function fromTo({ figure, planned, sigma }: Compared): string {
  const [low, high] = [-1, 1].map((side) => units[figure](planned + side * AS_IT_SHOULD_BE * sigma).split(nb));
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
