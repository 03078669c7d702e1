import { expect, test } from 'vitest';
import { FUSE_RATINGS, fuseRating } from '../../../core/charging/fuse';

// By hand: 40 A · 1.25 = 50 A; 41 A wants 51.25 A, the next rating is 63 A.
test('a fuse stands a quarter more than the lasting current, at the next rating', () => {
  expect(fuseRating(40)).toBe(50);
  expect(fuseRating(41)).toBe(63);
});

test('beyond the largest there is none', () => expect(fuseRating(2000)).toBeUndefined());

test('ratings rise', () => expect([...FUSE_RATINGS].sort((a, b) => a - b)).toEqual(FUSE_RATINGS));
