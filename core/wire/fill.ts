/** Covered circles over the window that a careful hand reaches, 0.55–0.65. Common practice, no source. */
export const HAND_FILL = 0.6;

/**
 * The most that bare circles fill of a wide window: square pattern π/4, hexagonal π/(2√3). Geometry.
 */
export const PATTERN_FILL = { square: Math.PI / 4, hexagonal: Math.PI / (2 * Math.sqrt(3)) };

/**
 * Share of the window that covered wires take up.
 *
 * @param turns            N. [-]
 * @param inHand           Strands a turn. [-]
 * @param overallDiameter  Over the covering. [m]
 * @param windowArea       Section of the leg. [m²]
 * @returns                Fill. [-]
 *
 * Source    area of circles.
 * Checked   tests/core/wire/fill.test.ts
 */
export function fillOf(turns: number, inHand: number, overallDiameter: number, windowArea: number): number {
  return (turns * inHand * Math.PI * overallDiameter ** 2) / 4 / windowArea;
}

/**
 * The most turns that go in by hand.
 *
 * @param inHand           Strands a turn. [-]
 * @param overallDiameter  Over the covering. [m]
 * @param width            Width of the leg. [m]
 * @param thickness        Thickness of the copper. [m]
 * @returns                Whole turns, 0 where not even one goes in. [-]
 *
 *   N = ⌊0.60 · w t / (s π d²/4)⌋, and none where a strand is thicker than the leg
 *
 * Source    `HAND_FILL`.
 * Checked   tests/core/wire/fill.test.ts
 */
export function mostTurns(inHand: number, overallDiameter: number, width: number, thickness: number): number {
  if (overallDiameter > Math.min(width, thickness)) return 0;
  // A window filled to the limit by a whole number of turns must not lose one to rounding.
  return Math.floor((HAND_FILL * width * thickness) / fillOf(1, inHand, overallDiameter, 1) + 1e-9);
}
