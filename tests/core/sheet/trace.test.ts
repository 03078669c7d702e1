import { expect, it } from 'vitest';
import { traceOf } from '../../../core/sheet/trace';

// 811C9DC5 is FNV-1a's published value for no bytes; the others come from a few lines of Python over text.encode('utf-16-le').
it.each([
  ['', '811C9DC5'],
  ['a', '2B24D044'],
  ['gapwright Ω', '16E8AC04'],
])('the trace of %j is %s', (text, trace) => {
  expect(traceOf(text)).toBe(trace);
});
