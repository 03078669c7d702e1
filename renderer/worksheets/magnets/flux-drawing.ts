import { sectionDrawing, type Design, type Drawing, type Point, type Results, type Stroke } from '../../../core';

/** Flux lines over the magnets and plates of the section along the pitch circle, for two poles. */
export function fluxDrawing(pole: Point[][], design: Design, results: Results): Drawing {
  const section = sectionDrawing(design, results);
  const parts = section.strokes.filter(({ layer, kind }) => kind !== 'text' && /^(magnet|steel|disc)/.test(layer));
  const letters = section.strokes.filter((stroke) => stroke.kind === 'text' && /^[NS]$/.test(stroke.text));
  const corners = parts.flatMap((stroke) => (stroke.kind === 'polyline' ? stroke.points : []));
  const [left, right] = [Math.min(...corners.map(([s]) => s)), Math.max(...corners.map(([s]) => s))];
  const pitch = (2000 * Math.PI * design.discs.pitchRadius) / design.discs.poles;
  const lines = [-1, 0, 1, 2].flatMap((k) =>
    pole.flatMap((line) =>
      within(
        line.map(([s, z]): Point => [1000 * s + k * pitch, 1000 * z]),
        left,
        right,
      ),
    ),
  );
  const heights = [...corners, ...lines.flat()].map(([, z]) => z);
  const margin = 0.02 * (right - left);
  return {
    title: 'Flux lines along the pitch circle',
    bounds: { minX: left - margin, maxX: right + margin, minY: Math.min(...heights) - margin, maxY: Math.max(...heights) + margin },
    strokes: [...lines.map((points): Stroke => ({ kind: 'polyline', layer: 'outline', points, closed: false })), ...parts, ...letters],
  };
}

/** The pieces of a line between two bounds. */
function within(line: Point[], left: number, right: number): Point[][] {
  const pieces: Point[][] = [];
  let piece: Point[] = [];
  for (const point of line) {
    if (point[0] >= left && point[0] <= right) piece.push(point);
    else {
      if (piece.length > 1) pieces.push(piece);
      piece = [];
    }
  }
  return piece.length > 1 ? [...pieces, piece] : pieces;
}
