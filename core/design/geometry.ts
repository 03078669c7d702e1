import { shapeModel } from '../magnets/shapes';
import { inMm, type Problem, told, type Words } from '../problem';
import { layoutModel } from '../winding/layouts';
import type { Design } from './schema';

/** Entries that are each in range but cannot stand together. Lengths in the messages are in mm, as a builder reads them. */
export function geometryProblems(design: Design): Problem[] {
  return [
    ...magnetProblems(design),
    ...layoutProblems(design),
    ...wireProblems(design),
    ...turbineProblems(design),
    ...controllerProblems(design),
    ...workshopProblems(design),
  ];
}

const mm = (metres: number) => inMm(metres, String(Number((metres * 1000).toPrecision(4))));
const need = (ok: boolean, where: string, words: Words): Problem[] => (ok ? [] : [{ where, ...words }]);

function magnetProblems({ magnets, discs }: Design): Problem[] {
  const { shape } = magnets;
  if (shape.kind === 'sector') {
    const pitch = (2 * Math.PI) / discs.poles;
    return [
      ...need(
        shape.outerRadius > shape.innerRadius,
        'magnets.shape.outerRadius',
        told`must be more than the inner radius of ${mm(shape.innerRadius)}; received ${mm(shape.outerRadius)}`,
      ),
      ...need(
        shape.span <= pitch,
        'magnets.shape.span',
        told`${discs.poles} sectors must fit one turn: at most ${pitch.toFixed(4)} rad; received ${shape.span.toFixed(4)} rad`,
      ),
    ];
  }
  const halfLength = (shape.kind === 'block' ? shape.radial : shape.diameter) / 2;
  return need(
    discs.pitchRadius > halfLength,
    'discs.pitchRadius',
    told`must be more than half the magnet's radial length, ${mm(halfLength)}, or the magnets meet at the axle; received ${mm(discs.pitchRadius)}`,
  );
}

/** By how much a hole may widen or narrow over its length: sides 84° off the radius, where no wire stays on its former. */
const STEEPEST = 20;

function layoutProblems({ winding }: Design): Problem[] {
  const { layout } = winding;
  const at = (entry: string) => `winding.layout.${entry}`;
  if (layout.kind === 'serpentine')
    return [
      ...need(
        layout.outerRadius > layout.innerRadius + layout.legWidth,
        at('outerRadius'),
        told`must be more than the inner radius and one leg width, ${mm(layout.innerRadius + layout.legWidth)}; received ${mm(layout.outerRadius)}`,
      ),
      ...need(
        layout.legWidth < layout.innerRadius,
        at('legWidth'),
        told`must be less than the inner radius of ${mm(layout.innerRadius)}; received ${mm(layout.legWidth)}`,
      ),
    ];
  const length = layout.holeOuterRadius - layout.holeInnerRadius;
  return [
    ...need(
      length > 0,
      at('holeOuterRadius'),
      told`must be more than the hole's inner radius of ${mm(layout.holeInnerRadius)}; received ${mm(layout.holeOuterRadius)}`,
    ),
    ...need(
      length <= 0 || Math.abs(layout.holeOuterWidth - layout.holeInnerWidth) <= STEEPEST * length,
      at('holeOuterWidth'),
      told`must be within ${mm(STEEPEST * length)} of the hole's inner width of ${mm(layout.holeInnerWidth)}, or its sides lie all but across the radius; received ${mm(layout.holeOuterWidth)}`,
    ),
    ...need(
      layout.legWidth < layout.holeInnerRadius,
      at('legWidth'),
      told`must be less than the hole's inner radius of ${mm(layout.holeInnerRadius)}, or the coil reaches the axle; received ${mm(layout.legWidth)}`,
    ),
  ];
}

function wireProblems({ winding, shelf }: Design): Problem[] {
  const covered = (where: string, wire: { conductorDiameter: number; overallDiameter: number }) =>
    need(
      wire.overallDiameter >= wire.conductorDiameter,
      `${where}.overallDiameter`,
      told`must be at least the conductor's ${mm(wire.conductorDiameter)}; received ${mm(wire.overallDiameter)}`,
    );
  return [...covered('winding.wire', winding.wire), ...(shelf ?? []).flatMap((reel, i) => covered(`shelf[${i}]`, reel))];
}

function turbineProblems({ turbine }: Design): Problem[] {
  const rising = (turbine.curve ?? []).every(([ratio], i, all) => i === 0 || ratio > all[i - 1][0]);
  return [
    ...need(
      turbine.runawayRatio > turbine.tipSpeedRatio,
      'turbine.runawayRatio',
      told`must be more than the tip-speed ratio at the peak, ${turbine.tipSpeedRatio}; received ${turbine.runawayRatio}`,
    ),
    ...need(rising, 'turbine.curve', told`tip-speed ratios must rise from point to point`),
  ];
}

function controllerProblems({ controller, load }: Design): Problem[] {
  if (!controller)
    return need(
      load.kind !== 'tracker',
      'controller',
      told`a maximum-power controller as load needs its data-sheet numbers: enter the controller section`,
    );
  return need(
    controller.maxInputVoltage > controller.minInputVoltage,
    'controller.maxInputVoltage',
    told`must be more than the least input voltage, ${controller.minInputVoltage} V; received ${controller.maxInputVoltage} V`,
  );
}

/** Wall of the tube that keeps the discs apart on each stud. Common practice, no source. [m] */
export const SPACER_WALL = 3e-3;

function workshopProblems({ workshop, magnets, discs, winding }: Design): Problem[] {
  if (!workshop) return [];
  const { shaftHole, bolts, boltCircle, boltHole } = workshop;
  const taken = boltHole + 2 * SPACER_WALL;
  const free =
    2 *
    Math.min(
      shapeModel(magnets.shape).radii(magnets.shape, discs.pitchRadius).inner,
      layoutModel(winding.layout).extent(winding.layout)[0],
    );
  return [
    ...need(
      boltCircle > shaftHole + boltHole,
      'workshop.boltCircle',
      told`must be more than shaft hole and bolt hole together, ${mm(shaftHole + boltHole)}; received ${mm(boltCircle)}`,
    ),
    ...need(
      boltCircle < free - taken,
      'workshop.boltCircle',
      told`must be less than ${mm(Math.max(0, free - taken))}, or bolts and their spacers run into magnets or winding; received ${mm(boltCircle)}`,
    ),
    ...need(
      boltCircle > taken,
      'workshop.boltCircle',
      told`must be more than ${mm(taken)}, or the spacers of only two bolts touch each other; received ${mm(boltCircle)}`,
    ),
    ...need(
      boltCircle <= taken || boltCircle * Math.sin(Math.PI / bolts) > taken,
      'workshop.bolts',
      told`must be at most ${Math.ceil(Math.PI / Math.asin(Math.min(1, taken / boltCircle))) - 1}, or spacers of ${mm(taken)} touch each other on a circle of ${mm(boltCircle)}; received ${bolts}`,
    ),
  ];
}
