import type { jsPDF } from 'jspdf';

export const MARGIN = 16;
const FOOT = 14;

/** Type sizes in points: the sheet is read at arm's length. */
export const TYPE = { title: 20, machine: 12, heading: 15, body: 11, foot: 10 };
const POINT = 25.4 / 72;
export const LINE = 1.3;

/** A pen that goes down the page and turns it when there is no room left. All lengths in mm. */
export interface Flow {
  readonly doc: jsPDF;
  readonly width: number;
  /** Height between the margins of an empty page. */
  readonly height: number;
  /** Where the next block begins, from the top of the page. */
  y: number;
  /** Turns the page unless so much height is left. True when it did. */
  room(height: number): boolean;
  /** Writes lines from y downwards, their left edge at x, and returns the height taken. */
  write(lines: string[], x: number, y: number, size: number): number;
  /** Breaks a text into lines at most `width` wide. */
  wrap(text: string, width: number, size: number): string[];
}

export const lineHeight = (size: number) => size * POINT * LINE;

export function flowOn(doc: jsPDF): Flow {
  const page = doc.internal.pageSize;
  const bottom = page.getHeight() - MARGIN - FOOT;
  return {
    doc,
    width: page.getWidth() - 2 * MARGIN,
    height: bottom - MARGIN,
    y: MARGIN,
    room(height) {
      if (this.y + height <= bottom + 1e-6 || this.y === MARGIN) return false;
      doc.addPage();
      this.y = MARGIN;
      return true;
    },
    write(lines, x, y, size) {
      doc.setFontSize(size);
      doc.setTextColor('#000000');
      lines.forEach((line, i) => {
        if (line) doc.text(line, x, y + size * POINT * 1.05 + i * lineHeight(size));
      });
      return lines.length * lineHeight(size);
    },
    wrap(text, width, size) {
      doc.setFontSize(size);
      return text.split('\n').flatMap((paragraph) => doc.splitTextToSize(paragraph, width) as string[]);
    },
  };
}
