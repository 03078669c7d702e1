import type { FieldInto } from './shapes';

/** A perfectly sharp edge has a logarithmic pole; this is the field one nanometre off an edge of some 30 mm. */
const EDGE = 1e-15;

/** Angle seen by a corner: four of them make the solid angle of the face. */
const corner = (x: number, y: number, z: number, distance: number) => Math.atan2(x * y, z * distance);

/** Potential of a straight edge of even charge between two corners: ln((r₁ + r₂ + ℓ) / (r₁ + r₂ − ℓ)). */
const edge = (sum: number, length: number) => Math.log((sum + length) / Math.max(sum - length, EDGE * length));

/**
 * Flux density of a block magnetised along its axis, from the charge on its two pole faces, 1 T of remanence.
 *
 *   B_z = Ω/4π of the north face less that of the south face, plus 1 inside;   B_x, B_y = differences of the edges' potentials / 4π
 *
 * @param radial      Size along x. [m]
 * @param tangential  Size along y. [m]
 * @param axial       Size along z, the direction of magnetisation. [m]
 * @returns           Function adding `scale` times the field at x, y, z (from the block's centre) to a vector. [T per T]
 *
 * Omits     recoil permeability (field/recoil.ts). A point on a face counts as outside; on an edge the field is that 1 nm away.
 * Source    Yang, Johnson & Kim 1990, *J. Appl. Phys.* 68; Furlani 2001, *Permanent Magnet and Electromechanical Devices*, ch. 4 (from memory).
 * Checked   tests/reference/field-magnets.test.ts
 */
export function blockField(radial: number, tangential: number, axial: number): FieldInto {
  const a = radial / 2;
  const b = tangential / 2;
  const h = axial / 2;
  return (x, y, z, scale, out) => {
    const height = Math.abs(z);
    const x1 = x - a;
    const x2 = x + a;
    const y1 = y - b;
    const y2 = y + b;
    const s = scale / (4 * Math.PI);
    const inPlane = z < 0 ? -s : s;
    let bz = 0;
    let bx = 0;
    let by = 0;
    for (let face = 1; face >= -1; face -= 2) {
      const dz = height - face * h;
      const depth = Math.abs(dz);
      const dz2 = dz * dz;
      const r11 = Math.sqrt(x1 * x1 + y1 * y1 + dz2);
      const r12 = Math.sqrt(x1 * x1 + y2 * y2 + dz2);
      const r21 = Math.sqrt(x2 * x2 + y1 * y1 + dz2);
      const r22 = Math.sqrt(x2 * x2 + y2 * y2 + dz2);
      const angle = corner(x2, y2, depth, r22) - corner(x1, y2, depth, r12) - corner(x2, y1, depth, r21) + corner(x1, y1, depth, r11);
      bz += dz < 0 ? -face * angle : face * angle;
      bx += face * (edge(r11 + r12, tangential) - edge(r21 + r22, tangential));
      by += face * (edge(r11 + r21, radial) - edge(r12 + r22, radial));
    }
    out[0] += inPlane * bx;
    out[1] += inPlane * by;
    out[2] += s * bz;
    if (height < h && Math.abs(x) < a && Math.abs(y) < b) out[2] += scale;
  };
}
