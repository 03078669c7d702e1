import type { MagnetShape } from './section';

const block = (radial: number, tangential: number, axial: number): MagnetShape => ({
  kind: 'block',
  radial: radial / 1000,
  tangential: tangential / 1000,
  axial: axial / 1000,
});
const cylinder = (diameter: number, axial: number): MagnetShape => ({ kind: 'cylinder', diameter: diameter / 1000, axial: axial / 1000 });

/** Sizes that are often in stock. Common practice, no source: what the seller has rules. [mm] */
export const magnetSizes: readonly MagnetShape[] = [
  block(30, 10, 5),
  block(30, 20, 10),
  block(40, 20, 10),
  block(46, 30, 10),
  block(50, 25, 10),
  block(50, 30, 12.5),
  block(50, 50, 12.5),
  block(60, 30, 15),
  cylinder(15, 5),
  cylinder(20, 5),
  cylinder(20, 10),
  cylinder(25, 10),
  cylinder(30, 10),
  cylinder(40, 10),
  cylinder(45, 15),
  cylinder(50, 20),
];
