import { gaussLegendre } from '../numeric/integrate';
import type { PathPiece } from '../winding/stage';
import { filament, neumann, type Filament } from './inductance';

/** A coil's turns, spread evenly over the section of its leg. [m] */
export interface Bundle {
  /** One turn, corners mitred, at an offset across the leg. */
  path: (offset: number) => PathPiece[];
  /** Equal sets round the axle that each turn is made of. */
  symmetry: number;
  legWidth: number;
  thickness: number;
  /** `passingDistance` of the section. */
  passing: number;
}

/** Cells across the leg and through its thickness. */
const ACROSS = 3;
const THROUGH = 2;

const middles = (count: number, length: number) => Array.from({ length: count }, (_, i) => ((i + 0.5) / count) * length);

function filaments({ path, symmetry }: Bundle, offsets: number[], angle: number): Filament[] {
  return offsets.map((offset) => filament(path(offset), symmetry, angle));
}

/** An axial distance and how often it counts. [m, -] */
export type Lift = [lift: number, weight: number];

function mean(here: Filament[], there: Filament[], lifts: readonly Lift[]): number {
  let sum = 0;
  for (const a of here) for (const b of there) for (const [lift, weight] of lifts) sum += weight * neumann(a, b, lift);
  return sum / (here.length * there.length);
}

/**
 * Geometric mean distance of a rectangle from itself.
 *
 * @param width   One side. [m]
 * @param height  The other. [m]
 * @returns       Distance. [m]
 *
 *   0.2235 (a + b)
 *
 * Valid     to 0.2 % for any shape of rectangle.
 * Source    Grover 1946, *Inductance Calculations*, ch. 3 (from memory).
 * Checked   tests/reference/inductance.test.ts
 */
export function ownDistance(width: number, height: number): number {
  return 0.2235 * (width + height);
}

/**
 * How far two filaments of a section must pass each other at least, so that all its filaments together are as far from each other as the section is from
 * itself.
 *
 * @param width      Of the section. [m]
 * @param thickness  Of the section. [m]
 * @returns          ε of the mean over all pairs, ln √(distance² + ε²) = ln (own distance). [m]
 *
 * Source    geometric mean distance, `ownDistance`; ε found by halving.
 * Checked   tests/core/emf/inductance.test.ts
 */
export function passingDistance(width: number, thickness: number): number {
  const wanted = Math.log(ownDistance(width, thickness));
  const pairs = middles(ACROSS, width).flatMap((x) => middles(THROUGH, thickness).map((z) => [x, z] as const));
  const meanLog = (e: number) =>
    pairs.reduce((sum, [x, z]) => sum + pairs.reduce((s, [u, w]) => s + Math.log(Math.hypot(x - u, z - w, e)), 0), 0) / pairs.length ** 2;
  let [low, high] = [0, width + thickness];
  for (let pass = 0; pass < 40; pass++) {
    const middle = (low + high) / 2;
    if (meanLog(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Self-inductance of one turn spread evenly over its section.
 *
 * @param bundle  Geometry. [m]
 * @returns       L/N². [H]
 *
 * Valid     to about 0.5 % where the leg is no wider than the hole.
 * Omits     steel plates (`imagesInductance`); the current's crowding in thick wire.
 * Source    mean over all pairs of filaments, each pair no nearer than `passingDistance`.
 * Checked   tests/reference/inductance.test.ts
 */
export function selfInductance(bundle: Bundle): number {
  return mutualInductance(bundle, 0, 0);
}

/**
 * Mutual inductance of two alike turns, each spread evenly over its section.
 *
 * @param bundle  Geometry of both. [m]
 * @param angle   By which the second is turned about the axle. [rad]
 * @param lift    Axial distance between their middles. [m]
 * @returns       M/N². [H]
 *
 * Omits     steel plates (`imagesInductance`).
 * Source    mean over all pairs of filaments.
 * Checked   tests/reference/inductance.test.ts
 */
export function mutualInductance(bundle: Bundle, angle: number, lift: number): number {
  const offsets = middles(ACROSS, bundle.legWidth);
  const step = bundle.thickness / THROUGH;
  return mean(filaments(bundle, offsets, 0), filaments(bundle, offsets, angle), [
    [Math.hypot(bundle.passing, lift), 1 / 2],
    [Math.hypot(bundle.passing, lift + step), 1 / 4],
    [Math.hypot(bundle.passing, lift - step), 1 / 4],
  ]);
}

/**
 * Mutual inductance of a turn and another one's images in steel.
 *
 * @param bundle  Geometry of both. [m]
 * @param angle   By which the second is turned about the axle. [rad]
 * @param lifts   Distances to the images, of `imageLifts`. [m]
 * @returns       What the steel adds to M/N². [H]
 *
 * Valid     images at least a leg's width off: two filaments stand for the leg, and one from four widths on.
 * Source    method of images; Gauss nodes across the leg.
 * Checked   tests/core/emf/inductance.test.ts
 */
export function imagesInductance(bundle: Bundle, angle: number, lifts: readonly Lift[]): number {
  const part = (nodes: number, chosen: (lift: number) => boolean) => {
    const offsets = gaussLegendre(nodes, 0, bundle.legWidth).nodes;
    return mean(
      filaments(bundle, offsets, 0),
      filaments(bundle, offsets, angle),
      lifts.filter(([lift]) => chosen(lift)),
    );
  };
  const far = 4 * bundle.legWidth;
  return part(2, (lift) => lift < far) + part(1, (lift) => lift >= far);
}

/** Beyond so many times the winding's radius an image acts as a dipole, and the rest of the row is summed as such. */
const DIPOLE = 2;
const MOST_SETS = 10;

/**
 * Distances to the images of a coil in the steel behind the magnets.
 *
 * @param from    Height of the coil that is asked about. [m]
 * @param to      Height of the coil that is mirrored. [m]
 * @param below   Where steel begins below, −Infinity for none. [m]
 * @param above   Where steel begins above, Infinity for none. [m]
 * @param radius  Outer radius of the winding. [m]
 * @returns       Axial distances, all of the same sense of current, and how often each counts. [m, -]
 *
 *   one plate at s: 2s − z;  two plates D apart: 2s − z + 2kD and z + 2kD
 *   from k = K on, with M ~ 1/d³:  Σ M ≈ K·[1 + (K/(K + ½))²] · M(2KD)
 *
 * Valid     plates wider than the winding, far from saturation.
 * Omits     eddy currents in the plates, which take a little off again.
 * Source    method of images, Jackson 1999, *Classical Electrodynamics*, §5.11 (from memory).
 * Checked   tests/core/emf/inductance.test.ts
 */
export function imageLifts(from: number, to: number, below: number, above: number, radius: number): Lift[] {
  const plates = [below, above].filter(Number.isFinite);
  if (plates.length < 2) return plates.map((s) => [Math.abs(2 * s - to - from), 1]);
  const period = 2 * (above - below);
  const sets = Math.min(MOST_SETS, Math.ceil((DIPOLE * radius) / period));
  const counted = new Map<number, number>();
  const count = (lift: number, weight: number) => {
    const rounded = Math.round(Math.abs(lift) * 1e9) / 1e9;
    counted.set(rounded, (counted.get(rounded) ?? 0) + weight);
  };
  for (let k = -sets; k < sets; k++) {
    count(2 * above - to - from + k * period, 1);
    if (k !== 0) count(to - from + k * period, 1);
  }
  count(to - from + sets * period, 1 + sets * (1 + (sets / (sets + 0.5)) ** 2));
  return [...counted];
}
