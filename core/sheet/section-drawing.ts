import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { shapeModel } from '../magnets/shapes';
import { letteredDrawing } from './bounds';
import { centred, dimension, line, rectangle, text } from './dimensions';
import type { Drawing, Point, Stroke } from './drawing';
import { bareMm, type LengthText } from './figures';
import { phaseLetter } from './joins';
import { phaseLayer } from './plan-drawing';
import { textWidth } from './text-size';

/** A slice of the machine between two heights, in mm. */
interface Slice {
  words: string;
  from: number;
  to: number;
}

/** Cut along the pitch circle and laid flat: plates, magnets, air, skin and copper, each with its thickness. */
export function sectionDrawing(design: Design, results: Results, length: LengthText = bareMm): Drawing {
  const slices = slicesOf(design, results, length);
  const [bottom, top] = [Math.min(...slices.map((s) => s.from)), Math.max(...slices.map((s) => s.to))];
  const height = top - bottom;
  const pitch = (2000 * Math.PI * design.discs.pitchRadius) / design.discs.poles;
  const width = Math.min(2 * pitch, 5 * height);
  const [left, right] = [pitch / 2 - width / 2, pitch / 2 + width / 2];
  const half = results.gap.length * 500;
  return letteredDrawing('Section along the pitch circle', { width: 178, height: 72 }, (size) => [
    line('construction', [left, 0], [right, 0]),
    ...steel(design, slices, left, right),
    ...magnets(design, half, left, right, size, length),
    ...copper(design, results, left, right, size, length),
    ...[-1, 1].map((side) => line('former', [left, side * skinTop(design, results)], [right, side * skinTop(design, results)])),
    ...labels(slices, right, size),
    ...(design.discs.arrangement === 'single'
      ? dimension([left, -half], [left, 0], 3 * size, `to the middle ${length(results.gap.length / 2)}`, size)
      : dimension([left, -half], [left, half], 3 * size, `gap ${length(results.gap.length)}`, size)),
  ]);
}

const skinTop = (design: Design, results: Results) => results.stages.winding.copperHeight * 500 + design.winding.skin * 1000;

/** What is met from below upwards. */
function slicesOf({ magnets, discs, winding }: Design, { gap, stages }: Results, length: LengthText): Slice[] {
  const half = gap.length * 500;
  const copperTop = stages.winding.copperHeight * 500;
  const skin = winding.skin * 1000;
  const thick = magnets.shape.axial * 1000;
  const plate = discs.backing.kind === 'steel' ? discs.backing.thickness * 1000 : 0;
  const slice = (words: string, from: number, to: number): Slice[] =>
    to > from ? [{ words: `${words} ${length((to - from) / 1000)}`, from, to }] : [];
  const face = (sign: 1 | -1, words: string, from: number, to: number) => (sign === 1 ? slice(words, from, to) : slice(words, -to, -from));
  const disc = (sign: 1 | -1) => [
    ...face(sign, 'magnet', half, half + thick),
    ...face(sign, 'steel disc', half + thick, half + thick + plate),
  ];
  const air = (sign: 1 | -1) => [
    ...face(sign, 'skin', copperTop, copperTop + skin),
    ...face(sign, 'running clearance', copperTop + skin, half),
  ];
  const openAbove = discs.arrangement === 'single';
  return [
    ...disc(-1),
    ...air(-1),
    ...slice('copper', -copperTop, copperTop),
    ...(openAbove ? face(1, 'skin', copperTop, copperTop + skin) : air(1)),
    ...(discs.arrangement === 'facing-pair' ? disc(1) : []),
    ...(discs.arrangement === 'single-with-return' ? returnPlate(half, plate, length) : []),
  ].sort((a, b) => b.from - a.from);
}

/** As thick as the plate behind the magnets; where there is none, its thickness is left open. [mm] */
function returnPlate(from: number, thickness: number, length: LengthText): Slice[] {
  return thickness > 0
    ? [{ words: `steel return plate ${length(thickness / 1000)}`, from, to: from + thickness }]
    : [{ words: 'steel return plate', from, to: from + 8 }];
}

function steel(design: Design, slices: Slice[], left: number, right: number): Stroke[] {
  const plates = slices
    .filter((s) => s.words.startsWith('steel'))
    .map((s) => rectangle('steel', left, s.from, right, s.to, { filled: true, name: s.words }));
  if (design.discs.backing.kind === 'steel') return plates;
  const bottom = Math.min(...slices.map((s) => s.from));
  const top = Math.max(...slices.map((s) => s.to));
  return [
    ...plates,
    ...(design.discs.arrangement === 'facing-pair' ? [bottom, top] : [bottom]).map((z) => line('disc', [left, z], [right, z])),
  ];
}

function magnets(
  { magnets: { shape }, discs }: Design,
  half: number,
  left: number,
  right: number,
  size: number,
  length: LengthText,
): Stroke[] {
  const halfWidth = shapeModel(shape).width(shape, discs.pitchRadius) * 500;
  const pitch = (2000 * Math.PI * discs.pitchRadius) / discs.poles;
  const thick = shape.axial * 1000;
  const pair = discs.arrangement === 'facing-pair';
  const offset = pair ? 500 * (discs.misalignment ?? 0) * discs.pitchRadius : 0;
  return [-2, -1, 0, 1, 2, 3].flatMap((k) =>
    (pair ? ([-1, 1] as const) : ([-1] as const)).flatMap((side) => {
      const middle = k * pitch + side * offset;
      const [from, to] = [Math.max(left, middle - halfWidth), Math.min(right, middle + halfWidth)];
      if (to <= from) return [];
      const north = (k % 2 === 0) === (side === -1);
      const [low, high] = side === -1 ? [-half - thick, -half] : [half, half + thick];
      const letter = Math.min(size, 0.8 * thick);
      return [
        rectangle(north ? 'magnet-north' : 'magnet-south', from, low, to, high, {
          filled: true,
          name: `magnet ${north ? 'N' : 'S'}, ${length(shape.axial)} thick`,
        }),
        ...(to - from > 2 * letter ? [centred([(from + to) / 2, (low + high) / 2], north ? 'N' : 'S', letter)] : []),
      ];
    }),
  );
}

function copper({ winding, discs }: Design, { stages }: Results, left: number, right: number, size: number, length: LengthText): Stroke[] {
  const { layout } = winding;
  const radius = discs.pitchRadius;
  const turn = 2 * Math.PI;
  const half = winding.thickness * 500;
  return stages.winding.coils.flatMap(({ coil, phase, angle, height }) => {
    const z = height * 1000;
    return legs(layout, discs.poles, radius).flatMap((leg) =>
      [-turn, 0, turn].flatMap((whole) => {
        const [from, to] = [(leg.from + (angle + whole) * radius) * 1000, (leg.to + (angle + whole) * radius) * 1000];
        const [a, b] = [Math.max(left, from), Math.min(right, to)];
        if (b <= a) return [];
        const label = `${coil}${phaseLetter(phase)}`;
        const letter = Math.min(size, 1.4 * half);
        const lettered = b - a === to - from && b - a > textWidth(label, letter) + 0.3 * letter;
        const middle: Point = [(a + b) / 2, z];
        return [
          rectangle(phaseLayer(phase), a, z - half, b, z + half, {
            filled: true,
            name: `coil ${label}, leg ${length(layout.legWidth)} wide, ${length(winding.thickness)} thick`,
          }),
          ...(lettered ? [centred(middle, label, letter)] : []),
        ];
      }),
    );
  });
}

/** Legs of one coil along the pitch circle, measured from the coil's own axis. [m] */
function legs(layout: Design['winding']['layout'], poles: number, radius: number): { from: number; to: number }[] {
  if (layout.kind === 'serpentine') {
    const pitch = (2 * Math.PI * radius) / poles;
    return Array.from({ length: poles }, (_, k) => {
      const middle = (k + 0.5) * pitch;
      return { from: middle - layout.legWidth / 2, to: middle + layout.legWidth / 2 };
    });
  }
  const share = (radius - layout.holeInnerRadius) / (layout.holeOuterRadius - layout.holeInnerRadius);
  const hole = Math.max(0, layout.holeInnerWidth + share * (layout.holeOuterWidth - layout.holeInnerWidth)) / 2;
  return [
    { from: -hole - layout.legWidth, to: -hole },
    { from: hole, to: hole + layout.legWidth },
  ];
}

/** Words beside the section, spread so that thin slices stay legible. */
function labels(slices: Slice[], right: number, size: number): Stroke[] {
  const step = 1.9 * size;
  const middle = (slices[0].to + slices[slices.length - 1].from) / 2;
  return slices.flatMap((slice, i) => {
    const y = middle + ((slices.length - 1) / 2 - i) * step;
    const z = (slice.from + slice.to) / 2;
    const elbow: Point = [right + 3 * size, y];
    return [
      line('dimension', [right - 0.6 * size, z], [right + 0.6 * size, z], elbow, [right + 3.6 * size, y]),
      text([right + 4 * size, y - size / 2], slice.words, size, 'start'),
    ];
  });
}
