import type { DiscsSection } from './section';

/**
 * One harmonic of the unrolled, two-dimensional machine: a layer of magnets between what lies behind it and what lies before it. Potentials are in units of
 * the harmonic of remanence over μ₀k, so that flux density is admittance times potential.
 */
export interface MagnetLayer {
  /** Wave number, k = nπ / pole pitch. [1/m] */
  wave: number;
  /** Height of the magnets, h. [m] */
  height: number;
  recoilPermeability: number;
  /** Flux leaving the back over potential there: 1 for open air, Infinity for ideal steel. [-] */
  back: number;
  /** The same at the front. [-] */
  front: number;
}

/**
 * Potentials at the front and the back of the magnets, and the flux density through the back.
 *
 *   φ = a cosh kζ + b sinh kζ in the layer, B_z = −μ₀μ_r φ′ + B_r, flux continuous at both faces
 *
 * @param layer  Layer. [-]
 * @returns      Potentials per unit of B_r / μ₀k, flux density per unit of B_r. [-]
 *
 * Source    separation of variables, Furlani 2001, ch. 3–4; Bumby & Martin 2005, *IEE Proc. Electr. Power Appl.* 152 (from memory).
 * Checked   tests/reference/field-iron.test.ts
 */
export function layerPotentials(layer: MagnetLayer): { front: number; back: number; through: number } {
  const { wave, height, recoilPermeability: mu, back, front } = layer;
  // Divided through by cosh kh, so that tall magnets do not overflow.
  const t = Math.tanh(wave * height);
  const rest = 1 - 1 / Math.cosh(wave * height);
  if (back === Infinity) return { front: t / (front * t + mu), back: 0, through: 1 - (mu * (1 - rest)) / (front * t + mu) };
  const sum = mu * t + back + front + (front * back * t) / mu;
  const atBack = -(rest + (front * t) / mu) / sum;
  return { front: (rest + (back * t) / mu) / sum, back: atBack, through: -back * atBack };
}

/**
 * What the front of the magnets looks into: flux density over potential at the face, and at some distance before it.
 *
 *   B / φ = cosh k(D − d) / sinh kD, D the distance of the plane of zero potential: mid-plane between two like discs, return plate, or none
 *
 * @param arrangement  Discs. [-]
 * @param wave         Wave number, k. [1/m]
 * @param gapLength    Gap. [m]
 * @param distance     From the magnets' faces, d. [m]
 * @returns            Flux density per unit of potential at the face, as in `layerPotentials`. [-]
 *
 * Source    as `layerPotentials`.
 * Checked   tests/reference/field-iron.test.ts
 */
export function gapAdmittance(arrangement: DiscsSection['arrangement'], wave: number, gapLength: number, distance = 0): number {
  const fade = Math.exp(-wave * distance);
  if (arrangement === 'single') return fade;
  const depth = arrangement === 'facing-pair' ? gapLength / 2 : gapLength;
  return (fade * (1 + Math.exp(-2 * wave * (depth - distance)))) / (1 - Math.exp(-2 * wave * depth));
}

/**
 * Admittance of a steel plate with open air behind it.
 *
 *   Y = μ (1 + μ tanh kt) / (μ + tanh kt)
 *
 * @param permeability  Relative permeability of the steel, μ. [-]
 * @param wave          Wave number, k. [1/m]
 * @param thickness     Plate, t. [m]
 * @returns             Admittance at its front. [-]
 *
 * Source    as `layerPotentials`.
 * Checked   tests/reference/field-iron.test.ts
 */
export function plateAdmittance(permeability: number, wave: number, thickness: number): number {
  const t = Math.tanh(wave * thickness);
  return (permeability * (1 + permeability * t)) / (permeability + t);
}

/**
 * Fourier coefficient of magnets of one remanence alternating round the disc.
 *
 *   M_n = (4 / nπ) sin(nπw / 2τ)
 *
 * @param order  n, odd. [-]
 * @param cover  Magnet width over pole pitch, w / τ. [-]
 * @returns      Per unit of remanence. [-]
 *
 * Source    Fourier series of a rectangular wave.
 * Checked   tests/reference/field-iron.test.ts
 */
export function magnetHarmonic(order: number, cover: number): number {
  return (4 / (order * Math.PI)) * Math.sin((order * Math.PI * cover) / 2);
}
