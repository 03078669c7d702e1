import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { CAP_HEIGHT } from '../../../core/sheet/text-size';
import type { WordBox } from '../sheet/boxes';

const require = createRequire(import.meta.url);

export const fontBase64 = readFileSync(require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')).toString('base64');

export interface Word extends WordBox {
  /** Type size in points. */
  size: number;
}

export interface Page {
  width: number;
  height: number;
  words: Word[];
}

/** What a reader program finds on the pages, in points from the lower left corner. */
export async function readPdf(bytes: Uint8Array): Promise<Page[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: Page[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent();
    const words = items.flatMap((item): Word[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [a, b, , , x, y] = item.transform as [number, number, number, number, number, number];
      const size = Math.hypot(a, b);
      const [cos, sin] = [a / size, b / size];
      const corner = (along: number, up: number): [number, number] => [x + along * cos - up * sin, y + along * sin + up * cos];
      // From the depth of a g to the height of a capital.
      const [low, high] = [-0.2 * size, CAP_HEIGHT * size];
      return [{ words: item.str, size, corners: [corner(0, low), corner(item.width, low), corner(item.width, high), corner(0, high)] }];
    });
    pages.push({ width, height, words });
  }
  await document.destroy();
  return pages;
}

/** Words without their spaces, and with one of the two characters that are written µ. */
export const squeezed = (text: string) => text.replaceAll('\u03bc', '\u00b5').replace(/\s+/g, '');
