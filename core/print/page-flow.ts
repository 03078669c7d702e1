import type { jsPDF } from 'jspdf';

export const MARGIN = 16;
const FOOT = 14;

/** Type sizes in points: the sheet is read at arm's length. */
export const TYPE = { title: 20, longTitle: 14, machine: 12, heading: 15, large: 13, body: 11, foot: 10, small: 9 };
export const POINT = 25.4 / 72;
export const LINE = 1.3;

/** A pen that goes down the page and turns it when there is no room left. All lengths in mm. */
export interface Flow {
  readonly doc: jsPDF;
  readonly width: number;
  /** Height between the margins of an empty page. */
  readonly height: number;
  /** Where the next block begins, from the top of the page. */
  y: number;
  /** Height left on this page. */
  left(): number;
  /** Turns the page unless so much height is left. True when it did. */
  room(height: number): boolean;
  /** Writes lines from y downwards, their left edge at x, and returns the height taken. */
  write(lines: string[], x: number, y: number, size: number): number;
  /** Breaks a text into lines at most `width` wide. */
  wrap(text: string, width: number, size: number): string[];
  measure(text: string, size: number): number;
}

export const lineHeight = (size: number) => size * POINT * LINE;
/** From the top of a line to the foot of its letters. */
export const baseOf = (size: number) => size * POINT * 1.05;

export function flowOn(doc: jsPDF): Flow {
  const page = doc.internal.pageSize;
  const bottom = page.getHeight() - MARGIN - FOOT;
  return {
    doc,
    width: page.getWidth() - 2 * MARGIN,
    height: bottom - MARGIN,
    y: MARGIN,
    left() {
      return bottom - this.y;
    },
    room(height) {
      if (height <= this.left() + 1e-6 || this.y === MARGIN) return false;
      doc.addPage();
      this.y = MARGIN;
      return true;
    },
    write(lines, x, y, size) {
      doc.setFontSize(size);
      doc.setTextColor('#000000');
      lines.forEach((line, i) => {
        if (line) doc.text(line, x, y + baseOf(size) + i * lineHeight(size));
      });
      return lines.length * lineHeight(size);
    },
    wrap(text, width, size) {
      doc.setFontSize(size);
      return text.split('\n').flatMap((paragraph) => doc.splitTextToSize(paragraph, width) as string[]);
    },
    measure(text, size) {
      doc.setFontSize(size);
      return doc.getTextWidth(text);
    },
  };
}

/** A line across the page. */
export function rule({ doc, width }: Flow, y: number, thick: number): void {
  doc.setDrawColor('#000000');
  doc.setLineWidth(thick);
  doc.line(MARGIN, y, MARGIN + width, y);
}

/** A box to tick or to write in. */
export function frame({ doc }: Flow, x: number, y: number, width: number, height: number): void {
  doc.setDrawColor('#000000');
  doc.setLineWidth(0.3);
  doc.rect(x, y, width, height);
}
