import { expect, test } from 'vitest';
import { controllerCheck, type Demands } from '../../../core/controller/check';

const controller = {
  maxInputVoltage: 100,
  minInputVoltage: 20,
  maxInputCurrent: 20,
  maxPower: 1000,
  batteryVoltage: 24,
  maxChargeCurrent: 60,
};
const demands: Demands = {
  turns: 80,
  connection: 'star',
  rated: { amps: 10, watts: 600 },
  greatestWatts: 600,
  gustVolts: 150,
  ratedOpenVolts: 60,
  lightVolts: 30,
};
const advised = (situation: string, change: Partial<Demands> = {}) =>
  controllerCheck(controller, { ...demands, ...change }).find((each) => each.situation === situation)!;
const scaled = (turns: number): Partial<Demands> => ({
  turns,
  gustVolts: (150 * turns) / 80,
  ratedOpenVolts: (60 * turns) / 80,
  lightVolts: (30 * turns) / 80,
});

test('with as many turns fewer as advised the gust passes, and with one less than that it does not', () => {
  // 85 V of 150 V: 45.3 turns, 45 kept, 35 fewer.
  expect(advised('Gust, load lost').advice).toContain('35 turns fewer');
  expect(advised('Gust, load lost', scaled(45)).verdict).toBe('pass');
  expect(advised('Gust, load lost', scaled(46)).verdict).toBe('tight');
});

test('with as many turns more as advised the light wind passes', () => {
  // 10 V of 80 turns; 23 V needs 184, 104 more.
  expect(advised('Light wind', { lightVolts: 10 }).advice).toContain('104 turns more');
  expect(advised('Light wind', { turns: 184, lightVolts: 23 }).verdict).toBe('pass');
});

test('delta is advised only for three phases in star, and said to fall short where it does', () => {
  // 150/√3 = 86.6 V, above 85 V.
  expect(advised('Gust, load lost').advice).toContain('87 V, still too near');
  expect(advised('Gust, load lost', { gustVolts: 120 }).advice).toContain('69 V;');
  expect(advised('Gust, load lost', { connection: 'delta' }).advice).not.toContain('delta');
  expect(advised('Gust, load lost', { phases: 5 }).advice).not.toContain('delta');
});

test('volts no whole turn can mend leave the brake', () => {
  const { advice } = advised('Gust, load lost', { turns: 1, connection: 'delta' });
  expect(advice).toBe('A brake that acts before the volts do.');
});

test('light wind says at which wind the controller wakes', () => {
  expect(advised('Light wind', { wakeWind: 3.1 })).toMatchObject({ verdict: 'pass', advice: 'The controller wakes at 3.1 m/s.' });
  expect(advised('Light wind', { lightVolts: 0, wakeWind: null }).advice).toContain('brings no volts');
});

test('a controller without a least voltage is content with any', () => {
  const [, , light] = controllerCheck({ ...controller, minInputVoltage: 0 }, { ...demands, lightVolts: 0 });
  expect(light.verdict).toBe('pass');
});

test('a full battery says what must be dumped even when it can be', () => {
  expect(advised('Battery full')).toMatchObject({ verdict: 'pass', value: 600, limit: 1000, unit: 'W' });
  expect(advised('Battery full').advice).toContain('600 W');
  expect(advised('Battery full', { greatestWatts: 1200 })).toMatchObject({ verdict: 'fail' });
});

test('on the battery’s side 1440 W at 24 V are all of 60 A', () => {
  // 1440/24 = 60 A, all of it; 0.85 · 60 · 24 = 1224 W, so 216 W less. The power limit is set high so that the charge current rules.
  const [rated] = controllerCheck({ ...controller, maxPower: 3000 }, { ...demands, rated: { amps: 10, watts: 1440 } });
  expect(rated).toMatchObject({ verdict: 'tight', value: 60, limit: 60, unit: 'A' });
  expect(rated.advice).toContain('216 W less');
});

test('furling is advised from the wind at which as much as may be comes', () => {
  // 25 A of 20 A at rated wind, 17 A may come: between 8 m/s with 12 A and 10 m/s with 25 A, 8 + 2 · 5/13 = 8.77.
  const winds = [
    { wind: 8, dcAmps: 12, dcWatts: 400 },
    { wind: 10, dcAmps: 25, dcWatts: 600 },
  ];
  expect(advised('Rated wind', { winds, rated: { amps: 25, watts: 600 } }).advice).toContain('furl from 8.8 m/s');
  // 850 W of 1000 W may come: 8 + 2 · (850 − 400)/(1200 − 400) = 9.125.
  const more = winds.map((each) => ({ ...each, dcWatts: each.wind === 10 ? 1200 : 400 }));
  expect(advised('Battery full', { winds: more, greatestWatts: 1200 }).advice).toContain('furl from 9.1 m/s');
});

test('with its load lost the free wheel may meet as much wind as brings the volts that pass', () => {
  // 150 V at 25 m/s; 85 V at 25 · 85/150 = 14.17 m/s.
  expect(advised('Gust, load lost', { gustWind: 25 }).advice).toContain('never meets more than 14.2 m/s');
});

test('fewer turns and delta say at which speed charging begins then', () => {
  // 45 of 80 turns: 300 · 80/45 = 533 rpm.
  const inDelta = () => ({ share: 0.5, cutInRpm: 600 });
  const { advice } = advised('Gust, load lost', { cutInRpm: 300, inDelta });
  expect(advice).toContain('35 turns fewer a coil, cut-in then at 533 rpm');
  expect(advice).toContain('delta instead of star, 75 V, cut-in then at 600 rpm');
});

test('the margin is what is left of the limit, or lacks to it', () => {
  // (100 − 150)/100; (30 − 20)/20; (1000 − 600)/1000
  expect(advised('Gust, load lost').margin).toBeCloseTo(-0.5, 9);
  expect(advised('Light wind').margin).toBeCloseTo(0.5, 9);
  expect(advised('Battery full').margin).toBeCloseTo(0.4, 9);
});
