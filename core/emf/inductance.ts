import { MU_0 } from '../constants';
import { gaussLegendre } from '../numeric/integrate';
import type { PathPiece } from '../winding/stage';

/** A closed turn as straight pieces in a plane across the axle, of which `repeat` equal sets follow each other round it. [m] */
export interface Filament {
  x: number[];
  y: number[];
  repeat: number;
}

/** The longest arc taken as straight. [rad] */
const CHORD = 0.35;

/**
 * A turn's path as a filament, turned about the axle.
 *
 * @param path    Lines and arcs, closed. [m]
 * @param repeat  Equal sets round the axle that the path is made of. [-]
 * @param angle   By which it is turned. [rad]
 * @returns       Filament. [m]
 *
 * Valid     chords in place of arcs, to 0.1 %.
 * Source    geometry.
 * Checked   tests/core/emf/inductance.test.ts
 */
export function filament(path: readonly PathPiece[], repeat: number, angle: number): Filament {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const points = path.flatMap((piece): [number, number][] => {
    if (piece.kind === 'line') return [piece.from];
    const parts = Math.max(1, Math.ceil(Math.abs(piece.sweep) / CHORD));
    return Array.from({ length: parts }, (_, k) => {
      const a = piece.start + (piece.sweep * k) / parts;
      return [piece.centre[0] + piece.radius * Math.cos(a), piece.centre[1] + piece.radius * Math.sin(a)];
    });
  });
  return { x: points.map(([x, y]) => x * c - y * s), y: points.map(([x, y]) => x * s + y * c), repeat };
}

/** Gauss nodes along a piece: near ones see the logarithm's bend. */
const NEAR = gaussLegendre(6, 0, 1);
const FAR = gaussLegendre(2, 0, 1);

/** ∬ du dv / √((u − v)² + ρ²) of two parallel pieces, from 0 to a and from b to c along the same direction. Grover 1946. */
function parallel(a: number, b: number, c: number, rho: number): number {
  const f = (t: number) => t * Math.asinh(t / rho) - Math.hypot(t, rho);
  return f(a - b) - f(-b) - f(a - c) + f(-c);
}

/**
 * Mutual inductance of two closed filaments in parallel planes.
 *
 * @param a     Filament. [m]
 * @param b     Filament of the same symmetry. [m]
 * @param lift  Between their planes; more than 0 for a filament with itself. [m]
 * @returns     M. [H]
 *
 *   M = μ₀/4π ∮∮ dl·dl′/|r − r′|
 *
 * Parallel pieces in closed form; for others the inner integral in closed form, the outer by Gauss.
 *
 * Source    Neumann 1845; straight pieces as in Grover 1946, *Inductance Calculations*, ch. 5–7 (from memory).
 * Checked   tests/reference/inductance.test.ts
 */
export function neumann(a: Filament, b: Filament, lift: number): number {
  let sum = 0;
  const [na, nb] = [a.x.length, b.x.length];
  for (let i = 0; i < na / a.repeat; i++) {
    const ax = a.x[i];
    const ay = a.y[i];
    const ux = a.x[(i + 1) % na] - ax;
    const uy = a.y[(i + 1) % na] - ay;
    const u = Math.sqrt(ux * ux + uy * uy);
    for (let j = 0; j < nb; j++) {
      const bx = b.x[j] - ax;
      const by = b.y[j] - ay;
      const cx = b.x[(j + 1) % nb] - ax;
      const cy = b.y[(j + 1) % nb] - ay;
      const vx = cx - bx;
      const vy = cy - by;
      const v = Math.sqrt(vx * vx + vy * vy);
      const dot = ux * vx + uy * vy;
      const cross = ux * vy - uy * vx;
      if (Math.abs(dot) < 1e-9 * u * v) continue;
      if (Math.abs(cross) < 1e-9 * u * v) {
        const aside = (ux * by - uy * bx) / u;
        const rho = Math.sqrt(aside * aside + lift * lift) + 1e-12 * u;
        sum += parallel(u, (ux * bx + uy * by) / u, (ux * cx + uy * cy) / u, rho);
        continue;
      }
      const mx = (bx + cx - ux) / 2;
      const my = (by + cy - uy) / 2;
      const { nodes, weights } = mx * mx + my * my + lift * lift > (u + v) * (u + v) ? FAR : NEAR;
      let potential = 0;
      for (let k = 0; k < nodes.length; k++) {
        const x = nodes[k] * ux;
        const y = nodes[k] * uy;
        const near = Math.sqrt((x - bx) * (x - bx) + (y - by) * (y - by) + lift * lift);
        const far = Math.sqrt((x - cx) * (x - cx) + (y - cy) * (y - cy) + lift * lift);
        potential += weights[k] * Math.log((near + far + v) / Math.max(near + far - v, 1e-12 * v));
      }
      sum += (dot / v) * potential;
    }
  }
  return (MU_0 / (4 * Math.PI)) * a.repeat * sum;
}
