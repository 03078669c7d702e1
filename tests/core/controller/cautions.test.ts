import { expect, test } from 'vitest';
import { controllerCautions, standingCautions } from '../../../core/controller/cautions';

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
