import { piecesOf, type Notation } from '../notation';
import { type Flow, LINE, POINT } from './page-flow';

/** A piece of mathematics, measured, and how to draw it with its base line's left end at a place. All lengths in mm. */
interface Box {
  width: number;
  ascent: number;
  descent: number;
  draw(x: number, y: number): void;
}

/** Shares of the type size. */
const ASCENT = 0.76;
const DESCENT = 0.24;
/** Height of the fraction stroke over the base line. */
const AXIS = 0.28;
const SMALL = 0.7;
const AROUND: Record<string, [before: number, after: number]> = {
  '⌊': [0.05, 0.05],
  '⌋': [0.05, 0.05],
  '|': [0.08, 0.08],
  ',': [0, 0.5],
  ';': [0, 0.5],
  '·': [0.14, 0.14],
};
const USUAL: [before: number, after: number] = [0.26, 0.26];

/** Lays a line of mathematics down the page, broken before its signs where it is too long. */
export function printFormula(flow: Flow, line: Notation, left: number, width: number, size: number): void {
  for (const { boxes, ascent, descent } of linesOf(flow, line, width, size)) {
    flow.room(ascent + descent);
    let x = left;
    for (const box of boxes) {
      box.draw(x, flow.y + ascent);
      x += box.width;
    }
    flow.y += ascent + descent;
  }
}

/** Height that `printFormula` takes on paper, and from its top to the first base line. [mm] */
export function formulaHeight(flow: Flow, line: Notation, width: number, size: number): { height: number; baseLine: number } {
  const lines = linesOf(flow, line, width, size);
  return { height: lines.reduce((sum, { ascent, descent }) => sum + ascent + descent, 0), baseLine: lines[0].ascent };
}

function linesOf(flow: Flow, line: Notation, width: number, size: number) {
  const em = size * POINT;
  const lines: Box[][] = [[]];
  let taken = 0;
  const put = (box: Box, whole = box.width) => {
    if (taken > 0 && (taken + box.width > width || (taken + whole > width && whole <= width))) {
      lines.push([]);
      taken = 0;
    }
    lines[lines.length - 1].push(box);
    taken += box.width;
  };
  for (const clause of clausesOf(piecesOf(line))) {
    const boxes = clause.map((parts) => {
      const box = boxOf(flow, { kind: 'row', parts }, size);
      // What cannot be broken is set smaller.
      return box.width > width ? boxOf(flow, { kind: 'row', parts }, (size * width) / box.width) : box;
    });
    const whole = boxes.reduce((sum, box) => sum + box.width, 0);
    boxes.forEach((box, i) => put(box, i === 0 ? whole : undefined));
  }
  const space = ((LINE - 1) / 2) * em;
  return lines.map((boxes) => ({
    boxes,
    ascent: Math.max(ASCENT * em, ...boxes.map(({ ascent }) => ascent)) + space,
    descent: Math.max(DESCENT * em, ...boxes.map(({ descent }) => descent)) + space,
  }));
}

/** Pieces that belong together: a sign of relation and all that stands on its right. */
function clausesOf(pieces: Notation[][]): Notation[][][] {
  const clauses: Notation[][][] = [];
  for (const piece of pieces) {
    const [first] = piece;
    if (clauses.length === 0 || (first.kind === 'sign' && /^[=≈≤≥>]$/.test(first.text))) clauses.push([piece]);
    else clauses[clauses.length - 1].push(piece);
  }
  return clauses;
}

function boxOf(flow: Flow, notation: Notation, size: number): Box {
  const em = size * POINT;
  switch (notation.kind) {
    case 'symbol': {
      const [letter, below] = notation.text.split('_');
      const base = lettersOf(flow, letter, size);
      return below === undefined ? base : beside([base, shifted(lettersOf(flow, below, size * SMALL), 0.2 * em)]);
    }
    case 'upright':
      return lettersOf(flow, notation.text, size);
    case 'sign': {
      const [before, after] = AROUND[notation.text] ?? USUAL;
      return beside([space(before * em), lettersOf(flow, notation.text, size), space(after * em)]);
    }
    case 'row': {
      const spaced = notation.parts.flatMap((part, i) => {
        const touches = i > 0 && part.kind !== 'sign' && part.kind !== 'bracket' && notation.parts[i - 1].kind !== 'sign';
        return touches ? [space(0.2 * em), boxOf(flow, part, size)] : [boxOf(flow, part, size)];
      });
      return beside(spaced);
    }
    case 'fraction':
      return fractionOf(flow, boxOf(flow, notation.over, size * 0.92), boxOf(flow, notation.under, size * 0.92), em);
    case 'raised': {
      const base = boxOf(flow, notation.of, size);
      return beside([base, shifted(boxOf(flow, notation.exponent, size * SMALL), -Math.max(0.36 * em, base.ascent - 0.42 * em))]);
    }
    case 'root':
      return rootOf(flow, boxOf(flow, notation.of, size), em);
    case 'bracket':
      return bracketOf(flow, boxOf(flow, notation.of, size), em);
    case 'large': {
      const mark = shifted(lettersOf(flow, notation.sign, size * (notation.sign.length > 1 ? 1 : 1.35)), 0.1 * em);
      const ends = [
        ...(notation.below ? [shifted(boxOf(flow, notation.below, size * SMALL), 0.35 * em)] : []),
        ...(notation.above ? [shifted(boxOf(flow, notation.above, size * SMALL), -0.62 * em)] : []),
      ];
      return beside([mark, stacked(ends), space(0.12 * em)]);
    }
  }
}

const space = (width: number): Box => ({ width, ascent: 0, descent: 0, draw: () => undefined });

function lettersOf(flow: Flow, text: string, size: number): Box {
  const em = size * POINT;
  return {
    width: flow.measure(text, size),
    ascent: ASCENT * em,
    descent: DESCENT * em,
    draw(x, y) {
      flow.doc.setFontSize(size);
      flow.doc.setTextColor('#000000');
      if (text) flow.doc.text(text, x, y);
    },
  };
}

function shifted(box: Box, down: number): Box {
  return { width: box.width, ascent: box.ascent - down, descent: box.descent + down, draw: (x, y) => box.draw(x, y + down) };
}

function beside(boxes: readonly Box[]): Box {
  return {
    width: boxes.reduce((sum, { width }) => sum + width, 0),
    ascent: Math.max(0, ...boxes.map(({ ascent }) => ascent)),
    descent: Math.max(0, ...boxes.map(({ descent }) => descent)),
    draw(x, y) {
      let at = x;
      for (const box of boxes) {
        box.draw(at, y);
        at += box.width;
      }
    },
  };
}

/** One over the other, left edges in line, each at its own height already. */
function stacked(boxes: readonly Box[]): Box {
  return {
    width: Math.max(0, ...boxes.map(({ width }) => width)),
    ascent: Math.max(0, ...boxes.map(({ ascent }) => ascent)),
    descent: Math.max(0, ...boxes.map(({ descent }) => descent)),
    draw: (x, y) => boxes.forEach((box) => box.draw(x, y)),
  };
}

function stroke({ doc }: Flow, em: number): void {
  doc.setDrawColor('#000000');
  doc.setLineWidth(0.045 * em);
  doc.setLineDashPattern([], 0);
}

function fractionOf(flow: Flow, above: Box, below: Box, em: number): Box {
  const width = Math.max(above.width, below.width) + 0.3 * em;
  // Letters that reach down keep clear of the stroke by their own descent.
  const [up, down] = [(AXIS + 0.06) * em + above.descent, (0.17 - AXIS) * em + below.ascent];
  return {
    width: width + 0.1 * em,
    ascent: up + above.ascent,
    descent: down + below.descent,
    draw(x, y) {
      above.draw(x + 0.05 * em + (width - above.width) / 2, y - up);
      below.draw(x + 0.05 * em + (width - below.width) / 2, y + down);
      stroke(flow, em);
      flow.doc.line(x + 0.05 * em, y - AXIS * em, x + 0.05 * em + width, y - AXIS * em);
    },
  };
}

function rootOf(flow: Flow, of: Box, em: number): Box {
  const sign = 0.55 * em;
  const ascent = of.ascent + 0.12 * em;
  return {
    width: sign + of.width + 0.1 * em,
    ascent: ascent + 0.05 * em,
    descent: of.descent,
    draw(x, y) {
      of.draw(x + sign, y);
      stroke(flow, em);
      const foot = of.descent - 0.04 * em;
      const steps: [number, number][] = [
        [0.12 * em, -0.07 * em],
        [0.16 * em, foot + 0.3 * em],
        [sign - 0.33 * em, -foot - ascent],
        [of.width + 0.1 * em, 0],
      ];
      flow.doc.lines(steps, x + 0.05 * em, y - 0.23 * em);
    },
  };
}

/** Round brackets as tall as what they hold. */
function bracketOf(flow: Flow, of: Box, em: number): Box {
  const room = 0.34 * em;
  const bow = 0.2 * em;
  const [top, height] = [of.ascent, of.ascent + of.descent];
  return {
    width: of.width + 2 * room,
    ascent: of.ascent,
    descent: of.descent,
    draw(x, y) {
      of.draw(x + room, y);
      stroke(flow, em);
      flow.doc.lines([[-bow, height * 0.3, -bow, height * 0.7, 0, height]], x + room - 0.06 * em, y - top);
      flow.doc.lines([[bow, height * 0.3, bow, height * 0.7, 0, height]], x + room + of.width + 0.06 * em, y - top);
    },
  };
}
