import { solve } from '../../core/index';
import { linkageShape } from '../../core/emf/stage';
import { fieldStage } from '../../core/field/stage';
import { demo } from '../demo';
import { exactLinkage, plainLinkage, voltsOff, type Grid } from './linkage-by-hand';

const design = demo('hill-cabin');
const { stages, gap } = solve(design);
const { magnets, winding } = stages;
const region = {
  gapLength: gap.length,
  innerRadius: winding.innerRadius,
  outerRadius: winding.outerRadius,
  halfHeight: winding.copperHeight / 2,
};

function ours(): number[] {
  const { shape, recoilPermeability } = design.magnets;
  const { spectrum } = fieldStage(shape, magnets.remanence, recoilPermeability, design.discs, region, magnets.intrinsicCoercivity);
  return linkageShape(design.winding, winding, spectrum).linkage[0];
}

/** Of the uniform grids, in steps of four radii, four angles and one height, the one of fewest points that is within 0.1 %. */
const GRID: Grid = { radii: 28, angles: 24, heights: 4 };
/** A grid that comes near to what ours is off by. */
const FINE: Grid = { radii: 48, angles: 48, heights: 6 };

const exact = exactLinkage(design, winding);
const off = (linkage: number[]) => `volts ${(100 * voltsOff(linkage, exact)).toFixed(3)} % off`;

const FIELD = 'field and linkage, hill-cabin';
const bySum = (grid: Grid) => ({
  name: `the same by direct sum on a uniform grid of ${grid.radii} × ${grid.angles} × ${grid.heights}`,
  run: () => plainLinkage(design, winding, grid),
  against: FIELD,
  note: () => off(plainLinkage(design, winding, grid)),
});

export default [{ name: FIELD, run: ours, calls: 20, note: () => off(ours()) }, bySum(GRID), bySum(FINE)];
