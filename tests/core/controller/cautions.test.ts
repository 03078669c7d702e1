import { expect, test } from 'vitest';
import { standingCautions } from '../../../core/controller/cautions';

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
