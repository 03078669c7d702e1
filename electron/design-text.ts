import { largestDesign } from './calls';

export const tooLarge = `it is larger than any design, ${largestDesign / 1e6} MB`;

/** The text of a design file's bytes; an error in words when they are no text this program would have written. */
export function designText(bytes: Uint8Array): string {
  if (bytes.byteLength > largestDesign) throw new Error(tooLarge);
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (cause) {
    throw new Error('it is not text in UTF-8', { cause });
  }
  // What is in UTF-16 and plain English otherwise passes for UTF-8.
  if (text.includes('\0')) throw new Error('it is not text in UTF-8');
  return text;
}
