import { z } from 'zod';
import { quantity, type EntryMeta } from '../entries';

/** The most values one axis of a search may have. */
const MOST_VALUES = 1000;

/** Values from one to another in equal steps. */
const range = (spec: EntryMeta, leastStep: number) =>
  z
    .strictObject({ from: quantity(spec), to: quantity(spec), step: quantity({ ...spec, min: leastStep, default: leastStep }) })
    .refine(({ from, to }) => to >= from, { path: ['to'], error: 'must be at least as much as “from”' })
    .refine(({ from, to, step }) => (to - from) / step < MOST_VALUES, {
      path: ['step'],
      error: `makes too many values: a search takes at most ${MOST_VALUES} on one axis`,
    })
    .optional();

const whole = (min: number, max: number) => range({ min, max, default: min, whole: 'any' }, 1);
const length = (min: number, max: number) => range({ min, max, default: min }, 1e-5);
const limit = (min: number, max: number, at: number) => quantity({ min, max, default: at }).optional();
const weight = quantity({ min: 0, max: 10, default: 1 }).optional();

/** Whether rings of a serpentine lie on one another or in one layer, or separate coils. */
export const searchLayouts = ['concentrated', 'stacked', 'interleaved'] as const;

/** What a search may vary, what it must keep to, and what counts most. Left out means: as the design is. */
export const searchSection = z.strictObject({
  /** Magnets in hand, both discs together. */
  magnetsInHand: limit(4, 1000, 24),
  poles: range({ min: 4, max: 80, default: 12, whole: 'even' }, 2),
  pitchRadius: length(0.01, 1.5),
  thickness: length(0.2e-3, 0.06),
  runningClearance: length(0.1e-3, 0.02),
  layouts: z.array(z.enum(searchLayouts)).min(1).max(3).optional(),
  coils: whole(1, 120),
  phases: whole(1, 6),
  parallelPaths: whole(1, 40),
  connections: z
    .array(z.enum(['star', 'delta', 'separate']))
    .min(1)
    .max(3)
    .optional(),
  inHand: whole(1, 20),
  turns: whole(1, 5000),
  limits: z
    .strictObject({
      cutInWind: limit(0.1, 80, 4) /* at most */,
      yearEnergy: limit(0, 1e15, 1e9) /* at least */,
      temperatureMargin: limit(-1000, 300, 0) /* at least, below the coils' limit */,
      controllerMargin: limit(-10, 1, 0) /* at least, share of the data sheet's number */,
      cost: limit(0, 1e9, 100) /* at most, kg of wire or its price */,
    })
    .optional(),
  weights: z
    .strictObject({ cutInWind: weight, yearEnergy: weight, temperatureMargin: weight, controllerMargin: weight, cost: weight })
    .optional(),
});

export type SearchSection = z.infer<typeof searchSection>;
export type SearchLayout = (typeof searchLayouts)[number];
