import type { Point, Stroke } from './drawing';

type TextStroke = Extract<Stroke, { kind: 'text' }>;

/** Cap height over font size of DejaVu Sans: 1493 of 2048 units, from the font's OS/2 table. */
export const CAP_HEIGHT = 1493 / 2048;
/** Cap height in drawings that are made at the size of the paper: 10.5 point type. [mm] */
export const PAPER_LETTER = 2.7;
/** How far letters such as g reach below the base line, over the cap height. */
const DESCENT = 0.33;

/** Advance widths of DejaVu Sans over the font size, rounded up to three classes; a drawing must know its size before a font is at hand. */
function advance(char: string): number {
  if (/[mMWw@%ΩQ→←…—☐]/.test(char)) return 0.98;
  if (/[iljI.,:;|!'’()[\]\sft]/.test(char)) return 0.42;
  return /[A-Z]/.test(char) ? 0.76 : 0.645;
}

/** Width of a line of text of cap height `size`, on the safe side. [mm] */
export function textWidth(text: string, size: number): number {
  return ([...text].reduce((sum, char) => sum + advance(char), 0) * size) / CAP_HEIGHT;
}

/** Corners of the box round a text, its base line turned by its angle. [mm] */
export function textCorners({ at, text, size, anchor, angle = 0 }: TextStroke): Point[] {
  const width = textWidth(text, size);
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return (
    [
      [left, -DESCENT * size],
      [left + width, -DESCENT * size],
      [left + width, size],
      [left, size],
    ] as Point[]
  ).map(([x, y]) => [at[0] + x * cos - y * sin, at[1] + x * sin + y * cos]);
}
