import fontUrl from '../assets/fonts/DejaVuSans.ttf?url';
import { reportPdf, sheetPdf, templatePdf, type Design, type Results } from '../core';

/** Set by the build. */
declare const GAPWRIGHT_VERSION: string;

const writers = { sheet: sheetPdf, report: reportPdf, templates: templatePdf };

export type DocumentName = keyof typeof writers;

/** A document as PDF bytes, with today's date and the font that has its signs. Loaded only when one is asked for. */
export async function printed(
  what: DocumentName,
  design: Design,
  results: Results,
  paper: 'a4' | 'letter',
  fileName = 'not saved',
): Promise<Uint8Array> {
  const font = await fetch(fontUrl);
  if (!font.ok) throw new Error(`the font for paper could not be read (${font.status})`);
  const fontBase64 = base64(new Uint8Array(await font.arrayBuffer()));
  return writers[what](design, results, { paper, fileName, date: today(), version: GAPWRIGHT_VERSION, fontBase64 });
}

function today(): string {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** In pieces, since a call takes only so many arguments. */
function base64(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 0x8000) text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(text);
}
