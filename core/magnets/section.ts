import { z } from 'zod';
import { quantity } from '../entries';

const size = (typical: number) => quantity({ min: 0.5e-3, max: 0.3, default: typical });

export const magnetShapeSection = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('block'), radial: size(0.046), tangential: size(0.03), axial: size(0.01) }),
  z.strictObject({ kind: z.literal('cylinder'), diameter: size(0.03), axial: size(0.01) }),
  z.strictObject({
    kind: z.literal('sector'),
    innerRadius: quantity({ min: 2e-3, max: 1.5, default: 0.1 }),
    outerRadius: quantity({ min: 3e-3, max: 1.6, default: 0.15 }),
    span: quantity({ min: 0.01, max: 3.1, default: 0.4 }),
    axial: size(0.01),
  }),
]);

export const magnetsSection = z.strictObject({
  shape: magnetShapeSection,
  grade: z.string().max(40).optional(),
  remanence: quantity({ min: 0.05, max: 1.6, default: 1.28 }),
  remanenceTempCoefficient: quantity({ min: -0.01, max: 0.005, default: -0.0012 }),
  intrinsicCoercivity: quantity({ min: 1e4, max: 5e6, default: 955e3 }).optional(),
  recoilPermeability: quantity({ min: 1, max: 2, default: 1.05 }),
  maxTemperature: quantity({ min: 20, max: 400, default: 80 }),
});

export type MagnetShape = z.infer<typeof magnetShapeSection>;
export type MagnetsSection = z.infer<typeof magnetsSection>;
