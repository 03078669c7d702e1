import { edgeRemainder, rectangleAngle, rectanglesAngle } from './rectangle';
import type { AxialField, FieldInto } from './shapes';

/**
 * Flux density of a block magnetised along its axis, from the charge on its two pole faces, 1 T of remanence.
 *
 *   B_z = Ω/4π of the north face less that of the south face, plus 1 inside
 *   B_x, B_y = differences of the edges' potentials / 4π, each ln((r₁ + r₂ + ℓ) / (r₁ + r₂ − ℓ))
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
    const p11 = x1 * x1 + y1 * y1;
    const p12 = x1 * x1 + y2 * y2;
    const p21 = x2 * x2 + y1 * y1;
    const p22 = x2 * x2 + y2 * y2;
    let bz = 0;
    // Arguments of the logarithms as fractions, gathered over both faces.
    let aboveX = 1;
    let belowX = 1;
    let aboveY = 1;
    let belowY = 1;
    for (let face = 1; face >= -1; face -= 2) {
      const dz = height - face * h;
      const depth = Math.abs(dz);
      const dz2 = dz * dz;
      const r11 = Math.sqrt(p11 + dz2);
      const r12 = Math.sqrt(p12 + dz2);
      const r21 = Math.sqrt(p21 + dz2);
      const r22 = Math.sqrt(p22 + dz2);
      const angle = rectangleAngle(x1, x2, y1, y2, depth, r11, r12, r21, r22);
      bz += dz < 0 ? -face * angle : face * angle;
      const x1Edge = r11 + r12;
      const x2Edge = r21 + r22;
      const y1Edge = r11 + r21;
      const y2Edge = r12 + r22;
      const moreX = (x1Edge + tangential) * edgeRemainder(x2Edge, tangential);
      const lessX = (x2Edge + tangential) * edgeRemainder(x1Edge, tangential);
      const moreY = (y1Edge + radial) * edgeRemainder(y2Edge, radial);
      const lessY = (y2Edge + radial) * edgeRemainder(y1Edge, radial);
      if (face > 0) {
        aboveX *= moreX;
        belowX *= lessX;
        aboveY *= moreY;
        belowY *= lessY;
      } else {
        aboveX *= lessX;
        belowX *= moreX;
        aboveY *= lessY;
        belowY *= moreY;
      }
    }
    const s = scale / (4 * Math.PI);
    const inPlane = z < 0 ? -s : s;
    out[0] += inPlane * Math.log(aboveX / belowX);
    out[1] += inPlane * Math.log(aboveY / belowY);
    out[2] += s * bz;
    if (height < h && Math.abs(x) < a && Math.abs(y) < b) out[2] += scale;
  };
}

/**
 * B_z of `blockField` alone.
 *
 * @param radial      Size along x. [m]
 * @param tangential  Size along y. [m]
 * @param axial       Size along z. [m]
 * @returns           Function of x, y, z from the block's centre. [T per T]
 *
 * Omits     as `blockField`.
 * Source    as `blockField`.
 * Checked   tests/core/magnets/shapes.test.ts
 */
export function blockAxialField(radial: number, tangential: number, axial: number): AxialField {
  const a = radial / 2;
  const b = tangential / 2;
  const h = axial / 2;
  const whole = blockField(radial, tangential, axial);
  const field = new Float64Array(3);
  return (x, y, z) => {
    const height = Math.abs(z);
    if (height >= h) return rectanglesAngle(x - a, x + a, y - b, y + b, height - h, height + h) / (4 * Math.PI);
    field.fill(0);
    whole(x, y, z, 1, field);
    return field[2];
  };
}
