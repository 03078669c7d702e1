import type { Drawing, Point, Stroke } from './drawing';
import { CAP_HEIGHT, textCorners } from './text-size';

function corners(stroke: Stroke): Point[] {
  switch (stroke.kind) {
    case 'polyline':
      return stroke.points;
    case 'text':
      return textCorners(stroke);
    case 'circle':
      return arcPoints({ ...stroke, start: 0, sweep: 2 * Math.PI });
    case 'arc':
      return arcPoints(stroke);
  }
}

/** Greatest distance of a chord from its arc: finer than any cutter. [mm] */
const SAGITTA = 0.004;

/** Points along an arc, close enough that a straight line between them cannot be told from it. [mm, rad] */
export function arcPoints({ centre, radius, start, sweep }: { centre: Point; radius: number; start: number; sweep: number }): Point[] {
  const steps = Math.max(2, Math.ceil(Math.abs(sweep) / Math.min(0.1, Math.sqrt((8 * SAGITTA) / radius))));
  return Array.from({ length: steps + 1 }, (_, i) => {
    const angle = start + (sweep * i) / steps;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });
}

/** A drawing of these strokes, its bounds drawn round them with a margin, a hundredth of the longer side if none is given. [mm] */
export function drawingOf(title: string, strokes: Stroke[], free?: number): Drawing {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of strokes.flatMap(corners)) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  if (strokes.length === 0) throw new Error(`the drawing “${title}” has no strokes`);
  const margin = free ?? 0.01 * Math.max(maxX - minX, maxY - minY);
  return { title, bounds: { minX: minX - margin, minY: minY - margin, maxX: maxX + margin, maxY: maxY + margin }, strokes };
}

/** Cap height of lettering on paper: 11.8 point type, which the printer may shrink a little. [mm] */
const LETTERING = ((11.8 * 25.4) / 72) * CAP_HEIGHT;

/**
 * A drawing whose lettering prints at one size when the drawing is fitted into `paper`.
 *
 * Drawings are made in real millimetres and scaled to the page, and the lettering itself takes room; so its size is found by repetition.
 */
export function letteredDrawing(
  title: string,
  paper: { width: number; height: number },
  strokesAt: (letterSize: number) => Stroke[],
): Drawing {
  let size = 1e-3;
  for (let i = 0; ; i++) {
    const drawing = drawingOf(title, strokesAt(size));
    const { minX, minY, maxX, maxY } = drawing.bounds;
    const next = LETTERING * Math.max((maxX - minX) / paper.width, (maxY - minY) / paper.height);
    if (i === MOST_REPETITIONS || Math.abs(next / size - 1) < 0.01) return { ...drawing, paper };
    size = next;
  }
}

/** Words that jump from inside a dimension to beside it may keep the size from settling. */
const MOST_REPETITIONS = 12;
