import type { jsPDF } from 'jspdf';
import { arcPoints } from '../sheet/bounds';
import type { Drawing, Point, Stroke } from '../sheet/drawing';
import { CAP_HEIGHT } from '../sheet/text-size';
import { layerStyles } from './layer-styles';

/** How a drawing lies on the page: `left` and `top` in mm of paper, `scale` paper over drawing. */
export interface Place {
  left: number;
  top: number;
  scale: number;
}

/** The scale at which a drawing fits the room it was lettered for and the room there is; natural size where it asks for none. */
export function scaleToFit({ bounds, paper }: Drawing, width: number, height: number): number {
  const [across, up] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
  const wanted = paper ? Math.min(paper.width / across, paper.height / up) : 1;
  return Math.min(wanted, width / across, height / up);
}

/** Draws vector strokes; the lettering is the document's own font. */
export function drawOn(doc: jsPDF, { bounds, strokes }: Drawing, { left, top, scale }: Place): void {
  const place = ([x, y]: Point): Point => [left + (x - bounds.minX) * scale, top + (bounds.maxY - y) * scale];
  doc.setLineCap('round');
  doc.setLineJoin('round');
  for (const stroke of strokes) {
    if (stroke.kind === 'text') letter(doc, stroke, place(stroke.at), scale);
    else shape(doc, stroke, place, scale);
  }
  doc.setLineDashPattern([], 0);
}

function shape(doc: jsPDF, stroke: Exclude<Stroke, { kind: 'text' }>, place: (p: Point) => Point, scale: number): void {
  const style = layerStyles[stroke.layer];
  doc.setDrawColor(style.stroke);
  doc.setLineWidth(style.width);
  doc.setLineDashPattern(style.dash ?? [], 0);
  if (stroke.kind === 'circle') {
    const [x, y] = place(stroke.centre);
    doc.setFillColor(style.fill);
    doc.circle(x, y, stroke.radius * scale, stroke.filled ? 'FD' : 'S');
    return;
  }
  const points = (stroke.kind === 'polyline' ? stroke.points : arcPoints(stroke)).map(place);
  const filled = stroke.kind === 'polyline' && stroke.filled;
  const steps = points.slice(1).map((p, i): Point => [p[0] - points[i][0], p[1] - points[i][1]]);
  doc.setFillColor(style.fill);
  doc.lines(steps, points[0][0], points[0][1], [1, 1], filled ? 'FD' : 'S', stroke.kind === 'polyline' && stroke.closed);
}

function letter(doc: jsPDF, { text, size, anchor, angle = 0 }: Extract<Stroke, { kind: 'text' }>, [x, y]: Point, scale: number): void {
  doc.setFontSize(((size * scale) / CAP_HEIGHT) * (72 / 25.4));
  doc.setTextColor('#000000');
  // The writer's own alignment does not turn with the text.
  const back = doc.getTextWidth(text) * (anchor === 'start' ? 0 : anchor === 'middle' ? 0.5 : 1);
  doc.text(text, x - back * Math.cos(angle), y + back * Math.sin(angle), { angle: (angle * 180) / Math.PI });
}
