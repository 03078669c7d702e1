/**
 * A short mark of a text, so that a sheet on the bench can be matched with the file it came from.
 *
 * @param text  Any text. [-]
 * @returns     Eight hexadecimal digits: 32-bit FNV-1a over the text's 16-bit units, low byte first. [-]
 *
 * Omits     any protection against somebody who wants two texts with one mark.
 * Source    Fowler, Noll and Vo's hash, IETF RFC 9923 (from memory): offset 2166136261, prime 16777619.
 * Checked   tests/core/sheet/trace.test.ts
 */
export function traceOf(text: string): string {
  let hash = 2166136261;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    hash = Math.imul(hash ^ (unit & 255), 16777619);
    hash = Math.imul(hash ^ (unit >> 8), 16777619);
  }
  return (hash >>> 0).toString(16).toUpperCase().padStart(8, '0');
}
