import Box from '@mui/material/Box';
import { createElement, type ReactNode } from 'react';
import { piecesOf, plainText, type Notation } from '../../core';
import './mathematics.css';

/** A line of mathematics in MathML, which wraps before its signs where it is longer than the page. */
export function Mathematics({ line }: { line: Notation }) {
  return (
    <Box role="math" aria-label={plainText(line)} sx={{ display: 'flex', flexWrap: 'wrap', alignItems: 'center', rowGap: 0.5 }}>
      {piecesOf(line).map((piece, i) => (
        <Box key={i} component="span" aria-hidden sx={{ maxWidth: '100%', overflowX: 'auto', overflowY: 'hidden' }}>
          {createElement('math', { displaystyle: 'true' }, mathMl({ kind: 'row', parts: piece }, 0))}
        </Box>
      ))}
    </Box>
  );
}

/** One symbol within words, as in K_e. */
export function SymbolInText({ of }: { of: string }) {
  return createElement('math', null, mathMl({ kind: 'symbol', text: of }, 0));
}

/** Signs that stand between two things, also at the beginning of a piece. */
const between = /^[=≈≤≥>+−·]$/;

/** MathML of a notation; `key` because elements of a list need one. */
function mathMl(notation: Notation, key: number): ReactNode {
  const element = (name: string, ...children: Notation[]) => createElement(name, { key }, ...children.map(mathMl));
  switch (notation.kind) {
    case 'symbol': {
      const [letter = '', below] = notation.text.split('_');
      const base = createElement('mi', { key: 0 }, letter);
      return below === undefined
        ? createElement('mi', { key }, letter)
        : createElement('msub', { key }, base, createElement('mtext', { key: 1 }, below));
    }
    case 'upright':
      // MathML takes `mtext` for a space, and gives a sign beside it none of its own.
      return createElement('mn', { key }, notation.text);
    case 'sign':
      return createElement('mo', { key, ...(between.test(notation.text) ? { form: 'infix' } : { stretchy: 'false' }) }, notation.text);
    case 'row':
      return element('mrow', ...notation.parts);
    case 'fraction':
      return element('mfrac', notation.over, notation.under);
    case 'raised':
      return element('msup', notation.of, notation.exponent);
    case 'root':
      return element('msqrt', notation.of);
    case 'bracket':
      return createElement(
        'mrow',
        { key },
        createElement('mo', { key: 0 }, '('),
        mathMl(notation.of, 1),
        createElement('mo', { key: 2 }, ')'),
      );
    case 'large': {
      const sign = createElement('mo', { key: 0 }, notation.sign);
      const { below, above } = notation;
      if (!below) return createElement('mo', { key }, notation.sign);
      const name = notation.sign === '∫' ? (above ? 'msubsup' : 'msub') : above ? 'munderover' : 'munder';
      return createElement(name, { key }, sign, mathMl(below, 1), above && mathMl(above, 2));
    }
  }
}
