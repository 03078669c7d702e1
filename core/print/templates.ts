import type { jsPDF } from 'jspdf';
import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { serializeDesign } from '../design/serialize';
import { arcPoints, drawingOf } from '../sheet/bounds';
import { cuttingDrawings } from '../sheet/cutting-drawings';
import { CHECK_RULE } from '../sheet/cutting-strokes';
import type { Drawing, Point, Stroke } from '../sheet/drawing';
import { textCorners } from '../sheet/text-size';
import { traceOf } from '../sheet/trace';
import { pdfBytes, pdfDocument, type SheetPaper } from './pdf-document';
import { drawOn } from './pdf-drawing';

/** Edge a printer does not reach, and what neighbouring pages share for gluing. [mm] */
const EDGE = 12;
const OVERLAP = 10;
/** Below the tile: what the page is. [mm] */
const FOOT = 15;
/** Beside a line, so that its whole width prints. [mm] */
const LINE = 0.5;

/** A part of a drawing that one page shows. [mm] */
interface Tile {
  drawing: Drawing;
  /** Where among the drawing's pages, in words. */
  place: string;
  width: number;
  height: number;
  /** Upper left corner in the drawing. */
  left: number;
  top: number;
}

/** The parts to cut at natural size, each on as few pages as its longer side upright or across needs. Pages that would stay empty are left out. */
export function templatePdf(design: Design, results: Results, paper: SheetPaper): Uint8Array {
  const trace = traceOf(serializeDesign(design));
  const doc = pdfDocument(paper, { title: `${design.title}: templates`, subject: 'Parts at natural size', trace });
  const sides = [doc.internal.pageSize.getWidth(), doc.internal.pageSize.getHeight()];
  const pages = cuttingDrawings(design, results).flatMap(({ drawing }) => {
    const part = onPaper(drawing);
    const [upright, across] = [sides, sides.toReversed()].map(([width, height]) =>
      tilesOf(part, width - 2 * EDGE, height - 2 * EDGE - FOOT),
    );
    return across.length < upright.length ? across : upright;
  });
  pages.forEach((tile, i) => {
    doc.addPage([tile.width + 2 * EDGE, tile.height + 2 * EDGE + FOOT], tile.width > tile.height ? 'landscape' : 'portrait');
    printTile(doc, tile);
    printFoot(doc, tile, `trace ${trace} · page ${i + 1} of ${pages.length}`);
  });
  doc.deletePage(1);
  return pdfBytes(doc);
}

/** A part without its own rule and margin: every page has them. */
export const onPaper = ({ title, strokes }: Drawing): Drawing =>
  drawingOf(
    title,
    strokes.filter(({ name }) => name !== CHECK_RULE),
    LINE,
  );

function tilesOf(drawing: Drawing, width: number, height: number): Tile[] {
  const { bounds, strokes } = drawing;
  const [across, down] = [width - OVERLAP, height - OVERLAP];
  const columns = Math.max(1, Math.ceil((bounds.maxX - bounds.minX - OVERLAP) / across));
  const rows = Math.max(1, Math.ceil((bounds.maxY - bounds.minY - OVERLAP) / down));
  const segments = strokes.flatMap(segmentsOf);
  return Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    const place = rows * columns === 1 ? '' : `, row ${row + 1}, column ${column + 1}`;
    return { drawing, place, width, height, left: bounds.minX + column * across, top: bounds.maxY - row * down };
  }).filter(({ left, top }) =>
    segments.some(
      ([a, b]) =>
        Math.max(a[0], b[0]) >= left &&
        Math.min(a[0], b[0]) <= left + width &&
        Math.max(a[1], b[1]) >= top - height &&
        Math.min(a[1], b[1]) <= top,
    ),
  );
}

function segmentsOf(stroke: Stroke): [Point, Point][] {
  const points = pointsOf(stroke);
  return points.slice(1).map((p, i) => [points[i], p]);
}

function pointsOf(stroke: Stroke): Point[] {
  switch (stroke.kind) {
    case 'polyline':
      return stroke.closed ? [...stroke.points, stroke.points[0]] : stroke.points;
    case 'text':
      return textCorners(stroke);
    case 'circle':
      return arcPoints({ ...stroke, start: 0, sweep: 2 * Math.PI });
    case 'arc':
      return arcPoints(stroke);
  }
}

/** The drawing behind a window, and crosses in the middle of what it shares with its neighbours: theirs stand at the same places of the drawing. */
function printTile(doc: jsPDF, { drawing, left, top, width, height }: Tile): void {
  doc.saveGraphicsState();
  doc.rect(EDGE, EDGE, width, height, null);
  doc.clip();
  doc.discardPath();
  drawOn(doc, drawing, { left: EDGE - (left - drawing.bounds.minX), top: EDGE - (drawing.bounds.maxY - top), scale: 1 });
  doc.restoreGraphicsState();
  doc.setDrawColor('#777777');
  doc.setLineWidth(0.1);
  const ends = (length: number) => [EDGE + OVERLAP / 2, EDGE + length - OVERLAP / 2];
  for (const x of ends(width))
    for (const y of ends(height)) {
      doc.line(x - 4, y, x + 4, y);
      doc.line(x, y - 4, x, y + 4);
    }
}

/** What the page is, and a line to check the printer by. */
function printFoot(doc: jsPDF, { drawing, place, width, height }: Tile, facts: string): void {
  const [right, base] = [EDGE + width, EDGE + height + FOOT - 1];
  doc.setFontSize(10);
  doc.setTextColor('#000000');
  doc.text(doc.splitTextToSize(`${drawing.title}${place}`, width) as string[], EDGE, EDGE + height + 5);
  doc.text(facts, EDGE, base);
  doc.text('natural size: must measure 100 mm', right - 50, base - 1.5, { align: 'center' });
  doc.setDrawColor('#000000');
  doc.setLineWidth(0.2);
  doc.line(right - 100, base, right, base);
  for (const at of [right - 100, right]) doc.line(at, base - 2, at, base + 2);
}
