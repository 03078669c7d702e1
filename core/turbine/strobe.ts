/** A speed at which the blades would look still on film. */
export interface StillSpeed {
  /** Blade spacings turned from picture to picture, k. */
  steps: number;
  /** [rad/s] */
  speed: number;
}

/**
 * Shaft speeds at which a wheel looks still on film.
 *
 * @param frameRate  Pictures a second, F. [1/s]
 * @param symmetry   Turns into itself this often a turn, s: the number of like blades. [-]
 * @param topSpeed   Greatest speed of interest. [rad/s]
 * @returns          Every 2πFk/s up to `topSpeed`, k = 1, 2, … [rad/s]
 *
 * Omits     a rolling shutter, which bends the blades but does not move the speeds.
 * Source    the wheel turns k/s of a turn between pictures; common practice, no source.
 * Checked   tests/core/turbine/strobe.test.ts
 */
export function stillSpeeds(frameRate: number, symmetry: number, topSpeed: number): StillSpeed[] {
  const first = (2 * Math.PI * frameRate) / symmetry;
  return Array.from({ length: Math.floor(topSpeed / first) }, (_, i) => ({ steps: i + 1, speed: (i + 1) * first }));
}

/**
 * Which of the still speeds it was, by the generator's frequency at that time.
 *
 * @param frameRate  Pictures a second. [1/s]
 * @param symmetry   Number of like blades. [-]
 * @param frequency  Of the generator, f. [Hz]
 * @param polePairs  p. [-]
 * @returns          The nearest still speed, and how far the frequency is off it, as a share of the step between two of them. [rad/s, -]
 *
 * Source    ω = 2πf/p.
 * Checked   tests/core/turbine/strobe.test.ts
 */
export function stillSpeedAt(frameRate: number, symmetry: number, frequency: number, polePairs: number): StillSpeed & { off: number } {
  const first = (2 * Math.PI * frameRate) / symmetry;
  const steps = (2 * Math.PI * frequency) / polePairs / first;
  const whole = Math.max(1, Math.round(steps));
  return { steps: whole, speed: whole * first, off: steps - whole };
}
