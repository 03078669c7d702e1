import type { Drawing, Point, Stroke } from './drawing';
import { textCorners } from './text-size';

function corners(stroke: Stroke): Point[] {
  switch (stroke.kind) {
    case 'polyline':
      return stroke.points;
    case 'text':
      return textCorners(stroke);
    case 'circle':
    case 'arc': {
      const { centre, radius } = stroke;
      return [
        [centre[0] - radius, centre[1] - radius],
        [centre[0] + radius, centre[1] + radius],
      ];
    }
  }
}

/** A drawing of these strokes, its bounds drawn round them with a margin. [mm] */
export function drawingOf(title: string, strokes: Stroke[]): Drawing {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of strokes.flatMap(corners)) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  if (strokes.length === 0) throw new Error(`the drawing “${title}” has no strokes`);
  const margin = 0.01 * Math.max(maxX - minX, maxY - minY);
  return { title, bounds: { minX: minX - margin, minY: minY - margin, maxX: maxX + margin, maxY: maxY + margin }, strokes };
}
