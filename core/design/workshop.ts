import { z } from 'zod';
import { quantity } from '../entries';

/** What the parts to cut have to fit: hub, studs and magnets as they are. */
export const workshopSection = z.strictObject({
  magnetFit: quantity({ min: 0, max: 3e-3, default: 0.2e-3 }) /* air on each side of a magnet */,
  shaftHole: quantity({ min: 1e-3, max: 1, default: 0.025 }) /* diameter */,
  bolts: quantity({ min: 2, max: 24, default: 4, whole: 'any' }),
  boltCircle: quantity({ min: 5e-3, max: 3, default: 0.08 }) /* diameter */,
  boltHole: quantity({ min: 1e-3, max: 0.1, default: 0.0105 }),
  mountingBolts: quantity({ min: 2, max: 48, default: 6, whole: 'any' }) /* hold the winding at its edge */,
  mountingHole: quantity({ min: 1e-3, max: 0.1, default: 0.0085 }),
});

export type WorkshopSection = z.infer<typeof workshopSection>;
