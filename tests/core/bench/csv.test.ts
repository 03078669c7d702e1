import { describe, expect, test } from 'vitest';
import { csvFromReadings, readingsFromCsv } from '../../../core/bench/csv';
import { OPEN_OHMS } from '../../../core/constants';
import type { Reading } from '../../../core/design/readings';

const two = [
  { label: 'first', on: 'coil', number: 1, ohms: 0.42, volts: 3.1 },
  { label: '', on: 'coil', number: 2, ohms: OPEN_OHMS, volts: 0 },
];

describe.each([
  ['commas', 'Note,Meter on,No.,Ohms,Volts\nfirst,coil,1,0.42,3.1\n,coil,2,OL,0\n'],
  ['tabs, as a spreadsheet copies', 'Note\tMeter on\tNo.\tOhms\tVolts\r\nfirst\tcoil\t1\t0.42\t3.1\r\n\tcoil\t2\topen\t0'],
  ['semicolons and decimal commas', 'note;on;number;ohms (Ω);volts (V)\nfirst;coil;1;0,42;3,1\n;coil;2;∞;0'],
  ['bars and quotes', '"note"|"on"|"number"|"ohms"|"volts"\n"first"|coil|1|.42|3.1 V\n|Coil|2|inf|0'],
])('text with %s', (_, text) => {
  test('is read', () => {
    expect(readingsFromCsv(text)).toEqual({ readings: two, problems: [] });
  });
});

test('units are taken from the heads', () => {
  const { readings, problems } = readingsFromCsv('on,no,rpm,temp °F,milliohm\nphase,1,300,68,1');
  expect(problems.map(({ column }) => column)).toEqual(['milliohm']);
  expect(readings).toEqual([]);
  const good = readingsFromCsv('on,no,speed rad/s,temp °F,mOhm,accuracy %,wind km/h\nphase,1,30,68,420,1.5,36');
  expect(good.problems).toEqual([]);
  expect(good.readings[0]).toMatchObject({ speed: 30, accuracy: 0.015, wind: 10 });
  expect(good.readings[0].temperature).toBeCloseTo(20, 9);
  expect(good.readings[0].ohms).toBeCloseTo(0.42, 9);
  expect(readingsFromCsv('on,rpm\ndc,300').readings[0].speed).toBeCloseTo(10 * Math.PI, 9);
});

describe('what cannot be read is told by line and column', () => {
  test.each([
    ['', 1, undefined, /nothing here/],
    ['volts,ohms\n3,4', 1, undefined, /column “on” is needed/],
    ['on,colour\ncoil,red', 1, 'colour', /not a head known here; known are note, on, number/],
    ['on,volts\ncoil,3\ncoil,lots', 3, 'volts', /must be a number; received “lots”/],
    ['on,volts\nwheel,3', 2, 'on', /must be one of coil, run, phase, line, dc; received “wheel”/],
    ['on,rpm\ncoil,99999', 2, 'rpm', /must be between 0 and 19099; received 99999/],
    ['on,no\ncoil,1.5', 2, 'no', /whole number/],
    ['on,no\ncoil,1,2', 2, undefined, /3 fields under 2 heads/],
  ])('%j', (text, line, column, message) => {
    const { problems } = readingsFromCsv(text);
    expect(problems[0].line).toBe(line);
    expect(problems[0].column).toBe(column);
    expect(problems[0].message).toMatch(message);
  });

  test('and the good lines are kept', () => {
    expect(readingsFromCsv('on,volts\ncoil,3\ncoil,x\ncoil,4').readings.map(({ volts }) => volts)).toEqual([3, 4]);
  });
});

test('readings written out are read back', () => {
  const all: Reading[] = [
    { label: 'a, "b"', on: 'run', number: 1, to: 4, speed: 15.707963, speedBy: 'drill', volts: 3.25, meter: 'rms', accuracy: 0.01 },
    {
      label: '',
      on: 'dc',
      number: 1,
      volts: 24.5,
      amps: 4,
      load: 'battery',
      wind: 6.5,
      windSpread: 1.5,
      frameRate: 25,
      alike: 6,
      temperature: 41,
    },
    { label: '', on: 'phase', number: 3, ohms: OPEN_OHMS, leads: 0.2, ohmsStep: 0.1 },
  ];
  const back = readingsFromCsv(csvFromReadings(all));
  expect(back.problems).toEqual([]);
  back.readings.forEach((reading, i) => {
    expect({ ...reading, speed: 0 }).toEqual({ ...all[i], speed: 0 });
    if (all[i].speed) expect(reading.speed).toBeCloseTo(all[i].speed ?? 0, 6);
  });
});

test('whatever is pasted, nothing is thrown', () => {
  for (const text of ['\uFEFF', ',,,', '"', 'on', 'on\n', 'on,on,on\ncoil,coil,coil', '{"json": 1}', '\t\t\n\t'])
    expect(() => readingsFromCsv(text)).not.toThrow();
});
