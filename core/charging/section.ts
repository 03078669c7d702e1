import { z } from 'zod';
import { quantity } from '../entries';

export const loadSection = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('battery'),
    chemistry: z.string().min(1).max(40),
    voltage: quantity({ min: 1, max: 1000, default: 24 }),
    resistance: quantity({ min: 0, max: 10, default: 0.03 }),
    capacity: quantity({ min: 0.1, max: 1e5, default: 200 }),
  }),
  z.strictObject({ kind: z.literal('resistor'), resistance: quantity({ min: 1e-3, max: 1e6, default: 10 }) }),
  z.strictObject({
    kind: z.literal('threshold'),
    turnOn: quantity({ min: 0.1, max: 1000, default: 25 }),
    slope: quantity({ min: 1e-3, max: 1e5, default: 20 }),
  }),
  z.strictObject({ kind: z.literal('tracker') }),
  z.strictObject({ kind: z.literal('open') }),
]);

export type LoadSection = z.infer<typeof loadSection>;
