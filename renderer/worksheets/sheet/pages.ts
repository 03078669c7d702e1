import { getDocument, PDFWorker, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** One thread for every document that is read; a document that had its own would take it along when it is given up. */
const worker = PDFWorker.create({
  port: new Worker(new URL('pdfjs-dist/legacy/build/pdf.worker.min.mjs', import.meta.url), { type: 'module', name: 'pages' }),
});

export type Pages = PDFDocumentProxy;

/** A document read back from the very bytes that are saved. Its letters are drawn as outlines, so that no font is put into the page. */
export const pagesOf = (bytes: Uint8Array): Promise<Pages> =>
  getDocument({ data: bytes, worker, disableFontFace: true, isEvalSupported: false, verbosity: 0 }).promise;

/** Pixels of the picture to a point of the paper, on a screen of ordinary density: twice what a page is shown at, for thin lines. */
const SHARPNESS = 2;

/** One page as a picture and as words. */
export async function pageOf(pages: Pages, number: number): Promise<{ picture: HTMLCanvasElement; words: string }> {
  const page = await pages.getPage(number);
  const viewport = page.getViewport({ scale: SHARPNESS * Math.max(1, window.devicePixelRatio) });
  const picture = document.createElement('canvas');
  picture.width = Math.round(viewport.width);
  picture.height = Math.round(viewport.height);
  await page.render({ canvas: picture, viewport }).promise;
  const { items } = await page.getTextContent();
  return { picture, words: items.map((item) => ('str' in item ? item.str : '')).join(' ') };
}
