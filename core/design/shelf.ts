import { z } from 'zod';
import { quantity } from '../entries';
import { metalSection } from '../wire/section';

/** One reel in hand. */
export const reelSection = z.strictObject({
  label: z.string().max(80),
  metal: metalSection,
  conductorDiameter: quantity({ min: 0.05e-3, max: 6e-3, default: 1.4e-3 }),
  overallDiameter: quantity({ min: 0.05e-3, max: 7e-3, default: 1.474e-3 }),
  mass: quantity({ min: 0, max: 1000, default: 5 }) /* kg of wire left */,
  price: quantity({ min: 0, max: 1e6, default: 0 }).optional() /* per kg, any money */,
});

export type Reel = z.infer<typeof reelSection>;
