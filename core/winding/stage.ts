import { integral } from '../numeric/integrate';
import type { Caution } from '../problem';
import { windingCautions } from './cautions';
import { layoutModel, pathLength } from './layouts';
import type { WindingSection } from './section';
import { pegs } from './serpentine';
import { nearestBalanced, phaseAngle, phasePhasors, slotStar, unbalanceOf, windingFactors, type Assignment } from './slot-star';

/** A piece of a turn's path in the plane of the winding. [m, rad] Arcs run from angle `start` through `sweep` (counter-clockwise positive). */
export type PathPiece =
  | { kind: 'line'; from: [number, number]; to: [number, number] }
  | { kind: 'arc'; centre: [number, number]; radius: number; start: number; sweep: number };

/** One coil, or one ring of a serpentine. */
export interface Coil {
  coil: number;
  phase: number;
  direction: 1 | -1;
  /** Mechanical angle by which the layout's first coil is turned. [rad] */
  angle: number;
  /** Middle of the coil's copper above the mid-plane. [m] */
  height: number;
  /** Series group within the phase, from 1. */
  path: number;
}

export interface WindingResult {
  coils: Coil[];
  /** Coils in series in each parallel path of a phase; the mean where they do not share out evenly. */
  seriesCoils: number;
  /** Axial height of all the copper. [m] */
  copperHeight: number;
  /** Radii between which copper lies. [m] */
  innerRadius: number;
  outerRadius: number;
  /** Window of one coil's leg: width × thickness. [m²] */
  windowArea: number;
  /** Mean length of one turn over the real section, corners rounded. [m] */
  meanTurn: number;
  /** Serpentine only: pegs for the skein. Distance between the pegs' centres and the peg diameter assumed. [m] */
  pegs?: { distance: number; diameter: number; bundleDepth: number };
  /** Textbook values beside the integrated result. [-] */
  factors: { distribution: number; pitch: number; winding: number };
  /** Whether all phases have EMF of equal size and even spacing. */
  balanced: boolean;
  /** Greatest departure of a phase's EMF from the mean, as a fraction. [-] */
  unbalance: number;
  /** Combinations near this one that balance, in words, when it does not. */
  nearestBalanced: string[];
  cautions: Caution[];
}

/** Gauss nodes across the leg; a turn's length is all but straight in its offset. */
const LAYERS = 3;

/** Where the copper lies, coil by coil, and which coil belongs to which phase. */
export function windingStage(winding: WindingSection, poles: number): WindingResult {
  const { layout, phases, parallelPaths } = winding;
  const model = layoutModel(layout);
  const count = model.count(layout, phases);
  const layers = model.layers(layout, phases);
  const meanTurn =
    integral((offset) => pathLength(model.turnPath(layout, poles, offset, 'rounded')), 0, layout.legWidth, LAYERS) / layout.legWidth;
  const [innerRadius, outerRadius] = model.extent(layout);
  const star = layout.kind === 'concentrated' ? slotStar(count, poles / 2, phases) : ringStar(phases);
  const unbalance = unbalanceOf(phasePhasors(star, phases));
  const balanced = unbalance < 1e-6;
  const result: WindingResult = {
    coils: placedCoils(winding, poles, star, layers),
    seriesCoils: count / phases / parallelPaths,
    copperHeight: winding.thickness * layers,
    innerRadius,
    outerRadius,
    windowArea: layout.legWidth * winding.thickness,
    meanTurn,
    ...(layout.kind === 'serpentine' && { pegs: pegs(meanTurn, layout.legWidth) }),
    factors: layout.kind === 'concentrated' ? windingFactors(count, poles / 2, phases) : { distribution: 1, pitch: 1, winding: 1 },
    balanced,
    unbalance,
    nearestBalanced: balanced || layout.kind === 'serpentine' ? [] : nearestBalanced(count, poles, phases),
    cautions: [],
  };
  return { ...result, cautions: windingCautions(winding, poles, result) };
}

const ringStar = (phases: number): Assignment[] =>
  Array.from({ length: phases }, (_, j) => ({ phase: j + 1, direction: 1, angle: phaseAngle(j + 1, phases) }));

function placedCoils({ layout, thickness, parallelPaths }: WindingSection, poles: number, star: Assignment[], layers: number): Coil[] {
  const seen: number[] = [];
  // Coils of equal EMF go to different paths, so that paths come out alike wherever they can.
  const order = star.map((_, i) => i).sort((a, b) => star[a].phase - star[b].phase || star[a].angle - star[b].angle || a - b);
  const path = new Array<number>(star.length);
  for (const i of order) {
    const { phase } = star[i];
    seen[phase] = (seen[phase] ?? 0) + 1;
    path[i] = ((seen[phase] - 1) % parallelPaths) + 1;
  }
  return star.map(({ phase, direction, angle }, i) => ({
    coil: i + 1,
    phase,
    direction,
    angle: layout.kind === 'concentrated' ? (2 * Math.PI * i) / star.length : angle / (poles / 2),
    height: layers > 1 ? (i - (layers - 1) / 2) * thickness : 0,
    path: path[i],
  }));
}
