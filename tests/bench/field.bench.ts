import { fieldProbe, solve } from '../../core/index';
import { fieldStage } from '../../core/field/stage';
import { demo } from './demo';

const design = demo('hill-cabin');
const { magnets, winding } = solve(design).stages;
const region = {
  gapLength: solve(design).gap.length,
  innerRadius: winding.innerRadius,
  outerRadius: winding.outerRadius,
  halfHeight: winding.copperHeight / 2,
};
const field = fieldProbe(design);
const GRID = { radii: 24, angles: 48, heights: 3 };

/** All magnets and images at every point of a plain grid over one pole pair: no symmetry, no harmonics. */
function directGrid(): number {
  let sum = 0;
  for (let i = 0; i < GRID.radii; i++)
    for (let k = 0; k < GRID.angles; k++)
      for (let j = 0; j < GRID.heights; j++) {
        const r = region.innerRadius + ((region.outerRadius - region.innerRadius) * i) / (GRID.radii - 1);
        const angle = (4 * Math.PI * k) / design.discs.poles / GRID.angles;
        sum += field(r * Math.cos(angle), r * Math.sin(angle), region.halfHeight * (j / (GRID.heights - 1)))[2];
      }
  return sum;
}

export default [
  {
    name: 'gap field as harmonics, 12-pole steel pair',
    run: () =>
      fieldStage(
        design.magnets.shape,
        magnets.remanence,
        design.magnets.recoilPermeability,
        design.discs,
        region,
        magnets.intrinsicCoercivity,
      ),
  },
  { name: 'the same field by direct sum on a 24 × 48 × 3 grid', run: directGrid, against: 'gap field as harmonics, 12-pole steel pair' },
];
