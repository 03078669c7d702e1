import { dcSideOf } from '../charging/loads';
import type { Design } from '../design/schema';
import { fluxLines, type Place } from '../field/flux-lines';
import { fieldAt } from '../field/machine';
import { magnetsStage } from '../magnets/stage';
import { shapeModel, type FieldFunction } from '../magnets/shapes';
import { netlist } from '../rectifier/netlist';
import { gapOf } from './gap-of';
import { plantOf } from './plant';
import { solve } from './solve';

/** Flux density anywhere in the design's gap: x, y, z in m to Bx, By, Bz in T. */
export function fieldProbe(design: Design): FieldFunction {
  const { magnets, discs, surroundings } = design;
  const gap = gapOf(design);
  const { remanence } = magnetsStage(magnets, surroundings.magnetTemperature);
  return fieldAt(magnets.shape, remanence, magnets.recoilPermeability, discs, gap);
}

/** How far flux lines are followed where nothing ends them, as a share of the pole pitch. */
const OPEN = 0.6;
/** From a plate's face, where the field is still worked out. [m] */
const BEFORE_PLATE = 1e-6;

/** Flux lines of one pole along the pitch circle, for a drawing; the next pole's are the same, a pole pitch on. [m] */
export function fluxLinesOf(design: Design, lines: number): Place[][] {
  const { magnets, discs } = design;
  const { pitchRadius, poles, arrangement, misalignment = 0 } = discs;
  const pitch = (2 * Math.PI * pitchRadius) / poles;
  const face = gapOf(design) / 2;
  const back = face + magnets.shape.axial;
  const steel = discs.backing.kind === 'steel';
  const pair = arrangement === 'facing-pair';
  const half = shapeModel(magnets.shape).width(magnets.shape, pitchRadius) / 2;
  const row = (low: number, turned: number) =>
    [-2, -1, 0, 1, 2].map((k) => ({ from: k * pitch + turned - half, to: k * pitch + turned + half, low, high: low + back - face }));
  const turned = pair ? (misalignment * pitchRadius) / 2 : 0;
  const bottom = steel ? -back : -back - OPEN * pitch;
  const top = { 'facing-pair': -bottom, 'single-with-return': face, single: face + OPEN * pitch }[arrangement];
  const planes = [
    ...(steel ? [bottom + BEFORE_PLATE] : []),
    ...(pair ? [0] : []),
    ...(arrangement === 'single-with-return' || (pair && steel) ? [top - BEFORE_PLATE] : []),
  ];
  const solids = [...row(-back, -turned), ...(pair ? row(face, turned) : [])];
  return fluxLines(fieldProbe(design), { pitchRadius, poles, bottom, top, planes, solids }, lines);
}

/** Generator, rectifier, cable and load at the rated point as a SPICE netlist. A load without a fixed characteristic stands at its rated volts. */
export function netlistOf(design: Design): string {
  const { rated, stages } = solve(design);
  const plant = plantOf(design, stages.field, stages.winding, stages.wire, stages.emf);
  const side = dcSideOf(design.load) ?? { emf: rated.dcVolts, resistance: 0 };
  const dc = { emf: side.emf, resistance: side.resistance + plant.dcCableResistance };
  return netlist(plant.sourceAt(rated.coilTemperature), plant.bridge, dc, (rated.rpm * 2 * Math.PI) / 60, design.title);
}
