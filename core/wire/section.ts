import { z } from 'zod';
import { quantity } from '../entries';

export const metalSection = z.enum(['copper', 'aluminium']);

export const wireSection = z.strictObject({
  metal: metalSection,
  conductorDiameter: quantity({ min: 0.05e-3, max: 6e-3, default: 1.6e-3 }),
  overallDiameter: quantity({ min: 0.05e-3, max: 7e-3, default: 1.706e-3 }),
  inHand: quantity({ min: 1, max: 20, default: 2, whole: 'any' }),
  thermalClass: quantity({ min: 90, max: 250, default: 180 }),
});

export type Metal = z.infer<typeof metalSection>;
export type WireSection = z.infer<typeof wireSection>;
