import { z } from 'zod';
import { quantity } from '../entries';
import { metalSection } from '../wire/section';

export const rectifierSection = z.strictObject({
  arrangement: z.enum(['bridge', 'bridges-in-parallel', 'bridges-in-series']),
  diode: z.strictObject({
    threshold: quantity({ min: 0, max: 3, default: 0.75 }),
    slope: quantity({ min: 0, max: 5, default: 0.015 }),
  }),
});

export const cableSection = z.strictObject({
  side: z.enum(['ac', 'dc']),
  length: quantity({ min: 0, max: 1000, default: 20 }),
  section: quantity({ min: 0.1e-6, max: 500e-6, default: 10e-6 }),
  metal: metalSection,
});

export type RectifierSection = z.infer<typeof rectifierSection>;
export type CableSection = z.infer<typeof cableSection>;
