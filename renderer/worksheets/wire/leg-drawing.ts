import type { Design, Drawing, Point, Results, Stroke } from '../../../core';
import { spreadCircles } from '../../drawing/packing';

/** More circles than this are a grey surface on any screen. */
const MOST_DRAWN = 3000;

/** One leg cut across, to scale: every strand in the window, and beside it those that hand winding does not get in. [mm] */
export function legDrawing(design: Design, results: Results): { drawing: Drawing; strandsIn: number; strandsOut: number } {
  const { layout, thickness, turns, wire } = design.winding;
  const [width, height] = [layout.legWidth * 1000, thickness * 1000];
  const [over, bare] = [wire.overallDiameter * 1000, wire.conductorDiameter * 1000];
  const strandsOut = Math.min(turns, results.stages.wire.turnsTooMany) * wire.inHand;
  const strandsIn = turns * wire.inHand - strandsOut;
  const margin = 0.06 * Math.max(width, height);
  const wires = (count: number, left: number, lookIn: boolean): Stroke[] =>
    spreadCircles(Math.min(count, MOST_DRAWN), width, height, over).flatMap(({ x, y }) => strand([left + x, y], over, bare, lookIn));
  const outside = strandsOut > 0;
  const beside = outside ? width + 3 * margin : 0;
  const right = outside ? beside + width : width;
  const letter = 0.022 * Math.max(right + 2 * margin, 2.2 * height);
  return {
    drawing: {
      title: 'A leg cut across',
      bounds: { minX: -margin, minY: -margin - 2.2 * letter, maxX: right + margin, maxY: height + margin },
      strokes: [
        ...wires(strandsIn, 0, true),
        frame(width, height),
        caption([width / 2, -margin - 1.2 * letter], `${strandsIn} wires in the window${drawn(strandsIn)}`, letter),
        ...(outside
          ? [
              ...wires(strandsOut, beside, false),
              caption([beside + width / 2, -margin - 1.2 * letter], `${strandsOut} wires too many`, letter),
            ]
          : []),
      ],
    },
    strandsIn,
    strandsOut,
  };
}

const drawn = (count: number) => (count > MOST_DRAWN ? `, ${MOST_DRAWN} of them drawn` : '');

const frame = (width: number, height: number): Stroke => ({
  kind: 'polyline',
  layer: 'former',
  closed: true,
  points: [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ],
});

const caption = (at: Point, text: string, size: number): Stroke => ({ kind: 'text', layer: 'text', at, text, size, anchor: 'middle' });

function strand(centre: Point, over: number, bare: number, isIn: boolean): Stroke[] {
  if (!isIn) return [{ kind: 'circle', layer: 'construction', centre, radius: over / 2 }];
  return [
    { kind: 'circle', layer: 'dimension', centre, radius: over / 2, filled: true },
    { kind: 'circle', layer: 'copper', centre, radius: bare / 2, filled: true },
  ];
}
