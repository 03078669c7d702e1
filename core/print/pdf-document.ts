import { jsPDF } from 'jspdf';

export interface SheetPaper {
  paper: 'a4' | 'letter';
  fileName: string;
  /** As in 2026-03-14. */
  date: string;
  /** DejaVu Sans as a TrueType file: the built-in fonts of PDF lack Ω, ° and ∅. */
  fontBase64: string;
  /** Of the program, as in 0.1.0. */
  version?: string;
}

/** An empty document in the given type, dated and numbered by what it is given, so that the same input makes the same bytes. */
export function pdfDocument({ paper, date, fontBase64 }: SheetPaper, about: { title: string; subject: string; trace: string }): jsPDF {
  const doc = new jsPDF({ unit: 'mm', format: paper, putOnlyUsedFonts: true, compress: true });
  doc.addFileToVFS('sheet.ttf', fontBase64);
  doc.addFont('sheet.ttf', 'sheet', 'normal');
  doc.setFont('sheet', 'normal');
  doc.setCreationDate(`D:${date.replaceAll('-', '')}000000+00'00'`);
  doc.setFileId(about.trace.repeat(4));
  doc.setDocumentProperties({ title: about.title, subject: about.subject, creator: 'Gapwright' });
  return doc;
}

export const pdfBytes = (doc: jsPDF): Uint8Array => new Uint8Array(doc.output('arraybuffer'));
