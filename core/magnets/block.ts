import type { FieldInto } from './shapes';

/** A perfectly sharp edge has a logarithmic pole; this is the field one nanometre off an edge of some 30 mm. */
const EDGE = 1e-15;

/** The angle below is known only to a whole turn; a face seen from outside covers between 0 and 2π, so a clearly negative one wants a turn added. */
const ROUNDING = 1e-12;

/**
 * Solid angle of a rectangle from a point at the given depth over its plane. The four corners' angles atan(xy / zr) are added by multiplying the complex
 * numbers zr + i·xy, which leaves one arctangent to work out.
 */
function solidAngle(
  x1: number,
  x2: number,
  y1: number,
  y2: number,
  depth: number,
  r11: number,
  r12: number,
  r21: number,
  r22: number,
): number {
  const re1 = depth * depth * r22 * r11 - x2 * y2 * x1 * y1;
  const im1 = depth * (r22 * x1 * y1 + r11 * x2 * y2);
  const re2 = depth * depth * r12 * r21 - x1 * y2 * x2 * y1;
  const im2 = depth * (r12 * x2 * y1 + r21 * x1 * y2);
  const angle = Math.atan2(im1 * re2 - re1 * im2, re1 * re2 + im1 * im2);
  return angle < -ROUNDING ? angle + 2 * Math.PI : angle;
}

/** The same on the plane itself, or so near it that the product has lost its sign. */
function flatAngle(x1: number, x2: number, y1: number, y2: number): number {
  const quarter = (x: number, y: number) => (Math.sign(x) * Math.sign(y) * Math.PI) / 2;
  return quarter(x2, y2) - quarter(x1, y2) - quarter(x2, y1) + quarter(x1, y1);
}

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
  const flat = 1e-9 * (a + b);
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
      const angle = depth > flat ? solidAngle(x1, x2, y1, y2, depth, r11, r12, r21, r22) : flatAngle(x1, x2, y1, y2);
      bz += dz < 0 ? -face * angle : face * angle;
      const x1Edge = r11 + r12;
      const x2Edge = r21 + r22;
      const y1Edge = r11 + r21;
      const y2Edge = r12 + r22;
      const moreX = (x1Edge + tangential) * Math.max(x2Edge - tangential, EDGE * tangential);
      const lessX = (x2Edge + tangential) * Math.max(x1Edge - tangential, EDGE * tangential);
      const moreY = (y1Edge + radial) * Math.max(y2Edge - radial, EDGE * radial);
      const lessY = (y2Edge + radial) * Math.max(y1Edge - radial, EDGE * radial);
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
