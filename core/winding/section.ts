import { z } from 'zod';
import { quantity } from '../entries';

const radius = (typical: number) => quantity({ min: 2e-3, max: 1.6, default: typical });
const width = (typical: number) => quantity({ min: 0.2e-3, max: 0.5, default: typical });

export const layoutSection = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('serpentine'),
    innerRadius: radius(0.104),
    outerRadius: radius(0.15),
    legWidth: width(0.01),
    placement: z.enum(['stacked', 'interleaved']),
  }),
  z.strictObject({
    kind: z.literal('concentrated'),
    coils: quantity({ min: 1, max: 120, default: 9, whole: 'any' }),
    holeInnerRadius: radius(0.104),
    holeOuterRadius: radius(0.15),
    holeInnerWidth: width(0.022),
    holeOuterWidth: width(0.034),
    legWidth: width(0.022),
  }),
]);

/** All of the winding but its wire, which is a later stage; `design/schema.ts` joins the two. */
export const windingSection = z.strictObject({
  layout: layoutSection,
  thickness: quantity({ min: 0.2e-3, max: 0.06, default: 0.011 }),
  skin: quantity({ min: 0, max: 0.01, default: 0.0005 }),
  phases: quantity({ min: 1, max: 6, default: 3, whole: 'any' }),
  turns: quantity({ min: 1, max: 5000, default: 30, whole: 'any' }),
  connection: z.enum(['star', 'delta', 'separate']),
  parallelPaths: quantity({ min: 1, max: 40, default: 1, whole: 'any' }),
  leadLength: quantity({ min: 0, max: 50, default: 1 }),
});

export type Layout = z.infer<typeof layoutSection>;
export type WindingSection = z.infer<typeof windingSection>;
