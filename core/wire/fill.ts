/** Covered circles over the window that a careful hand reaches, 0.55–0.65. Common practice, no source. */
export const HAND_FILL = 0.6;

/** Circles in a square and in a hexagonal pattern: π/4 and π/(2√3). Geometry. */
export const PATTERN_FILL = { square: Math.PI / 4, hexagonal: Math.PI / (2 * Math.sqrt(3)) };

/**
 * Share of the window that covered wires take up.
 *
 * @param turns            N. [-]
 * @param inHand           Strands a turn. [-]
 * @param overallDiameter  Over the covering. [m]
 * @param windowArea       [m²]
 * @returns                Fill. [-]
 *
 * Source    area of circles.
 * Checked   tests/core/wire/stage.test.ts
 */
export function fillOf(turns: number, inHand: number, overallDiameter: number, windowArea: number): number {
  return (turns * inHand * Math.PI * overallDiameter ** 2) / 4 / windowArea;
}

/**
 * The most turns that go in by hand.
 *
 * @param inHand           Strands a turn. [-]
 * @param overallDiameter  Over the covering. [m]
 * @param windowArea       [m²]
 * @returns                Whole turns, 0 where not even one goes in. [-]
 *
 * Source    `HAND_FILL`.
 * Checked   tests/core/wire/stage.test.ts
 */
export function mostTurns(inHand: number, overallDiameter: number, windowArea: number): number {
  return Math.floor((HAND_FILL * windowArea) / fillOf(1, inHand, overallDiameter, 1));
}
