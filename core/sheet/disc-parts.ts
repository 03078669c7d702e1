import type { Results } from '../chain/results';
import { SPACER_WALL } from '../design/geometry';
import type { Design } from '../design/schema';
import { shapeModel } from '../magnets/shapes';
import { drawingOf } from './bounds';
import { checkRule, circle, cross, holes, LETTER, pilot, RIM, ring } from './cutting-strokes';
import { text } from './dimensions';
import type { Drawing, Point, Stroke } from './drawing';
import { bareMm } from './figures';

type Shape = Design['magnets']['shape'];

/** Least wall between two pockets that is worth cutting. Common practice, no source. [m] */
const LEAST_WALL = 1e-3;

const edgeOf = ({ magnets: { shape }, discs }: Design) => shapeModel(shape).radii(shape, discs.pitchRadius).outer * 1000 + RIM;
const discsOf = (arrangement: Design['discs']['arrangement']) => (arrangement === 'facing-pair' ? 2 : 1);

/** Shaft hole and studs as the workshop has them, else a pilot hole. */
export function hub({ workshop }: Design): Stroke[] {
  if (!workshop) return [pilot('pilot hole'), ...cross([0, 0], 10)];
  return [
    circle('outline', workshop.shaftHole * 500, 'shaft hole'),
    ...cross([0, 0], workshop.shaftHole * 500 + 5),
    circle('construction', workshop.boltCircle * 500, 'bolt circle'),
    ...holes(ring(workshop.bolts, workshop.boltCircle * 500), workshop.boltHole * 1000, 'hub bolt'),
  ];
}

/** The plate that carries the magnets; their places and poles are marked as the lower disc shows them to the winding. */
export function disc(design: Design): Drawing {
  const edge = edgeOf(design);
  const count = discsOf(design.discs.arrangement);
  const words = count === 2 ? ', cut two; on the upper one N and S change places' : '';
  return drawingOf(`Disc, ${design.discs.poles} magnets${words}`, [
    circle('outline', edge, 'disc edge'),
    ...hub(design),
    circle('construction', design.discs.pitchRadius * 1000, 'pitch circle'),
    ...pockets(design, design.magnets.shape, 'construction'),
    ...poles(design),
    ...checkRule([-50, -edge - 12]),
  ]);
}

/** A plate with a pocket for each magnet, fit counted: it sets them out and holds them. Undefined where the walls would be too thin. */
export function magnetHolder(design: Design): Drawing | undefined {
  const { magnets, discs, workshop } = design;
  const fit = workshop?.magnetFit ?? 0;
  const pocket = withFit(magnets.shape, fit);
  const model = shapeModel(pocket);
  const wall = ((2 * Math.PI) / discs.poles - model.angleTaken(pocket, discs.pitchRadius)) * model.radii(pocket, discs.pitchRadius).inner;
  if (wall < LEAST_WALL) return undefined;
  const edge = edgeOf(design);
  return drawingOf(`Magnet holder, ${bareMm(fit)} mm of air round each${discsOf(design.discs.arrangement) === 2 ? ', cut two' : ''}`, [
    circle('outline', edge, 'edge'),
    ...hub(design),
    ...pockets(design, pocket, 'outline'),
    ...poles(design),
    ...checkRule([-50, -edge - 12]),
  ]);
}

/** Tubes on the studs that keep the discs apart against the magnets' pull. */
export function spacer({ discs, magnets, workshop }: Design, { gap }: Results): Drawing | undefined {
  if (!workshop || discs.arrangement === 'single') return undefined;
  const length = gap.length + discsOf(discs.arrangement) * magnets.shape.axial;
  const inside = workshop.boltHole * 500;
  const outside = inside + SPACER_WALL * 1000;
  return drawingOf(`Spacer, ${workshop.bolts} of them, ${bareMm(length)} mm long from disc to disc`, [
    circle('outline', outside, 'spacer'),
    circle('outline', inside, 'bore'),
    ...cross([0, 0], outside + 3),
    ...checkRule([-50, -outside - 12]),
  ]);
}

/** A shape grown by so much on every side. [m] */
function withFit(shape: Shape, fit: number): Shape {
  switch (shape.kind) {
    case 'block':
      return { ...shape, radial: shape.radial + 2 * fit, tangential: shape.tangential + 2 * fit };
    case 'cylinder':
      return { ...shape, diameter: shape.diameter + 2 * fit };
    case 'sector':
      // The sides part by `fit` at the inner arc, where they are nearest each other, and by more farther out.
      return {
        ...shape,
        innerRadius: shape.innerRadius - fit,
        outerRadius: shape.outerRadius + fit,
        span: shape.span + (2 * fit) / shape.innerRadius,
      };
  }
}

function pockets({ discs }: Design, shape: Shape, layer: 'outline' | 'construction'): Stroke[] {
  const model = shapeModel(shape);
  const print = model.footprint(shape);
  const shift = model.onAxle ? 0 : discs.pitchRadius * 1000;
  return ring(discs.poles, 1).map(([cos, sin], k): Stroke => {
    const place = (x: number, y: number): Point => [x * cos - y * sin, x * sin + y * cos];
    const name = `magnet ${k + 1}`;
    if (print.kind === 'circle') return circle(layer, print.radius * 1000, name, place(shift, 0));
    return { kind: 'polyline', layer, closed: true, name, points: print.points.map(([x, y]) => place(x * 1000 + shift, y * 1000)) };
  });
}

const poles = ({ discs }: Design): Stroke[] =>
  ring(discs.poles, discs.pitchRadius * 1000).map(([x, y], k) => text([x, y - LETTER / 2], k % 2 === 0 ? 'N' : 'S', LETTER));
