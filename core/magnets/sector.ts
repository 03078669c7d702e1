import { gaussLegendre, type Quadrature } from '../numeric/integrate';
import { edgeRemainder, rectangleAngle } from './rectangle';
import type { AxialField, FieldInto } from './shapes';

const FEWEST_NODES = 3;
const MOST_NODES = 160;
/** A point on a curved side counts as outside: it is kept this share of the radius off it. */
const SIDE = 1e-9;

const rules: Quadrature[] = [];
const rule = (count: number) => (rules[count] ??= gaussLegendre(count));

/**
 * Flux density of a ring sector magnetised along the axle, as that of its surface current, 1 T of remanence: the two straight sides in closed form,
 * the two arcs in closed form along z and by Gauss–Legendre along the angle. The angle is stretched, ψ = δ sinh t with δ the distance of the point from the
 * arc over its radius, which takes the peak out of the integrand; the number of nodes follows from the length left in t.
 *
 * @param innerRadius  Inner radius. [m]
 * @param outerRadius  Outer radius. [m]
 * @param span         Angle covered, centred on +x. [rad]
 * @param axial        Height, the direction of magnetisation. [m]
 * @param accuracy     What the integrals along the arcs may be off by, as a share. [-]
 * @returns            Function adding `scale` times the field at x, y, z (origin on the axle, mid-height) to a vector. [T per T]
 *
 * Valid     everywhere, inside as well; on an edge the field a hair's breadth off it.
 * Source    Biot–Savart for the current sheet M × n (Jackson 1999, *Classical Electrodynamics*, ch. 5); sinh stretching: Johnston & Elliott 2005,
 *           *Int. J. Numer. Methods Eng.* 62, 564 (both from memory).
 * Checked   tests/reference/field-magnets.test.ts
 */
export function sectorField(innerRadius: number, outerRadius: number, span: number, axial: number, accuracy: number): FieldInto {
  const digits = -Math.log(accuracy);
  const h = axial / 2;
  const half = span / 2;
  const length = outerRadius - innerRadius;
  const cosHalf = Math.cos(half);
  const sinHalf = Math.sin(half);

  /** The curved side at a radius; `side` is +1 for the outer, −1 for the inner, which is also the sense of its current. */
  const arc = (radius: number, side: number, x: number, y: number, z: number, scale: number, out: Float64Array | number[]) => {
    const r = Math.sqrt(x * x + y * y);
    const at = r > 0 ? Math.atan2(y, x) : 0;
    const cosAt = r > 0 ? x / r : 1;
    const sinAt = r > 0 ? y / r : 0;
    const lower = z - h;
    const upper = z + h;
    const away = Math.max(0, Math.abs(z) - h);
    const gap = Math.abs(r - radius) < SIDE * radius ? side * SIDE * radius : r - radius;
    const delta = Math.sqrt((gap * gap + away * away) / (Math.max(r, 0.05 * radius) * radius));
    const from = Math.asinh((-half - at) / delta);
    const to = Math.asinh((half - at) / delta);
    const count = Math.min(MOST_NODES, Math.max(FEWEST_NODES, Math.ceil(digits / (2 * Math.asinh(Math.PI / (to - from))))));
    const { nodes, weights } = rule(count);
    const middle = (from + to) / 2;
    const reach = (to - from) / 2;
    let bx = 0;
    let by = 0;
    let bz = 0;
    for (let i = 0; i < count; i++) {
      const t = middle + reach * nodes[i];
      const grown = Math.exp(t);
      const psi = (delta * (grown - 1 / grown)) / 2;
      const weight = (weights[i] * reach * delta * (grown + 1 / grown)) / 2;
      const s = Math.sin(psi / 2);
      const c = Math.cos(psi / 2);
      const cosPsi = 1 - 2 * s * s;
      const sinPsi = 2 * s * c;
      const planar2 = gap * gap + 4 * r * radius * s * s;
      const toLower = Math.sqrt(planar2 + lower * lower);
      const toUpper = Math.sqrt(planar2 + upper * upper);
      const along = weight * (1 / toLower - 1 / toUpper);
      bx += along * (cosAt * cosPsi - sinAt * sinPsi);
      by += along * (sinAt * cosPsi + cosAt * sinPsi);
      // upper/(planar² toUpper) − lower/(planar² toLower), without its cancellation above and below the magnet.
      const straight =
        lower * upper > 0
          ? (upper * upper - lower * lower) / (toLower * toUpper * (upper * toLower + lower * toUpper))
          : (upper / toUpper - lower / toLower) / planar2;
      bz += weight * straight * (2 * r * s * s - gap);
    }
    const current = side * scale * radius;
    out[0] += current * bx;
    out[1] += current * by;
    out[2] += current * bz;
  };

  /** The straight side at angle ±half; `side` is +1 or −1, its outward direction the side's own. */
  const straight = (side: number, x: number, y: number, z: number, scale: number, out: Float64Array | number[]) => {
    const u = x * cosHalf + side * y * sinHalf;
    const v = y * cosHalf - side * x * sinHalf;
    const near = u - innerRadius;
    const far = u - outerRadius;
    const outside = side * v >= 0 ? 1 : -1;
    const lower = z - h;
    const upper = z + h;
    const nearPlanar = near * near + v * v;
    const farPlanar = far * far + v * v;
    const farLower = Math.sqrt(farPlanar + lower * lower);
    const farUpper = Math.sqrt(farPlanar + upper * upper);
    const nearLower = Math.sqrt(nearPlanar + lower * lower);
    const nearUpper = Math.sqrt(nearPlanar + upper * upper);
    const solid = rectangleAngle(far, near, lower, upper, Math.abs(v), farLower, farUpper, nearLower, nearUpper);
    const alongLower = nearLower + farLower;
    const alongUpper = nearUpper + farUpper;
    const potential = Math.log(
      ((alongUpper + length) * edgeRemainder(alongLower, length)) / (edgeRemainder(alongUpper, length) * (alongLower + length)),
    );
    // The current runs inwards on the side at +half, outwards on the other.
    const across = -side * potential;
    out[0] += scale * -side * sinHalf * across;
    out[1] += scale * cosHalf * across;
    out[2] -= scale * outside * solid;
  };

  return (x, y, z, scale, out) => {
    const s = scale / (4 * Math.PI);
    arc(outerRadius, 1, x, y, z, s, out);
    arc(innerRadius, -1, x, y, z, s, out);
    straight(1, x, y, z, s, out);
    straight(-1, x, y, z, s, out);
  };
}

/**
 * B_z of `sectorField` alone.
 *
 * @param innerRadius  Inner radius. [m]
 * @param outerRadius  Outer radius. [m]
 * @param span         Angle covered, centred on +x. [rad]
 * @param axial        Height. [m]
 * @param accuracy     As for `sectorField`. [-]
 * @returns            Function of x, y, z, origin on the axle at mid-height. [T per T]
 *
 * Valid     as `sectorField`.
 * Source    as `sectorField`.
 * Checked   tests/core/magnets/shapes.test.ts
 */
export function sectorAxialField(innerRadius: number, outerRadius: number, span: number, axial: number, accuracy: number): AxialField {
  const whole = sectorField(innerRadius, outerRadius, span, axial, accuracy);
  const field = new Float64Array(3);
  return (x, y, z) => {
    field.fill(0);
    whole(x, y, z, 1, field);
    return field[2];
  };
}
