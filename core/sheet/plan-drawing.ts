import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { shapeModel } from '../magnets/shapes';
import { drawingOf } from './bounds';
import { centred, dimension, line } from './dimensions';
import type { Drawing, Layer, Point, Stroke } from './drawing';
import { bareMm } from './figures';
import { phaseLetter } from './joins';
import { outline, turnOutline } from './outlines';
import { letterSize, textWidth } from './text-size';

export const phaseLayer = (phase: number) => `phase-${phase}` as Layer;

/** Magnets of the lower disc and all the coils in place, seen along the axle from above, with the circles that set them out. */
export function planDrawing(design: Design, results: Results): Drawing {
  const { outerRadius, innerRadius } = results.stages.winding;
  const magnets = shapeModel(design.magnets.shape).radii(design.magnets.shape, design.discs.pitchRadius);
  const edge = 1000 * Math.max(outerRadius, magnets.outer);
  const size = letterSize(2.3 * edge, 2.7 * edge);
  const numbers = coilNumbers(design, results, edge, size);
  const drop = -(edge + 4 * size);
  const across = (radius: number, row: number, what: string) => {
    const r = radius * 1000;
    return dimension([-r, 0], [r, 0], drop - row * 2.6 * size, `${what} ∅ ${bareMm(2 * radius)}`, size);
  };
  return drawingOf('Plan', [
    ...magnetStrokes(design, size),
    { kind: 'circle', layer: 'construction', centre: [0, 0], radius: design.discs.pitchRadius * 1000, name: 'pitch circle' },
    line('construction', [-edge, 0], [edge, 0]),
    line('construction', [0, -edge], [0, edge]),
    ...coilStrokes(design, results),
    ...numbers,
    ...across(innerRadius, 0, 'copper inside'),
    ...across(design.discs.pitchRadius, 1, 'pitch circle'),
    ...across(outerRadius, 2, 'copper outside'),
    ...across(magnets.outer, 3, 'magnets outside'),
  ]);
}

function magnetStrokes(design: Design, size: number): Stroke[] {
  const { poles, pitchRadius } = design.discs;
  const { shape } = design.magnets;
  const model = shapeModel(shape);
  const print = model.footprint(shape);
  const radii = model.radii(shape, pitchRadius);
  const pitch = (2 * Math.PI) / poles;
  const letter = Math.min(size, 500 * radii.inner * pitch);
  return Array.from({ length: poles }, (_, k): Stroke[] => {
    const north = k % 2 === 0;
    const layer: Layer = north ? 'magnet-north' : 'magnet-south';
    const place = polar(k * pitch);
    const shift = model.onAxle ? 0 : pitchRadius;
    const name = `magnet ${k + 1} ${north ? 'N' : 'S'}`;
    const mark = place(1000 * radii.inner + 1.1 * letter);
    return [
      print.kind === 'circle'
        ? { kind: 'circle', layer, centre: place(1000 * shift), radius: print.radius * 1000, filled: true, name }
        : {
            kind: 'polyline',
            layer,
            closed: true,
            filled: true,
            name,
            points: print.points.map(([x, y]) => place((x + shift) * 1000, y * 1000)),
          },
      centred(mark, north ? 'N' : 'S', letter),
    ];
  }).flat();
}

function coilStrokes(design: Design, { stages }: Results): Stroke[] {
  const { layout } = design.winding;
  const [inner, outer] = [0, layout.legWidth].map((offset) => turnOutline(layout, design.discs.poles, offset));
  return stages.winding.coils.flatMap(({ coil, phase, angle }) => [
    outline(outer, angle, phaseLayer(phase), `coil ${coil}`),
    outline(inner, angle, phaseLayer(phase)),
  ]);
}

/** Numbers outside the coils; they stand on their heads' radius where they would crowd. */
function coilNumbers(design: Design, { stages }: Results, edge: number, size: number): Stroke[] {
  const { coils } = stages.winding;
  const { layout } = design.winding;
  const label = (coil: number, phase: number) => `${coil}${phaseLetter(phase)}`;
  const pitch = (2 * Math.PI * (edge + size)) / coils.length;
  const widest = Math.max(...coils.map(({ coil, phase }) => textWidth(label(coil, phase), size)));
  const upright = layout.kind === 'serpentine' || pitch > Math.hypot(widest, size) + 0.5 * size;
  const letter = upright ? size : Math.min(size, 0.65 * pitch);
  return coils.map(({ coil, phase, angle }): Stroke => {
    // A ring is numbered at its first outer arc, not at the leg it begins with.
    const at = layout.kind === 'serpentine' ? angle + (2 * Math.PI) / design.discs.poles : angle;
    const spot = polar(at)(edge + size + (upright ? widest / 2 : widest / 2));
    if (upright) return centred(spot, label(coil, phase), letter);
    const flip = Math.cos(at) < 0 ? Math.PI : 0;
    return centred(spot, label(coil, phase), letter, Math.atan2(Math.sin(at + flip), Math.cos(at + flip)));
  });
}

/** Points in a frame turned by `angle`: x outwards, y counter-clockwise. */
function polar(angle: number) {
  return (x: number, y = 0): Point => [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
}
