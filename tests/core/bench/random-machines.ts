import type { Results } from '../../../core/chain/results';
import { blankDesign } from '../../../core/design/form';
import type { Design } from '../../../core/design/schema';
import { emfFromShape, inductanceShape, linkageShape, type LinkageShape } from '../../../core/emf/stage';
import { gapLength } from '../../../core/field/gap';
import { bodyStack } from '../../../core/field/images';
import { fieldStage, type FieldResult } from '../../../core/field/stage';
import { magnetsStage } from '../../../core/magnets/stage';
import { windingStage } from '../../../core/winding/stage';
import { wireStage } from '../../../core/wire/stage';

/** Poles, coils and phases that hand-built machines have. */
const layouts = [
  { poles: 8, coils: 6, phases: 3 },
  { poles: 12, coils: 9, phases: 3 },
  { poles: 16, coils: 12, phases: 3 },
  { poles: 20, coils: 15, phases: 3 },
  { poles: 12, coils: 12, phases: 1 },
  { poles: 16, coils: 12, phases: 3 },
  { poles: 8, coils: 12, phases: 3 },
];

/** A field worked out once, for several machines that differ in wire and connection. */
export interface Geometry {
  design: Design;
  gap: number;
  field: FieldResult;
  shape: LinkageShape;
  perTurn: number[][];
}

/** Magnets, discs and holes of a machine someone might build, scaled as a whole. */
export function randomGeometry(random: () => number): Geometry {
  const between = (low: number, high: number) => low + (high - low) * random();
  const { poles, coils, phases } = layouts[Math.floor(random() * layouts.length)];
  const pitchRadius = (between(0.032, 0.042) * poles) / Math.PI;
  const radial = between(0.036, 0.05);
  const [holeInnerRadius, holeOuterRadius] = [pitchRadius - radial / 2, pitchRadius + radial / 2];
  const room = (r: number) => (2 * Math.PI * r) / coils;
  const legWidth = 0.36 * room(holeInnerRadius) * between(0.8, 0.95);
  const blank = blankDesign();
  const design: Design = {
    ...blank,
    magnets: {
      ...blank.magnets,
      shape: {
        kind: 'block',
        radial,
        tangential: ((2 * Math.PI * holeInnerRadius) / poles) * between(0.6, 0.9),
        axial: between(0.008, 0.014),
      },
    },
    discs: {
      arrangement: 'facing-pair',
      poles,
      pitchRadius,
      backing: random() < 0.7 ? { kind: 'steel', thickness: 0.01 } : { kind: 'none' },
      runningClearance: between(0.001, 0.003),
    },
    winding: {
      ...blank.winding,
      layout: {
        kind: 'concentrated',
        coils,
        holeInnerRadius,
        holeOuterRadius,
        holeInnerWidth: room(holeInnerRadius) - 2 * legWidth - 0.002,
        holeOuterWidth: room(holeOuterRadius) - 2 * legWidth - 0.002,
        legWidth,
      },
      thickness: between(0.009, 0.014),
      phases,
      parallelPaths: 1,
    },
  };
  return geometryOf(design);
}

/** The field of a design, and what one turn gives in it. */
export function geometryOf(design: Design, moreGap = 0): Geometry {
  const { magnets, discs, winding, surroundings } = design;
  const gap =
    gapLength({
      thickness: winding.thickness,
      phases: winding.phases,
      stacked: false,
      skin: winding.skin,
      runningClearance: discs.runningClearance,
    }) + moreGap;
  const placed = windingStage(winding, discs.poles);
  const { remanence } = magnetsStage(magnets, surroundings.magnetTemperature);
  const region = { gapLength: gap, innerRadius: placed.innerRadius, outerRadius: placed.outerRadius, halfHeight: placed.copperHeight / 2 };
  const field = fieldStage(magnets.shape, remanence, magnets.recoilPermeability, discs, region);
  const steel = bodyStack(discs.arrangement, discs.backing.kind === 'steel', gap, magnets.shape.axial);
  return {
    design,
    gap,
    field,
    shape: linkageShape(winding, placed, field.spectrum),
    perTurn: inductanceShape(winding, discs.poles, placed, steel),
  };
}

/** Turns, wire and connection on a geometry; what the bench needs of the results, by the same stages as in chain/solve.ts. */
export function woundOn(
  { design, gap, field, shape, perTurn }: Geometry,
  winding: Partial<Design['winding']>,
): { design: Design; results: Results } {
  const wound: Design = { ...design, winding: { ...design.winding, ...winding } };
  const placed = windingStage(wound.winding, wound.discs.poles);
  const wire = wireStage(wound.winding, wound.winding.wire, placed);
  const emf = emfFromShape(wound.winding, placed, shape, perTurn, wire);
  const stages = { field, winding: placed, wire, emf };
  return { design: wound, results: { gap: { length: gap }, stages } as unknown as Results };
}

export function randomWinding(random: () => number): Partial<Design['winding']> {
  const diameter = 0.0009 + 0.0009 * random();
  return {
    turns: 30 + Math.floor(90 * random()),
    connection: random() < 0.75 ? 'star' : 'delta',
    wire: { metal: 'copper', conductorDiameter: diameter, overallDiameter: diameter * 1.07, inHand: 1, thermalClass: 180 },
  };
}
