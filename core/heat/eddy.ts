/**
 * Eddy loss in round wire across an alternating field, over the square of the shaft's speed.
 *
 * @param meanSquare    Σ over field components and harmonics of n²·B² (peak), averaged over the copper. [T²]
 * @param polePairs     p. [-]
 * @param diameter      Of one strand, d. [m]
 * @param resistivity   Hot, ρ. [Ω·m]
 * @param volume        Of metal. [m³]
 * @returns             Loss over ω². [W·s²/rad²]
 *
 *   P = V · Σ (n p ω)² B_n² d² / (32 ρ)
 *
 * Valid     strands thinner than twice the skin depth: always here.
 * Omits     currents round loops of several strands in hand.
 * Source    Carter 1967, The Electromagnetic Field in its Engineering Aspects (from memory).
 * Checked   tests/core/heat/eddy.test.ts
 */
export function eddyCoefficient(meanSquare: number, polePairs: number, diameter: number, resistivity: number, volume: number): number {
  return (volume * polePairs ** 2 * meanSquare * diameter ** 2) / (32 * resistivity);
}
