import { dcSideOf } from '../charging/loads';
import type { Design } from '../design/schema';
import { gapLength } from '../field/gap';
import { fieldAt } from '../field/machine';
import { magnetsStage } from '../magnets/stage';
import type { FieldFunction } from '../magnets/shapes';
import { netlist } from '../rectifier/netlist';
import { plantOf } from './plant';
import { solve } from './solve';

/** Flux density anywhere in the design's gap: x, y, z in m to Bx, By, Bz in T. */
export function fieldProbe({ magnets, discs, winding, surroundings }: Design): FieldFunction {
  const { layout, thickness, skin, phases } = winding;
  const stacked = layout.kind === 'serpentine' && layout.placement === 'stacked';
  const gap = gapLength({ thickness, phases, stacked, skin, runningClearance: discs.runningClearance });
  const { remanence } = magnetsStage(magnets, surroundings.magnetTemperature);
  return fieldAt(magnets.shape, remanence, magnets.recoilPermeability, discs, gap);
}

/** Generator, rectifier, cable and load at the rated point as a SPICE netlist. A load without a fixed characteristic stands at its rated volts. */
export function netlistOf(design: Design): string {
  const { rated, stages } = solve(design);
  const plant = plantOf(design, stages.field, stages.winding, stages.wire, stages.emf);
  const side = dcSideOf(design.load) ?? { emf: rated.dcVolts, resistance: 0 };
  const dc = { emf: side.emf, resistance: side.resistance + plant.dcCableResistance };
  return netlist(plant.sourceAt(rated.coilTemperature), plant.bridge, dc, (rated.rpm * 2 * Math.PI) / 60, design.title);
}
