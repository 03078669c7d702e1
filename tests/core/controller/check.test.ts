import { expect, test } from 'vitest';
import { controllerCheck, type Demands } from '../../../core/controller/check';
import type { ControllerVerdict } from '../../../core/controller/stage';

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

test.each<[string, Partial<Demands>, Partial<ControllerVerdict>, string]>([
  // 36 A of 30 A. 85 % of 30 is 25.5, 10.5 A less. The same watts at 25.5 A: 100·36/25.5 = 141.2 turns, 142, 42 more.
  [
    'Rated wind',
    { rated: { amps: 36, watts: 1200 } },
    { value: 36, limit: 30, unit: 'A' },
    '10.5 A less: furl earlier, or about 42 turns more',
  ],
  // 180 V of 150 V. 85 % of 150 is 127.5 V: 100·127.5/180 = 70.8 turns, 70 stay, 30 fewer; delta 180/√3 = 103.9 V.
  ['Gust, load lost', { gustVolts: 180 }, { value: 180, limit: 150, unit: 'V' }, '30 turns fewer a coil; or delta instead of star, 104 V;'],
  // 24 V of 30 V. 115 % of 30 is 34.5 V: 100·34.5/24 = 143.75 turns, 144, 44 more.
  ['Light wind', { lightVolts: 24 }, { value: 24, limit: 30, unit: 'V' }, '44 turns more'],
  // 160 V of 150 V, the gust no worse. 100·127.5/160 = 79.7 turns, 79 stay, 21 fewer; delta 160/√3 = 92.4 V.
  [
    'Battery disconnected',
    { ratedOpenVolts: 160 },
    { value: 160, limit: 150, unit: 'V' },
    '21 turns fewer a coil; or delta instead of star, 92 V;',
  ],
  // 1800 W of 1500 W, all of it to be taken elsewhere when the battery takes none.
  ['Battery full', { greatestWatts: 1800 }, { value: 1800, limit: 1500, unit: 'W' }, 'Up to 1800 W must go elsewhere'],
])('%s, failed: worked by hand', (situation, change, expected, advice) => {
  const verdict = verdicts(change)[situation];
  expect(verdict).toMatchObject({ ...expected, verdict: 'fail' });
  expect(verdict.advice).toContain(advice);
  const others = Object.values(verdicts(change)).filter((v) => v.situation !== situation);
  expect(others.map((v) => v.verdict)).not.toContain('fail');
});
