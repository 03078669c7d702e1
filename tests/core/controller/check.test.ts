import { expect, test } from 'vitest';
import { controllerCheck, type Demands } from '../../../core/controller/check';

const controller = {
  maxInputVoltage: 150,
  minInputVoltage: 30,
  maxInputCurrent: 30,
  maxPower: 1500,
  batteryVoltage: 48,
  maxChargeCurrent: 40,
};
const demands: Demands = {
  turns: 100,
  connection: 'star',
  rated: { amps: 10, watts: 800 },
  greatestWatts: 800,
  gustVolts: 120,
  ratedOpenVolts: 90,
  lightVolts: 45,
};
const verdicts = (change: Partial<Demands>) =>
  Object.fromEntries(controllerCheck(controller, { ...demands, ...change }).map((v) => [v.situation, v]));

test('a machine well inside the data sheet passes in all five situations', () => {
  const all = Object.values(verdicts({}));
  expect(all).toHaveLength(5);
  expect(all.map((v) => v.verdict)).toEqual(['pass', 'pass', 'pass', 'pass', 'pass']);
});

test('a gust above the greatest volts fails, and says how many turns fewer', () => {
  // 200 V from 100 turns; with 15 % to spare 0.85·150 = 127.5 V, so 63.75 of the turns may stay: 63, 37 fewer. In delta 200/√3 = 115 V.
  const gust = verdicts({ gustVolts: 200 })['Gust, load lost'];
  expect(gust).toMatchObject({ verdict: 'fail', value: 200, limit: 150, unit: 'V' });
  expect(gust.advice).toContain('37 turns fewer');
  expect(gust.advice).toContain('115 V');
});

test('within 15 % of a limit is tight: 135 of 150 V', () => expect(verdicts({ gustVolts: 135 })['Gust, load lost'].verdict).toBe('tight'));

test('too few volts in light wind fail, and say how many turns more', () => {
  // 20 V from 100 turns; 30 V and 15 % more is 34.5 V: 172.5, so 173 turns, 73 more.
  const light = verdicts({ lightVolts: 20 })['Light wind'];
  expect(light.verdict).toBe('fail');
  expect(light.advice).toContain('73 turns more');
});

test('at rated wind the worst of input amps, watts and charge amps rules', () => {
  // 1400 W: of 1500 W 93 %; on 48 V 29.2 A of 40 A 73 %; 10 A of 30 A 33 %.
  expect(verdicts({ rated: { amps: 10, watts: 1400 } })['Rated wind']).toMatchObject({ unit: 'W', value: 1400, verdict: 'tight' });
  expect(verdicts({ rated: { amps: 31, watts: 800 } })['Rated wind']).toMatchObject({ unit: 'A', value: 31, verdict: 'fail' });
});
