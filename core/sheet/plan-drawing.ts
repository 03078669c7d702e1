import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { shapeModel } from '../magnets/shapes';
import { letteredDrawing } from './bounds';
import { angleDimension, centred, dimension, line } from './dimensions';
import type { Drawing, Layer, Point, Stroke } from './drawing';
import type { Coil } from '../winding/stage';
import { bareMm, type LengthText } from './figures';
import { phaseLetter } from './joins';
import { outline, turnOutline } from './outlines';
import { textWidth } from './text-size';
import { turnWords } from './winding-steps';

export const phaseLayer = (phase: number) => `phase-${phase}` as Layer;

/** Magnets of the lower disc and all the coils in place, seen along the axle from above, with the circles that set them out. */
export function planDrawing(design: Design, results: Results, length: LengthText = bareMm): Drawing {
  const { outerRadius, innerRadius, coils } = results.stages.winding;
  const magnets = shapeModel(design.magnets.shape).radii(design.magnets.shape, design.discs.pitchRadius);
  const inside = 1000 * Math.min(innerRadius, magnets.inner);
  const edge = 1000 * Math.max(outerRadius, magnets.outer);
  const widest = Math.max(...coils.map((coil) => textWidth(numberOf(coil), 1)));
  const magnetsInPlace = magnetStrokes(design);
  const coilsInPlace = coilStrokes(design, results);
  return letteredDrawing('Plan, seen from above', { width: 178, height: 165 }, (size) => {
    const lettersOutside = 1000 * magnets.inner * ((2 * Math.PI) / design.discs.poles) < 3.5 * size;
    const numbersOutside = inside < (2 * widest + 1) * size;
    const numbersFrom = edge + (lettersOutside ? 2 : 0) * size;
    const reach = numbersFrom + (numbersOutside ? widest + 1 : 0) * size;
    const across = (radius: number, row: number, what: string) =>
      dimension([-radius * 1000, 0], [radius * 1000, 0], -(reach + (3 + row * 2.6) * size), `${what} ∅ ${length(2 * radius)}`, size);
    return [
      {
        kind: 'circle',
        layer: 'construction',
        centre: [0, 0],
        radius: design.discs.pitchRadius * 1000,
        name: `pitch circle ∅ ${length(2 * design.discs.pitchRadius)}`,
      },
      ...magnetsInPlace,
      line('construction', [-2 * size, 0], [2 * size, 0]),
      line('construction', [0, -2 * size], [0, 2 * size]),
      ...coilsInPlace,
      ...poleLetters(design, lettersOutside ? edge + size : 500 * (magnets.inner + magnets.outer), size),
      ...coilNumbers(design, results, numbersOutside ? numbersFrom + (widest / 2 + 0.7) * size : inside - (widest / 2 + 1) * size, size),
      ...ringAngle(design, results, 1000 * outerRadius, reach + 1.5 * size, size),
      ...across(innerRadius, 0, 'copper inside'),
      ...across(design.discs.pitchRadius, 1, 'pitch circle'),
      ...across(outerRadius, 2, 'copper outside'),
      ...across(magnets.outer, 3, 'magnets outside'),
    ];
  });
}

function magnetStrokes({ magnets: { shape }, discs: { poles, pitchRadius } }: Design): Stroke[] {
  const model = shapeModel(shape);
  const print = model.footprint(shape);
  const shift = model.onAxle ? 0 : pitchRadius * 1000;
  return Array.from({ length: poles }, (_, k): Stroke => {
    const north = k % 2 === 0;
    const place = polar((2 * Math.PI * k) / poles);
    const common = { layer: north ? 'magnet-north' : 'magnet-south', filled: true, name: `magnet ${k + 1} ${north ? 'N' : 'S'}` } as const;
    return print.kind === 'circle'
      ? { kind: 'circle', centre: place(shift), radius: print.radius * 1000, ...common }
      : { kind: 'polyline', closed: true, points: print.points.map(([x, y]) => place(x * 1000 + shift, y * 1000)), ...common };
  });
}

function poleLetters({ discs: { poles } }: Design, radius: number, size: number): Stroke[] {
  const letter = Math.min(size, (3.4 * radius) / poles);
  return Array.from({ length: poles }, (_, k) => centred(polar((2 * Math.PI * k) / poles)(radius), k % 2 === 0 ? 'N' : 'S', letter));
}

/** Innermost and outermost turn of each coil; of rings that lie across each other the middle turn only. */
function coilStrokes(design: Design, { stages }: Results): Stroke[] {
  const { layout, phases } = design.winding;
  const crossing = layout.kind === 'serpentine' && phases > 1;
  const offsets = crossing ? [layout.legWidth / 2] : [layout.legWidth, 0];
  const turns = offsets.map((offset) => turnOutline(layout, design.discs.poles, offset));
  return stages.winding.coils.flatMap((coil) =>
    turns.map((turn, i) => outline(turn, coil.angle, phaseLayer(coil.phase), i === 0 ? `coil ${numberOf(coil)}` : undefined)),
  );
}

/** How far each ring is turned from the one before, from leg to leg, where the page has a corner to spare. */
function ringAngle({ winding, discs }: Design, { stages }: Results, edge: number, radius: number, size: number): Stroke[] {
  const { coils } = stages.winding;
  if (winding.layout.kind !== 'serpentine' || coils.length < 2) return [];
  const pitch = (2 * Math.PI) / discs.poles;
  const leg = (Math.round(CORNER / pitch - 0.5) + 0.5) * pitch;
  const [from, to] = coils.slice(0, 2).map(({ angle }) => leg + angle);
  const words = `${phaseLetter(coils[0].phase)} to ${phaseLetter(coils[1].phase)} ${turnWords(coils)}`;
  return angleDimension(from, to, edge, radius, words, size);
}

const CORNER = (52 * Math.PI) / 180;

const numberOf = ({ coil, phase }: Coil) => `${coil}${phaseLetter(phase)}`;

/** Upright where there is room, else along the radius, else only every second, fifth or tenth of them. */
function coilNumbers(design: Design, { stages }: Results, radius: number, size: number): Stroke[] {
  const { coils } = stages.winding;
  const widest = Math.max(...coils.map((coil) => textWidth(numberOf(coil), size)));
  const pitchAt = (r: number) => (2 * Math.PI * r) / coils.length;
  const upright = pitchAt(radius) > Math.hypot(widest, size) + 0.5 * size;
  const every = [1, 2, 5].find((n) => n * pitchAt(radius - widest / 2) > 1.35 * size) ?? 10;
  // A ring is numbered at an inner arc, not at the leg it begins with, and each ring at another one round the circle.
  const polePitch = (2 * Math.PI) / design.discs.poles;
  const arcOf = (coil: number) => 1 + 2 * Math.floor(((coil - 1) * design.discs.poles) / 2 / coils.length);
  const lead = (coil: number) => (design.winding.layout.kind === 'serpentine' ? arcOf(coil) * polePitch : 0);
  return coils
    .filter(({ coil }) => (coil - 1) % every === 0 && coil + every <= coils.length + 1)
    .map((coil): Stroke => {
      const at = coil.angle + lead(coil.coil);
      const flip = Math.cos(at) < 0 ? Math.PI : 0;
      return centred(polar(at)(radius), numberOf(coil), size, upright ? 0 : Math.atan2(Math.sin(at + flip), Math.cos(at + flip)));
    });
}

/** Points in a frame turned by `angle`: x outwards, y counter-clockwise. */
function polar(angle: number) {
  return (x: number, y = 0): Point => [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
}
