import type { MagnetShape } from '../magnets/section';
import { type AxialField, type FieldFunction, type FieldInto, type Footprint, shapeModel } from '../magnets/shapes';
import { type BodyStack, bodyStack } from './images';
import type { DiscsSection } from './section';

/** Magnets on their discs, with their images: all that is needed to sum a field. */
export interface FieldSource {
  /** Field of one magnet of the given height, 1 T, in its own frame. */
  fieldOf(axial: number): FieldInto;
  /** Its B_z alone. */
  axialFieldOf(axial: number): AxialField;
  stack: BodyStack;
  remanence: number;
  poles: number;
  /** Distance of a magnet's origin from the axle; 0 for shapes drawn about the axle. [m] */
  offset: number;
  pitchRadius: number;
  /** Where the pole faces begin and end along the radius. [m] */
  edges: [inner: number, outer: number];
  /** From a magnet to the line half-way to the next, in plan, not below 0. [m] */
  clearance: number;
  /** Angle between the two discs' magnets: the upper is turned by half of it, the lower by half of it the other way. [rad] */
  misalignment: number;
}

/** A body with its field and the directions in which its magnets stand. */
interface Placed {
  into: FieldInto;
  zCentre: number;
  places: { cosines: number[]; sines: number[] };
}

/** The most sets of images taken; a stack that has not settled by then is shorter than a pole and far outside what can be built. */
export const MOST_SETS = 80;
/** Images are taken until the last set changes the field by less than this share. */
export const IMAGE_TOLERANCE = 1e-6;

/**
 * The field's source for a shape of magnet on its discs.
 *
 * @param shape      Magnet. [m]
 * @param remanence  Remanence, corrections for recoil and saturation included. [T]
 * @param discs      Arrangement, poles, pitch radius and backing. [-]
 * @param gapLength  Gap. [m]
 * @returns          Source. [-]
 *
 * Source    images.ts.
 * Checked   tests/reference/field-rotors.test.ts
 */
export function fieldSource(shape: MagnetShape, remanence: number, discs: DiscsSection, gapLength: number): FieldSource {
  const model = shapeModel(shape);
  const { inner, outer } = model.radii(shape, discs.pitchRadius);
  return {
    fieldOf: (axial) => model.fieldInto(shape, axial, IMAGE_TOLERANCE),
    axialFieldOf: (axial) => model.axialField(shape, axial, IMAGE_TOLERANCE),
    stack: bodyStack(discs.arrangement, discs.backing.kind === 'steel', gapLength, shape.axial),
    remanence,
    poles: discs.poles,
    offset: model.onAxle ? 0 : discs.pitchRadius,
    pitchRadius: discs.pitchRadius,
    edges: [inner, outer],
    clearance: clearanceInPlan(model.footprint(shape), model.onAxle ? 0 : discs.pitchRadius, Math.PI / discs.poles),
    misalignment: discs.arrangement === 'facing-pair' ? (discs.misalignment ?? 0) : 0,
  };
}

/** From a magnet's outline to the line through the axle at an angle. [m] */
function clearanceInPlan(outline: Footprint, offset: number, angle: number): number {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const least =
    outline.kind === 'circle'
      ? offset * s - outline.radius
      : outline.points.reduce((near, [x, y]) => Math.min(near, (x + offset) * s - y * c), Infinity);
  return Math.max(0, least);
}

/**
 * Flux density anywhere in front of the steel, by direct sum over all magnets and images.
 *
 * @param source  Magnets and images. [-]
 * @returns       Function of x, y, z (axle z, winding's middle z = 0, magnet 0 on +x with its polarisation along +z; where the discs are misaligned, +x is
 *                halfway between their magnets 0). [m] → [T]
 *
 * Omits     leakage behind steel: zero is returned there.
 * Source    superposition.
 * Checked   tests/reference/field-rotors.test.ts
 */
export function directField(source: FieldSource): FieldFunction {
  const { poles, offset, remanence, stack, misalignment } = source;
  const disc = (turn: number) => {
    const angles = Array.from({ length: poles }, (_, m) => (2 * Math.PI * m) / poles + turn);
    return { cosines: angles.map(Math.cos), sines: angles.map(Math.sin) };
  };
  const [lower, inLine, upper] = [-misalignment / 2, 0, misalignment / 2].map(disc);
  const local = new Float64Array(3);
  const add = ({ into, zCentre, places }: Placed, x: number, y: number, z: number, out: [number, number, number]) => {
    const { cosines, sines } = places;
    for (let m = 0; m < poles; m++) {
      local.fill(0);
      into(x * cosines[m] + y * sines[m] - offset, y * cosines[m] - x * sines[m], z - zCentre, m % 2 === 0 ? remanence : -remanence, local);
      out[0] += local[0] * cosines[m] - local[1] * sines[m];
      out[1] += local[0] * sines[m] + local[1] * cosines[m];
      out[2] += local[2];
    }
  };
  // How many images count is settled once, under a magnet, with the discs in line.
  const bodies: Placed[] = [];
  const sum: [number, number, number] = [0, 0, 0];
  for (let k = 0; k < MOST_SETS; k++) {
    const set = stack
      .set(k)
      .map((body): Placed => ({ into: source.fieldOf(body.axial), zCentre: body.zCentre, places: body.upper ? upper : lower }));
    const before = sum[2];
    for (const body of set) add({ ...body, places: inLine }, source.pitchRadius, 0, 0, sum);
    bodies.push(...set);
    if (set.length === 0 || (k > 0 && Math.abs(sum[2] - before) <= IMAGE_TOLERANCE * Math.abs(sum[2]))) break;
  }
  return (x, y, z) => {
    const out: [number, number, number] = [0, 0, 0];
    if (z < stack.steelBelow || z > stack.steelAbove) return out;
    for (const body of bodies) add(body, x, y, z, out);
    return out;
  };
}
