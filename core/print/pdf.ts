import type { jsPDF } from 'jspdf';
import type { Results } from '../chain/results';
import type { Design } from '../design/schema';
import { windingSheet } from '../sheet/build';
import type { ReportDocument } from '../sheet/document';
import { calculationReport } from '../sheet/report';
import { flowOn, MARGIN, TYPE } from './page-flow';
import { printBlocks } from './pdf-blocks';
import { pdfBytes, pdfDocument, type SheetPaper } from './pdf-document';

export type { SheetPaper } from './pdf-document';

/** The winding sheet as a PDF file. The same design, paper, name and date give the same bytes. */
export function sheetPdf(design: Design, results: Results, paper: SheetPaper): Uint8Array {
  return printed(windingSheet(design, results), paper);
}

/** The calculation report as a PDF file, likewise. */
export function reportPdf(design: Design, results: Results, paper: SheetPaper): Uint8Array {
  return printed(calculationReport(design, results), paper);
}

function printed(sheet: ReportDocument, paper: SheetPaper): Uint8Array {
  const doc = pdfDocument(paper, { title: sheet.title, subject: sheet.machine, trace: sheet.trace });
  const flow = flowOn(doc);
  const titleSize = flow.wrap(sheet.title, flow.width, TYPE.title).length > 2 ? TYPE.longTitle : TYPE.title;
  flow.y += flow.write(flow.wrap(sheet.title, flow.width, titleSize), MARGIN, flow.y, titleSize) + 1;
  flow.y += flow.write(flow.wrap(sheet.machine, flow.width, TYPE.machine), MARGIN, flow.y, TYPE.machine) + 2;
  printBlocks(flow, sheet.blocks);
  footers(doc, sheet, paper);
  return pdfBytes(doc);
}

function footers(doc: jsPDF, sheet: Pick<ReportDocument, 'trace'>, { fileName, date, version }: SheetPaper): void {
  const pages = doc.getNumberOfPages();
  const { pageSize } = doc.internal;
  const [right, base] = [pageSize.getWidth() - MARGIN, pageSize.getHeight() - MARGIN];
  const facts = [date, `Gapwright${version ? ` ${version}` : ''}`, `trace ${sheet.trace}`].join(' · ');
  doc.setFontSize(TYPE.foot);
  doc.setTextColor('#000000');
  for (let page = 1; page <= pages; page++) {
    doc.setPage(page);
    doc.setDrawColor('#000000');
    doc.setLineWidth(0.2);
    doc.line(MARGIN, base - 9.5, right, base - 9.5);
    const number = `page ${page} of ${pages}`;
    const room = right - MARGIN - doc.getTextWidth(number) - 6;
    doc.text(shortened(doc, fileName, right - MARGIN), MARGIN, base - 5);
    doc.text(shortened(doc, facts, room), MARGIN, base);
    doc.text(number, right - doc.getTextWidth(number), base);
  }
}

/** A name cut in the middle, so that its beginning and its ending stay. */
function shortened(doc: jsPDF, name: string, width: number): string {
  let kept = name;
  for (let keep = name.length - 1; doc.getTextWidth(kept) > width && keep > 2; keep--)
    kept = `${name.slice(0, Math.ceil(keep / 2))}…${name.slice(name.length - Math.floor(keep / 2))}`;
  return kept;
}
