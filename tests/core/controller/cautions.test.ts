import { expect, test } from 'vitest';
import { controllerCautions, outputCautions, standingCautions } from '../../../core/controller/cautions';

test.each([
  'pinch and snap',
  'Blades kill',
  '50 V AC or 120 V DC',
  'Never open-circuit',
  'Brake by shorting',
  'fuse at the battery',
  'gives off gas',
  'Resin',
  'hot enough to burn',
  'Local electrical and building codes and licensed practice',
])('the program itself cautions: %s', (words) => {
  expect(standingCautions.filter(({ message }) => message.includes(words))).toHaveLength(1);
});

test('a controller overrun is a danger, one that sleeps a warning, one that is merely tight is not mentioned', () => {
  const verdict = { situation: 'Gust, load lost', value: 180, limit: 150, unit: 'V', margin: 0, advice: 'Mend it.' } as const;
  const [overrun, asleep, ...rest] = controllerCautions([
    { ...verdict, verdict: 'fail' },
    { ...verdict, situation: 'Light wind', verdict: 'fail', value: 12, limit: 20 },
    { ...verdict, verdict: 'tight', value: 140 },
  ]);
  expect(overrun).toEqual({
    severity: 'danger',
    where: 'controller.maxInputVoltage',
    message: 'Gust, load lost: the controller is overrun, 180 V against 150 V. Mend it.',
  });
  expect(asleep).toMatchObject({ severity: 'warning', where: 'controller.minInputVoltage' });
  expect(rest).toEqual([]);
});

// 60 A · 1.25 = 75 A → 80 A; 1200 W · 1.25 = 1500 W; (48 V)² / 1500 W = 1.536 Ω.
test('between controller and battery it names fuse and diversion load', () => {
  const controller = {
    maxInputVoltage: 150,
    minInputVoltage: 30,
    maxInputCurrent: 30,
    maxPower: 3000,
    batteryVoltage: 48,
    maxChargeCurrent: 60,
  };
  const [caution] = outputCautions(controller, 1200);
  for (const words of ['fuse of 80 A', '60 A', '1500 W', '1.54 Ω']) expect(caution.message).toContain(words);
  expect(outputCautions(controller, 0)).toEqual([]);
});
