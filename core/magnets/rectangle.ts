/** The angle below is known only to a whole turn; a rectangle covers between 0 and 2π, so a clearly negative one wants a turn added. */
const ROUNDING = 1e-12;

/** Depth, as a share of the corners' distances, below which the point counts as on the rectangle's plane. */
const FLAT = 1e-9;

/** A perfectly sharp edge has a logarithmic pole; this makes the field that of a point one nanometre off an edge of some 30 mm. */
const EDGE = 1e-15;

/**
 * Solid angle of a rectangle. The four corners' angles atan(xy / zr) are added by multiplying the complex numbers zr + i·xy, which leaves one arctangent to
 * work out.
 *
 * @param x1     From the rectangle's greatest x to the point; x2 from its least. [m]
 * @param x2     As x1. [m]
 * @param y1     The same along y. [m]
 * @param y2     As y1. [m]
 * @param depth  Distance from its plane, not below 0; on the plane itself the angle is that just off it. [m]
 * @param r11    Distance of the corner at x1, y1. [m]
 * @param r12    Corner at x1, y2. [m]
 * @param r21    Corner at x2, y1. [m]
 * @param r22    Corner at x2, y2. [m]
 * @returns      Solid angle. [sr]
 *
 * Source    sum of arctangents as in Yang, Johnson & Kim 1990 (from memory), as one product.
 * Checked   tests/reference/field-magnets.test.ts
 */
export function rectangleAngle(
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
  if (depth <= FLAT * (r11 + r22)) return flatAngle(x1, x2, y1, y2);
  const depth2 = depth * depth;
  const product = x1 * x2 * y1 * y2;
  const re1 = depth2 * r22 * r11 - product;
  const im1 = depth * (r22 * x1 * y1 + r11 * x2 * y2);
  const re2 = depth2 * r12 * r21 - product;
  const im2 = depth * (r12 * x2 * y1 + r21 * x1 * y2);
  const angle = Math.atan2(im1 * re2 - re1 * im2, re1 * re2 + im1 * im2);
  return angle < -ROUNDING ? angle + 2 * Math.PI : angle;
}

/**
 * Solid angle of a rectangle less that of the same one farther away: one arctangent for both.
 *
 * @param x1    As in `rectangleAngle`. [m]
 * @param x2    As in `rectangleAngle`. [m]
 * @param y1    As in `rectangleAngle`. [m]
 * @param y2    As in `rectangleAngle`. [m]
 * @param near  Distance from the plane of the nearer, not below 0. [m]
 * @param far   Distance from the plane of the farther, above `near`. [m]
 * @returns     Difference, below 0 only to the side of the rectangles. [sr]
 *
 * Source    as `rectangleAngle`.
 * Checked   tests/core/magnets/shapes.test.ts
 */
export function rectanglesAngle(x1: number, x2: number, y1: number, y2: number, near: number, far: number): number {
  const p11 = x1 * x1 + y1 * y1;
  const p12 = x1 * x1 + y2 * y2;
  const p21 = x2 * x2 + y1 * y1;
  const p22 = x2 * x2 + y2 * y2;
  const product = x1 * x2 * y1 * y2;
  const flat = near <= FLAT * (Math.sqrt(p11) + Math.sqrt(p22));
  let re = 1;
  let im = 0;
  for (let face = flat ? 1 : 0; face < 2; face++) {
    const depth = face === 0 ? near : far;
    const depth2 = depth * depth;
    const r11 = Math.sqrt(p11 + depth2);
    const r12 = Math.sqrt(p12 + depth2);
    const r21 = Math.sqrt(p21 + depth2);
    const r22 = Math.sqrt(p22 + depth2);
    const re1 = depth2 * r22 * r11 - product;
    const im1 = depth * (r22 * x1 * y1 + r11 * x2 * y2);
    const re2 = depth2 * r12 * r21 - product;
    const im2 = depth * (r12 * x2 * y1 + r21 * x1 * y2);
    const cosine = re1 * re2 + im1 * im2;
    const sine = face === 0 ? im1 * re2 - re1 * im2 : re1 * im2 - im1 * re2;
    const turned = re * cosine - im * sine;
    im = re * sine + im * cosine;
    re = turned;
  }
  const angle = Math.atan2(im, re);
  if (flat) return flatAngle(x1, x2, y1, y2) + (angle > ROUNDING ? angle - 2 * Math.PI : angle);
  return x1 < 0 && x2 > 0 && y1 < 0 && y2 > 0 && angle < -ROUNDING ? angle + 2 * Math.PI : angle;
}

function flatAngle(x1: number, x2: number, y1: number, y2: number): number {
  const quarter = (x: number, y: number) => (Math.sign(x) * Math.sign(y) * Math.PI) / 2;
  return quarter(x2, y2) - quarter(x1, y2) - quarter(x2, y1) + quarter(x1, y1);
}

/**
 * What is left of a straight edge when its length is taken from the way round by a point, kept off nothing: the potential of an even charge along the edge is
 * ln((r₁ + r₂ + ℓ) / (r₁ + r₂ − ℓ)).
 *
 * @param way     Sum of the distances of both ends, r₁ + r₂. [m]
 * @param length  Length of the edge, ℓ. [m]
 * @returns       r₁ + r₂ − ℓ, above 0. [m]
 *
 * Source    potential of a line charge, Jackson 1999 (from memory).
 * Checked   tests/reference/field-magnets.test.ts
 */
export function edgeRemainder(way: number, length: number): number {
  return Math.max(way - length, EDGE * length);
}
