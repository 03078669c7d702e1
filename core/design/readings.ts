import { z } from 'zod';
import { OPEN_OHMS } from '../constants';
import { quantity } from '../entries';

const optional = (min: number, max: number) => quantity({ min, max, default: 0 }).optional();
const whole = (min: number, max: number) => quantity({ min, max, default: min, whole: 'any' });

/** One line of the bench: what was measured on what, how the machine was turned, and what the meter said. */
export const readingSection = z.strictObject({
  label: z.string().max(80),
  /** What the meter was on: a coil by number, a run of joined coils of one phase, a phase, a pair of lines, or the DC terminals. */
  on: z.enum(['coil', 'run', 'phase', 'line', 'dc']),
  /** Number of the coil or phase; for a line pair the first of the two; for a run its first coil. */
  number: whole(1, 120),
  /** Last coil of a run. */
  to: whole(1, 120).optional(),
  speed: optional(0, 2000) /* rad/s; absent where it is not known */,
  /** How the speed was told: by the drill's own marking, which is common to all its readings, or by a tachometer. */
  speedBy: z.enum(['drill', 'tachometer']).optional(),
  temperature: optional(-60, 200) /* °C, of the copper */,
  ohms: optional(0, OPEN_OHMS),
  /** What the ohmmeter shows with its own leads touching, still in `ohms`. [Ω] */
  leads: optional(0, 100),
  /** Last digit of the ohmmeter. [Ω] */
  ohmsStep: optional(0, 100),
  volts: optional(0, 5000) /* AC as the meter shows it, DC on the DC terminals */,
  meter: z.enum(['average', 'rms', 'peak']).optional(),
  amps: optional(0, 2000),
  /** What stood on the DC terminals; with amps the design's own load, else nothing, where this is absent. */
  load: z.enum(['planned', 'none', 'resistor', 'battery']).optional(),
  loadResistance: optional(0, 1e6),
  loadVoltage: optional(0, 2000) /* of a battery, without current */,
  hertz: optional(0, 5000),
  wind: optional(0, 60) /* m/s, mean while the rest was read */,
  windSpread: optional(0, 30) /* m/s, how far it went up and down about the mean */,
  frameRate: optional(1, 2000) /* pictures a second of a film on which the blades looked still */,
  alike: whole(1, 24).optional() /* blades that look alike on it */,
  /** Of the meter, as a share of what it shows; 0.02 where absent. */
  accuracy: optional(0.0005, 0.5),
});

export type Reading = z.infer<typeof readingSection>;
