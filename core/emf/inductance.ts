import { MU_0 } from '../constants';
import { gaussLegendre } from '../numeric/integrate';
import type { PathPiece } from '../winding/stage';

type Point3 = [number, number, number];
type Segment = { from: Point3; to: Point3 };

/** ln of the geometric mean distance of a rectangle a × b from itself, over a + b. Grover 1946, p. 22, constant to 0.2 %. */
const OWN_DISTANCE = 0.2235;
const CHORD = 0.35; // rad, the longest arc taken as straight
const POINTS = 6;

/** A closed turn as straight pieces at a height, turned about the axle. [m, rad] */
export function filament(path: readonly PathPiece[], height: number, angle: number): Segment[] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const at = ([x, y]: [number, number]): Point3 => [x * c - y * s, x * s + y * c, height];
  return path.flatMap((piece): Segment[] => {
    if (piece.kind === 'line') return [{ from: at(piece.from), to: at(piece.to) }];
    const parts = Math.max(1, Math.ceil(Math.abs(piece.sweep) / CHORD));
    const on = (k: number): Point3 => {
      const a = piece.start + (piece.sweep * k) / parts;
      return at([piece.centre[0] + piece.radius * Math.cos(a), piece.centre[1] + piece.radius * Math.sin(a)]);
    };
    return Array.from({ length: parts }, (_, k) => ({ from: on(k), to: on(k + 1) }));
  });
}

/**
 * Mutual inductance of two closed filaments, neither touching the other.
 *
 * @param a  Straight pieces. [m]
 * @param b  Straight pieces. [m]
 * @returns  M. [H]
 *
 *   M = μ₀/4π ∮∮ dl·dl′/|r − r′|, the inner integral in closed form, the outer by Gauss.
 *
 * Source    Neumann 1845; closed form of the potential of a straight piece, Grover 1946.
 * Checked   tests/reference/inductance.test.ts
 */
export function neumann(a: readonly Segment[], b: readonly Segment[]): number {
  const { nodes, weights } = gaussLegendre(POINTS, 0, 1);
  let sum = 0;
  for (const one of a) {
    const [ux, uy, uz] = [one.to[0] - one.from[0], one.to[1] - one.from[1], one.to[2] - one.from[2]];
    for (const other of b) {
      const [vx, vy, vz] = [other.to[0] - other.from[0], other.to[1] - other.from[1], other.to[2] - other.from[2]];
      const length = Math.hypot(vx, vy, vz);
      const along = ux * vx + uy * vy + uz * vz;
      if (length < 1e-12 || Math.abs(along) < 1e-18) continue;
      let potential = 0;
      for (let k = 0; k < POINTS; k++) {
        const [x, y, z] = [one.from[0] + nodes[k] * ux, one.from[1] + nodes[k] * uy, one.from[2] + nodes[k] * uz];
        const near = Math.hypot(x - other.from[0], y - other.from[1], z - other.from[2]);
        const far = Math.hypot(x - other.to[0], y - other.to[1], z - other.to[2]);
        potential += weights[k] * Math.log((near + far + length) / (near + far - length));
      }
      sum += (along / length) * potential;
    }
  }
  return (MU_0 / (4 * Math.PI)) * sum;
}

/** A coil's turns for inductance: the path at any offset across the leg, its axial thickness, and its leg width. */
export interface Bundle {
  path: (offset: number) => PathPiece[];
  legWidth: number;
  thickness: number;
}

/** Cells across the leg and through its thickness: near ones must be finer than the distances between them. */
const SELF_CELLS: [number, number] = [6, 3];
const MUTUAL_CELLS: [number, number] = [3, 1];

function cellFilaments(
  { path, legWidth, thickness }: Bundle,
  [across, through]: [number, number],
  angle: number,
  height: number,
): Segment[][] {
  return Array.from({ length: across * through }, (_, i) => {
    const offset = ((Math.floor(i / through) + 0.5) / across) * legWidth;
    return filament(path(offset), height + (((i % through) + 0.5) / through - 0.5) * thickness, angle);
  });
}

/**
 * Self-inductance of one coil of one turn spread evenly over its section.
 *
 * @param bundle  Geometry. [m]
 * @returns       L/N². [H]
 *
 * Omits     steel plates, which raise it.
 * Source    mean of the mutual inductances of filaments; a cell with itself at its geometric mean distance (Grover 1946).
 * Checked   tests/reference/inductance.test.ts
 */
export function selfInductance(bundle: Bundle): number {
  const cells = cellFilaments(bundle, SELF_CELLS, 0, 0);
  const own = OWN_DISTANCE * (bundle.legWidth / SELF_CELLS[0] + bundle.thickness / SELF_CELLS[1]);
  const raised = cells.map((cell) =>
    cell.map(({ from, to }): Segment => ({ from: [from[0], from[1], from[2] + own], to: [to[0], to[1], to[2] + own] })),
  );
  let sum = 0;
  for (let i = 0; i < cells.length; i++) {
    sum += neumann(cells[i], raised[i]);
    for (let j = 0; j < i; j++) sum += 2 * neumann(cells[i], cells[j]);
  }
  return sum / cells.length ** 2;
}

/**
 * Mutual inductance of two alike coils of one turn each, one turned about the axle and lifted.
 *
 * @param bundle  Geometry of both. [m]
 * @param angle   Between them. [rad]
 * @param lift    Axial distance between their middles. [m]
 * @returns       M/N². [H]
 *
 * Omits     steel plates.
 * Source    as `selfInductance`.
 * Checked   tests/reference/inductance.test.ts
 */
export function mutualInductance(bundle: Bundle, angle: number, lift: number): number {
  const here = cellFilaments(bundle, MUTUAL_CELLS, 0, 0);
  const there = cellFilaments(bundle, MUTUAL_CELLS, angle, lift);
  let sum = 0;
  for (const a of here) for (const b of there) sum += neumann(a, b);
  return sum / (here.length * there.length);
}
