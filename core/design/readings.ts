import { z } from 'zod';
import { quantity } from '../entries';

const optional = (min: number, max: number) => quantity({ min, max, default: 0 }).optional();

/** One line of the bench: what was measured on what, how the machine was turned, and what the meter said. */
export const readingSection = z.strictObject({
  label: z.string().max(80),
  /** What the meter was on: a coil by number, a phase, a pair of lines, or the DC terminals. */
  on: z.enum(['coil', 'phase', 'line', 'dc']),
  /** Number of the coil or phase; for a line pair the first of the two. */
  number: quantity({ min: 1, max: 120, default: 1, whole: 'any' }),
  speed: optional(0, 2000) /* rad/s */,
  temperature: optional(-60, 200) /* °C, of the copper when ohms were read */,
  ohms: optional(0, 1e6),
  volts: optional(0, 5000) /* AC RMS, DC on the DC terminals */,
  amps: optional(0, 2000),
  hertz: optional(0, 5000),
});

export type Reading = z.infer<typeof readingSection>;
