/**
 * Flux of one pole as textbooks take it: a sine round the disc, the same all along the leg.
 *
 *   Φ = 2 B₁ r L / p
 *
 * @param fundamental  Fundamental of the field at the middle of the leg, B₁. [T]
 * @param radius       Radius there, r. [m]
 * @param length       Length of the leg along the radius, L. [m]
 * @param polePairs    p. [-]
 * @returns            Flux. [Wb]
 *
 * Valid     a field that is a sine of the electrical angle.
 * Omits     that the field falls off towards the magnets' ends and varies through the copper's height.
 * Source    Gieras, Wang & Kamper 2008, *Axial Flux Permanent Magnet Brushless Machines*, ch. 2 (from memory).
 * Checked   tests/core/emf/textbook.test.ts
 */
export function sinePoleFlux(fundamental: number, radius: number, length: number, polePairs: number): number {
  return (2 * fundamental * radius * length) / polePairs;
}

/**
 * Volts of a phase by the winding factor.
 *
 *   E = ω p N k_w Φ / √2
 *
 * @param speed          Of the shaft, ω. [rad/s]
 * @param polePairs      p. [-]
 * @param seriesTurns    Turns in series that link a pole's flux each, N. [-]
 * @param windingFactor  k_w. [-]
 * @param flux           Of one pole, Φ. [Wb]
 * @returns              RMS, open circuit. [V]
 *
 * Valid     open circuit.
 * Omits     harmonics, and the width of the leg.
 * Source    as `sinePoleFlux`: 4.44 f N k_w Φ.
 * Checked   tests/core/emf/textbook.test.ts
 */
export function windingFactorVolts(speed: number, polePairs: number, seriesTurns: number, windingFactor: number, flux: number): number {
  return (speed * polePairs * seriesTurns * windingFactor * flux) / Math.SQRT2;
}
