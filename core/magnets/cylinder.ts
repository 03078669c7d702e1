import type { AxialField, FieldInto } from './shapes';

/**
 * Bulirsch's complete elliptic integral.
 *
 *   cel(k_c, p, a, b) = ∫₀^{π/2} (a cos²φ + b sin²φ) / ((cos²φ + p sin²φ) √(cos²φ + k_c² sin²φ)) dφ
 *
 * @param complement  Complementary modulus, k_c, not 0. [-]
 * @param p           Parameter, above 0. [-]
 * @param a           Weight of cos². [-]
 * @param b           Weight of sin². [-]
 * @returns           The integral, to 1e-14 or so. [-]
 *
 * Source    Bulirsch 1965, *Numer. Math.* 7, 78; the form of Derby & Olbert 2010, appendix (from memory).
 * Checked   tests/core/magnets/shapes.test.ts
 */
export function completeElliptic(complement: number, p: number, a: number, b: number): number {
  let k = Math.abs(complement);
  let pp = Math.sqrt(p);
  let cc = a;
  let ss = b / pp;
  let em = 1;
  let kk = k;
  for (;;) {
    const f = cc;
    cc += ss / pp;
    const g = kk / pp;
    ss = 2 * (ss + f * g);
    pp += g;
    const before = em;
    em += k;
    if (Math.abs(before - k) <= before * 1e-8) break;
    k = 2 * Math.sqrt(kk);
    kk = k * em;
  }
  return ((Math.PI / 2) * (ss + cc * em)) / (em * (em + pp));
}

/** A sharp rim has a logarithmic pole; the mantle itself counts as outside. Both are met by keeping this share of the radius off it. */
const RIM = 1e-12;

/**
 * Flux density of a cylinder magnetised along its axis, as that of the ideal solenoid with the same surface current, 1 T of remanence.
 *
 * @param diameter  Diameter. [m]
 * @param axial     Height, the direction of magnetisation. [m]
 * @returns         Function adding `scale` times the field at x, y, z (from the cylinder's centre) to a vector. [T per T]
 *
 * Valid     everywhere, inside as well; a point on the rim gets the field 1e-12 radii off it.
 * Source    Derby & Olbert 2010, *Am. J. Phys.* 78, 229, eqs. 1–6 (from memory).
 * Checked   tests/reference/field-magnets.test.ts
 */
export function cylinderField(diameter: number, axial: number): FieldInto {
  const a = diameter / 2;
  const h = axial / 2;
  return (x, y, z, scale, out) => {
    let rho = Math.sqrt(x * x + y * y);
    if (Math.abs(rho - a) < RIM * a) rho = a * (1 + RIM);
    const sum = a + rho;
    const gamma = (a - rho) / sum;
    const gamma2 = gamma * gamma;
    const upper = z + h;
    const lower = z - h;
    const upperRoot = Math.sqrt(upper * upper + sum * sum);
    const lowerRoot = Math.sqrt(lower * lower + sum * sum);
    const difference2 = (a - rho) * (a - rho);
    const upperModulus = Math.sqrt(upper * upper + difference2) / upperRoot;
    const lowerModulus = Math.sqrt(lower * lower + difference2) / lowerRoot;
    const s = scale / Math.PI;
    out[2] +=
      ((s * a) / sum) *
      ((upper / upperRoot) * completeElliptic(upperModulus, gamma2, 1, gamma) -
        (lower / lowerRoot) * completeElliptic(lowerModulus, gamma2, 1, gamma));
    if (rho === 0) return;
    const radial = s * a * (completeElliptic(upperModulus, 1, 1, -1) / upperRoot - completeElliptic(lowerModulus, 1, 1, -1) / lowerRoot);
    out[0] += (radial * x) / rho;
    out[1] += (radial * y) / rho;
  };
}

/**
 * B_z of `cylinderField` alone.
 *
 * @param diameter  Diameter. [m]
 * @param axial     Height. [m]
 * @returns         Function of x, y, z from the cylinder's centre. [T per T]
 *
 * Valid     as `cylinderField`.
 * Source    as `cylinderField`.
 * Checked   tests/core/magnets/shapes.test.ts
 */
export function cylinderAxialField(diameter: number, axial: number): AxialField {
  const a = diameter / 2;
  const h = axial / 2;
  return (x, y, z) => {
    let rho = Math.sqrt(x * x + y * y);
    if (Math.abs(rho - a) < RIM * a) rho = a * (1 + RIM);
    const sum = a + rho;
    const gamma = (a - rho) / sum;
    const difference2 = (a - rho) * (a - rho);
    const end = (away: number) => {
      const root = Math.sqrt(away * away + sum * sum);
      return (away / root) * completeElliptic(Math.sqrt(away * away + difference2) / root, gamma * gamma, 1, gamma);
    };
    return (a / sum / Math.PI) * (end(z + h) - end(z - h));
  };
}
