import type { jsPDF } from 'jspdf';
import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { serializeDesign } from '../design/serialize';
import { arcPoints } from '../sheet/bounds';
import { cuttingDrawings } from '../sheet/cutting-drawings';
import type { Drawing, Point, Stroke } from '../sheet/drawing';
import { textCorners } from '../sheet/text-size';
import { traceOf } from '../sheet/trace';
import { pdfBytes, pdfDocument, type SheetPaper } from './pdf-document';
import { drawOn } from './pdf-drawing';

/** Edge a printer does not reach, and what neighbouring pages share for gluing. [mm] */
const EDGE = 12;
const OVERLAP = 10;
/** Below the tile: what the page is. [mm] */
const FOOT = 10;

interface Tile {
  row: number;
  column: number;
  /** Upper left corner in the drawing. [mm] */
  left: number;
  top: number;
}

/** The parts to cut at natural size, spread over as many pages as each needs. Pages that would stay empty are left out. */
export function templatePdf(design: Design, results: Results, paper: SheetPaper): Uint8Array {
  const trace = traceOf(serializeDesign(design));
  const doc = pdfDocument(paper, { title: `${design.title}: templates`, subject: 'Parts at natural size', trace });
  const [width, height] = [doc.internal.pageSize.getWidth() - 2 * EDGE, doc.internal.pageSize.getHeight() - 2 * EDGE - FOOT];
  const pages = cuttingDrawings(design, results).flatMap(({ drawing }) => {
    const tiles = tilesOf(drawing, width, height);
    return tiles.map((tile) => ({ drawing, tile, pages: tiles.length }));
  });
  pages.forEach(({ drawing, tile, pages: count }, i) => {
    if (i > 0) doc.addPage();
    printTile(doc, drawing, tile, width, height);
    const place = count === 1 ? '' : `, row ${tile.row + 1}, column ${tile.column + 1}`;
    doc.setFontSize(10);
    doc.setTextColor('#000000');
    doc.text(`${drawing.title}${place}. Natural size: the line below must measure 100 mm.`, EDGE, EDGE + height + 5);
    doc.text(`trace ${trace} · page ${i + 1} of ${pages.length}`, EDGE, EDGE + height + 10);
    checkRule(doc, EDGE + width - 100, EDGE + height + 9);
  });
  return pdfBytes(doc);
}

function tilesOf({ bounds, strokes }: Drawing, width: number, height: number): Tile[] {
  const [across, down] = [width - OVERLAP, height - OVERLAP];
  const columns = Math.max(1, Math.ceil((bounds.maxX - bounds.minX - OVERLAP) / across));
  const rows = Math.max(1, Math.ceil((bounds.maxY - bounds.minY - OVERLAP) / down));
  const segments = strokes.flatMap(segmentsOf);
  return Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    return { row, column, left: bounds.minX + column * across, top: bounds.maxY - row * down };
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

/** The drawing behind a window, and marks at the window's corners to lay the next page against. */
function printTile(doc: jsPDF, drawing: Drawing, { left, top }: Tile, width: number, height: number): void {
  doc.saveGraphicsState();
  doc.rect(EDGE, EDGE, width, height, null);
  doc.clip();
  doc.discardPath();
  drawOn(doc, drawing, { left: EDGE - (left - drawing.bounds.minX), top: EDGE - (drawing.bounds.maxY - top), scale: 1 });
  doc.restoreGraphicsState();
  doc.setDrawColor('#777777');
  doc.setLineWidth(0.1);
  for (const x of [EDGE, EDGE + width])
    for (const y of [EDGE, EDGE + height]) {
      doc.line(x - 4, y, x + 4, y);
      doc.line(x, y - 4, x, y + 4);
    }
}

function checkRule(doc: jsPDF, x: number, y: number): void {
  doc.setDrawColor('#000000');
  doc.setLineWidth(0.2);
  doc.line(x, y, x + 100, y);
  for (const at of [x, x + 100]) doc.line(at, y - 2, at, y + 2);
}
