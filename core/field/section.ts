import { z } from 'zod';
import { quantity } from '../entries';

export const discsSection = z.strictObject({
  arrangement: z.enum(['facing-pair', 'single', 'single-with-return']),
  poles: quantity({ min: 4, max: 80, default: 12, whole: 'even' }),
  pitchRadius: quantity({ min: 0.01, max: 1.5, default: 0.127 }),
  backing: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('none') }),
    z.strictObject({ kind: z.literal('steel'), thickness: quantity({ min: 0.5e-3, max: 0.05, default: 0.008 }) }),
  ]),
  runningClearance: quantity({ min: 0.1e-3, max: 0.02, default: 0.0015 }),
  misalignment: quantity({ min: 0, max: 0.8, default: 0 }).optional(),
});

export type DiscsSection = z.infer<typeof discsSection>;
