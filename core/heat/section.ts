import { z } from 'zod';
import { quantity } from '../entries';

export const surroundingsSection = z.strictObject({
  airTemperature: quantity({ min: -60, max: 70, default: 20 }),
  magnetTemperature: quantity({ min: -60, max: 300, default: 40 }),
  formerLimit: quantity({ min: 30, max: 400, default: 110 }),
});

export type SurroundingsSection = z.infer<typeof surroundingsSection>;
