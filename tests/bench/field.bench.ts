import { solve } from '../../core/index';
import { linkageShape } from '../../core/emf/stage';
import { spectrumReader } from '../../core/field/harmonics';
import { fieldStage } from '../../core/field/stage';
import { demo } from '../demo';
import { exactLinkage, fieldOff, plainField, voltsOff, type Grid } from './field-by-hand';

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

/** Of the uniform grids, in steps of four radii, four angles and two heights, the one of fewest points whose volts are within 0.1 %. */
const VOLTS: Grid = { radii: 36, angles: 24, heights: 3 };
/** And the one of fewest points whose field is so too, everywhere in the copper taken together. */
const FIELD_TOO: Grid = { radii: 56, angles: 60, heights: 11 };

const exact = exactLinkage(design, winding);
const off = (linkage: number[], bz: Parameters<typeof fieldOff>[3]) =>
  `volts ${(100 * voltsOff(linkage, exact)).toFixed(3)} % off, field ${(100 * fieldOff(design, winding, gap.peak, bz)).toFixed(3)} % of the peak (RMS)`;

const FIELD = 'field and linkage, hill-cabin';
const bySum = (grid: Grid) => ({
  name: `the same by direct sum on a uniform grid of ${grid.radii} × ${grid.angles} × ${grid.heights}`,
  run: () => plainField(design, winding, grid).linkage(),
  against: FIELD,
  note: () => {
    const plain = plainField(design, winding, grid);
    return off(plain.linkage(), plain.bz);
  },
});

function oursOff(): string {
  const { spectrum } = stages.field;
  const reader = spectrumReader(spectrum);
  return off(ours(), (r, angle, z) => reader.bz(r, z).reduce((sum, b, h) => sum + b * Math.cos(spectrum.orders[h] * angle), 0));
}

export default [{ name: FIELD, run: ours, calls: 20, note: oursOff }, bySum(VOLTS), bySum(FIELD_TOO)];
