import type { LayoutModel, Point } from './layouts';
import type { Layout } from './section';
import type { PathPiece } from './stage';

type Serpentine = Extract<Layout, { kind: 'serpentine' }>;

const at = (radius: number, angle: number): Point => [radius * Math.cos(angle), radius * Math.sin(angle)];

/**
 * The closed path that runs `aside` to the right of the bundle's middle: legs move parallel, so that the lobes round the even magnets grow, and arcs
 * move by the same amount.
 */
function turnPath(layout: Serpentine, poles: number, offset: number): PathPiece[] {
  const aside = offset - layout.legWidth / 2;
  const pitch = (2 * Math.PI) / poles;
  const [inner, outer] = [layout.innerRadius + aside, layout.outerRadius + aside];
  return Array.from({ length: poles }, (_, k): PathPiece[] => {
    const outwards = k % 2 === 1;
    const side = outwards ? -1 : 1;
    const [from, to] = outwards ? [inner, outer] : [outer, inner];
    const legAt = (k + 0.5) * pitch;
    const end = (radius: number) => legAt + side * Math.asin(aside / radius);
    const next = legAt + pitch - side * Math.asin(aside / to);
    return [
      { kind: 'line', from: at(from, end(from)), to: at(to, end(to)) },
      { kind: 'arc', centre: [0, 0], radius: to, start: end(to), sweep: next - end(to) },
    ];
  }).flat();
}

/** One ring a phase: a leg at half a pole pitch from each magnet, joined by arcs alternately at the outer and the inner radius. */
export const serpentine: LayoutModel<Serpentine> = {
  count: (_, phases) => phases,
  layers: ({ placement }, phases) => (placement === 'stacked' ? phases : 1),
  legRadii: ({ innerRadius, outerRadius }) => [innerRadius, outerRadius],
  polesLinked: (polePairs) => polePairs,
  extent: ({ innerRadius, outerRadius, legWidth }) => [innerRadius - legWidth / 2, outerRadius + legWidth / 2],
  turnPath,
  crosses: () => true,
  symmetry: (poles) => poles / 2,
  fluxEdges: (layout, poles, offset) => {
    // Every leg is the first one turned or mirrored, and gives the same; the arcs are at constant radius.
    const aside = offset - layout.legWidth / 2;
    const end = (radius: number) => at(radius, Math.PI / poles + Math.asin(aside / radius));
    return { edges: [[end(layout.outerRadius + aside), end(layout.innerRadius + aside)]], repeat: poles };
  },
};

/**
 * Room for a leg side by side with its neighbours.
 *
 * @param innerRadius  Where legs begin. [m]
 * @param poles        Legs of one ring, 2p. [-]
 * @param rings        Rings in one layer. [-]
 * @returns            Arc from leg to leg at the inner radius, the tightest place. [m]
 *
 *   2π r / (2p · m): an m-th part of the pole pitch
 *
 * Source    geometry.
 * Checked   tests/core/winding/layouts.test.ts
 */
export function roomForLeg(innerRadius: number, poles: number, rings: number): number {
  return (2 * Math.PI * innerRadius) / poles / rings;
}

/** Peg the skein is wound on. Common practice, no source: thick enough not to kink the wire. [m] */
const PEG_DIAMETER = 0.012;

/**
 * Pegs for winding a skein that will close on the folded path.
 *
 * @param meanTurn     Length of the folded path. [m]
 * @param bundleDepth  Depth of the skein round the pegs. [m]
 * @returns            Distance between the pegs' centres, peg diameter, depth. [m] Undefined where the path is too short for two pegs.
 *
 *   2·s + π·(peg + depth) = mean turn
 *
 * The skein and the folded ring both go once round, so a skein as deep on the pegs as the leg is wide has the right length in every layer.
 *
 * Source    length of a belt round two equal pegs, middle of the bundle.
 * Checked   tests/core/winding/layouts.test.ts
 */
export function pegs(meanTurn: number, bundleDepth: number): { distance: number; diameter: number; bundleDepth: number } | undefined {
  const distance = (meanTurn - Math.PI * (PEG_DIAMETER + bundleDepth)) / 2;
  return distance > 0 ? { distance, diameter: PEG_DIAMETER, bundleDepth } : undefined;
}
