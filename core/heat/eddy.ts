import type { SpectrumReader } from '../field/harmonics';
import { gaussLegendre } from '../numeric/integrate';

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

/**
 * Mean over the copper of Σ n²·B_n², both components across the wire.
 *
 * @param reader      Gap field's harmonics. [T]
 * @param orders      n. [-]
 * @param inner       Innermost radius of copper. [m]
 * @param outer       Outermost. [m]
 * @param halfHeight  Half the axial height of all the copper. [m]
 * @returns           Mean, for `eddyCoefficient`. [T²]
 *
 * Source    copper taken as spread evenly along the radius, as legs do; B_r across the arcs is left out with the arcs' share of B_z kept.
 * Checked   tests/core/heat/eddy.test.ts
 */
export function meanSquareField(
  reader: SpectrumReader,
  orders: readonly number[],
  inner: number,
  outer: number,
  halfHeight: number,
): number {
  const across = gaussLegendre(8, inner, outer);
  const through = gaussLegendre(3, -halfHeight, halfHeight);
  let sum = 0;
  across.nodes.forEach((r, i) =>
    through.nodes.forEach((z, k) => {
      const weight = (across.weights[i] * through.weights[k]) / (outer - inner) / (2 * halfHeight);
      for (const part of [reader.bz, reader.bTheta, reader.bzSine, reader.bThetaCosine])
        part?.(r, z).forEach((b, h) => (sum += weight * (orders[h] * b) ** 2));
    }),
  );
  return sum;
}
