import { expect, test } from 'vitest';
import { plainText, written } from '../../core/notation';

test('a sum in an exponent is set part by part, a sign of its own between them', () => {
  expect(written('x^k−1')).toEqual({
    kind: 'raised',
    of: { kind: 'symbol', text: 'x' },
    exponent: {
      kind: 'row',
      parts: [
        { kind: 'symbol', text: 'k' },
        { kind: 'sign', text: '−' },
        { kind: 'upright', text: '1' },
      ],
    },
  });
  expect(plainText(written('f = ( { v / c } )^k−1'))).toBe('f = (v / c)^(k − 1)');
});
