import { blockAxialField, blockField } from './block';
import { cylinderAxialField, cylinderField } from './cylinder';
import { sectorAxialField, sectorField } from './sector';
import type { MagnetShape } from './section';

/** Adds `scale` times the flux density at x, y, z to `out`; allocates nothing. */
export type FieldInto = (x: number, y: number, z: number, scale: number, out: Float64Array | number[]) => void;

/** B_z alone, of 1 T of remanence; allocates nothing. */
export type AxialField = (x: number, y: number, z: number) => number;

/** Flux density at a point. [m] → [T] */
export type FieldFunction = (x: number, y: number, z: number) => [bx: number, by: number, bz: number];

/** The pole face seen along the axle, in the magnet's own frame. [m] */
export type Footprint = { kind: 'circle'; radius: number } | { kind: 'polygon'; points: [x: number, y: number][] };

/**
 * What the program must know of a kind of magnet. Its own frame: x radial, y tangential, z axial (magnetised to +z), origin at its centre, or, where `onAxle`
 * is true, on the machine's axle at mid-height.
 */
export interface ShapeModel<S> {
  label: string;
  onAxle: boolean;
  /**
   * Field of 1 T of remanence. `axial` stands in for the shape's own height, as images behind steel need; `accuracy` is the share that a shape without a
   * closed form may be off by.
   */
  fieldInto(shape: S, axial: number, accuracy: number): FieldInto;
  /** The same field's B_z alone, where that is less work: most of what the gap's harmonics need. */
  axialField(shape: S, axial: number, accuracy: number): AxialField;
  footprint(shape: S): Footprint;
  /** Middle of the pole face. [m] */
  centre(shape: S): [x: number, y: number];
  /** Extent along the radius. [m] */
  radialLength(shape: S): number;
  /** Extent along the pitch circle. [m] */
  width(shape: S, pitchRadius: number): number;
  /** Least and greatest distance from the axle. [m] */
  radii(shape: S, pitchRadius: number): { inner: number; outer: number };
  /** Least pitch angle at which neighbours on one disc do not touch. [rad] */
  angleTaken(shape: S, pitchRadius: number): number;
  /** Area of a pole face. [m²] */
  faceArea(shape: S): number;
}

type Of<K extends MagnetShape['kind']> = Extract<MagnetShape, { kind: K }>;

/** Magnet shapes by kind. To add one: its formula file, its part of `section.ts`, one entry here. */
export const magnetShapes: { [K in MagnetShape['kind']]: ShapeModel<Of<K>> } = {
  block: {
    label: 'Block',
    onAxle: false,
    fieldInto: (shape, axial) => blockField(shape.radial, shape.tangential, axial),
    axialField: (shape, axial) => blockAxialField(shape.radial, shape.tangential, axial),
    footprint: ({ radial, tangential }) => ({
      kind: 'polygon',
      points: [
        [-radial / 2, -tangential / 2],
        [radial / 2, -tangential / 2],
        [radial / 2, tangential / 2],
        [-radial / 2, tangential / 2],
      ],
    }),
    centre: () => [0, 0],
    radialLength: ({ radial }) => radial,
    width: ({ tangential }) => tangential,
    radii: ({ radial, tangential }, pitchRadius) => ({
      inner: pitchRadius - radial / 2,
      outer: Math.hypot(pitchRadius + radial / 2, tangential / 2),
    }),
    angleTaken: ({ radial, tangential }, pitchRadius) => 2 * Math.atan2(tangential / 2, pitchRadius - radial / 2),
    faceArea: ({ radial, tangential }) => radial * tangential,
  },
  cylinder: {
    label: 'Cylinder',
    onAxle: false,
    fieldInto: (shape, axial) => cylinderField(shape.diameter, axial),
    axialField: (shape, axial) => cylinderAxialField(shape.diameter, axial),
    footprint: ({ diameter }) => ({ kind: 'circle', radius: diameter / 2 }),
    centre: () => [0, 0],
    radialLength: ({ diameter }) => diameter,
    width: ({ diameter }) => diameter,
    radii: ({ diameter }, pitchRadius) => ({ inner: pitchRadius - diameter / 2, outer: pitchRadius + diameter / 2 }),
    angleTaken: ({ diameter }, pitchRadius) => (diameter < 2 * pitchRadius ? 2 * Math.asin(diameter / (2 * pitchRadius)) : Math.PI),
    faceArea: ({ diameter }) => (Math.PI * diameter * diameter) / 4,
  },
  sector: {
    label: 'Ring sector',
    onAxle: true,
    fieldInto: (shape, axial, accuracy) => sectorField(shape.innerRadius, shape.outerRadius, shape.span, axial, accuracy),
    axialField: (shape, axial, accuracy) => sectorAxialField(shape.innerRadius, shape.outerRadius, shape.span, axial, accuracy),
    footprint: ({ innerRadius, outerRadius, span }) => {
      const steps = Math.max(4, Math.ceil(span / 0.02));
      const arc = (radius: number) =>
        Array.from({ length: steps + 1 }, (_, i): [number, number] => {
          const angle = (i / steps - 0.5) * span;
          return [radius * Math.cos(angle), radius * Math.sin(angle)];
        });
      return { kind: 'polygon', points: [...arc(outerRadius), ...arc(innerRadius).reverse()] };
    },
    centre: ({ innerRadius, outerRadius }) => [(innerRadius + outerRadius) / 2, 0],
    radialLength: ({ innerRadius, outerRadius }) => outerRadius - innerRadius,
    width: ({ span }, pitchRadius) => span * pitchRadius,
    radii: ({ innerRadius, outerRadius }) => ({ inner: innerRadius, outer: outerRadius }),
    angleTaken: ({ span }) => span,
    faceArea: ({ innerRadius, outerRadius, span }) => (span * (outerRadius * outerRadius - innerRadius * innerRadius)) / 2,
  },
};

/** The registry's entry for a shape, typed for any shape. */
export function shapeModel(shape: MagnetShape): ShapeModel<MagnetShape> {
  return magnetShapes[shape.kind];
}

/** Volume of one magnet. [m³] */
export function magnetVolume(shape: MagnetShape): number {
  return shapeModel(shape).faceArea(shape) * shape.axial;
}

/**
 * Flux density of one magnet, relative permeability 1, in its own frame.
 *
 * @param shape      Shape and sizes. [m]
 * @param remanence  Remanence. [T]
 * @returns          Function of x, y, z. [m] → [T]
 *
 * Omits     recoil permeability.
 * Source    block.ts, cylinder.ts, sector.ts.
 * Checked   tests/reference/field-magnets.test.ts
 */
export function magnetField(shape: MagnetShape, remanence: number): FieldFunction {
  const into = shapeModel(shape).fieldInto(shape, shape.axial, 1e-9);
  return (x, y, z) => {
    const out: [number, number, number] = [0, 0, 0];
    into(x, y, z, remanence, out);
    return out;
  };
}
