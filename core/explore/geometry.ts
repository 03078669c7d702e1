import type { Design } from '../design/schema';
import { shapeModel } from '../magnets/shapes';
import { roomBetweenCoils } from '../winding/concentrated';
import type { Layout } from '../winding/section';
import { roomForLeg } from '../winding/serpentine';
import type { Candidate, Frame } from './space';

type Concentrated = Extract<Layout, { kind: 'concentrated' }>;
type Serpentine = Extract<Layout, { kind: 'serpentine' }>;

/**
 * The design of a candidate. What the search does not name follows the machine: the winding stays where it is on the magnets when they move out, and its
 * coils or legs stand as close as they did.
 */
export function designOf(base: Design, candidate: Candidate): Design {
  const { reel, inHand, turns, connection, parallelPaths, poles, pitchRadius, thickness, runningClearance, phases } = candidate;
  const { metal, conductorDiameter, overallDiameter } = reel;
  return {
    ...base,
    discs: { ...base.discs, poles, pitchRadius, runningClearance },
    winding: {
      ...base.winding,
      layout: layoutOf(base, candidate),
      thickness,
      phases,
      turns,
      connection,
      parallelPaths,
      wire: { ...base.winding.wire, metal, conductorDiameter, overallDiameter, inHand },
    },
  };
}

/** The layout on a frame: the design's own where nothing about it changes. */
export function layoutOf(base: Design, frame: Frame): Layout {
  const { layout } = base.winding;
  if (frame.layout === 'concentrated') return layout.kind === 'concentrated' ? sameCoils(base, layout, frame) : coilsOnMagnets(base, frame);
  return layout.kind === 'serpentine' ? sameRings(base, layout, frame) : ringsOnMagnets(base, frame);
}

function sameCoils({ discs }: Design, own: Concentrated, { coils, pitchRadius }: Frame): Concentrated {
  if (coils === own.coils && pitchRadius === discs.pitchRadius) return own;
  const out = pitchRadius - discs.pitchRadius;
  const radii = { holeInnerRadius: own.holeInnerRadius + out, holeOuterRadius: own.holeOuterRadius + out };
  const arc = (own.coils / coils) * (pitchRadius / discs.pitchRadius);
  const holes = { ...own, ...radii, coils, holeInnerWidth: own.holeInnerWidth * arc, holeOuterWidth: own.holeOuterWidth * arc };
  return { ...holes, legWidth: closeLegs(holes, roomBetweenCoils(own) ?? 0) };
}

/** The legs that leave so much room between neighbouring coils. [m] */
function closeLegs(holes: Concentrated, room: number): number {
  const between = roomBetweenCoils({ ...holes, legWidth: 0 });
  return between === undefined ? holes.legWidth : Math.max(LEAST_LEG, (between - room) / 2);
}

/** Holes as long as the magnets, taking so much of the room round the circle; the legs take the rest. Common practice, no source. */
const HOLE_SHARE = 0.35;
const LEAST_LEG = 0.2e-3;

function coilsOnMagnets({ magnets }: Design, { coils, pitchRadius }: Frame): Concentrated {
  const half = shapeModel(magnets.shape).radialLength(magnets.shape) / 2;
  const [holeInnerRadius, holeOuterRadius] = [pitchRadius - half, pitchRadius + half];
  const width = (radius: number) => (HOLE_SHARE * 2 * Math.PI * radius) / coils;
  const holes = {
    kind: 'concentrated' as const,
    coils,
    holeInnerRadius,
    holeOuterRadius,
    holeInnerWidth: width(holeInnerRadius),
    holeOuterWidth: width(holeOuterRadius),
    legWidth: 0,
  };
  return { ...holes, legWidth: coils > 1 ? closeLegs(holes, 0) : width(pitchRadius) };
}

const ringsInLayer = ({ layout, phases }: Frame) => (layout === 'interleaved' ? phases : 1);

function sameRings({ discs, winding }: Design, own: Serpentine, frame: Frame): Serpentine {
  const { layout, pitchRadius, poles } = frame;
  const placement = layout === 'interleaved' ? layout : 'stacked';
  const out = pitchRadius - discs.pitchRadius;
  const [innerRadius, outerRadius] = [own.innerRadius + out, own.outerRadius + out];
  const ownRoom = roomForLeg(own.innerRadius, discs.poles, own.placement === 'interleaved' ? winding.phases : 1);
  const room = roomForLeg(innerRadius, poles, ringsInLayer(frame));
  return { ...own, placement, innerRadius, outerRadius, legWidth: room === ownRoom ? own.legWidth : (own.legWidth * room) / ownRoom };
}

/** Legs as long as the magnets, filling so much of the room side by side. Common practice, no source. */
const LEG_SHARE = 0.6;
const LEG_SHARE_IN_LAYER = 0.95;

function ringsOnMagnets({ magnets }: Design, frame: Frame): Serpentine {
  const half = shapeModel(magnets.shape).radialLength(magnets.shape) / 2;
  const { layout, pitchRadius, poles, phases } = frame;
  const [innerRadius, outerRadius] = [pitchRadius - half, pitchRadius + half];
  const share = layout === 'interleaved' && phases > 1 ? LEG_SHARE_IN_LAYER : LEG_SHARE;
  return {
    kind: 'serpentine',
    placement: layout === 'interleaved' ? layout : 'stacked',
    innerRadius,
    outerRadius,
    legWidth: share * roomForLeg(innerRadius, poles, ringsInLayer(frame)),
  };
}
