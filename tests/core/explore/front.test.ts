import { expect, test } from 'vitest';
import { beats, createFront } from '../../../core/explore/front';
import { createRandom } from '../../../core/numeric/random';

test('one beats another that is nowhere better and somewhere worse', () => {
  expect(beats([1, 2], [1, 3])).toBe(true);
  expect(beats([1, 3], [1, 2])).toBe(false);
  expect(beats([1, 2], [1, 2])).toBe(false);
  expect(beats([0, 3], [1, 2])).toBe(false);
  expect(beats([1, 2], [Infinity, 2])).toBe(true);
});

test('equal ones stand side by side', () => {
  const front = createFront<string>();
  front.add('a', [1, 2]);
  front.add('b', [1, 2]);
  front.add('c', [2, 2]);
  expect([...front.items].sort()).toEqual(['a', 'b']);
});

test.each([2, 3, 5])(
  'of 2000 random vectors in %i respects it keeps exactly those that no other beats, in whatever order they come',
  (size) => {
    const random = createRandom(size);
    // Coarse steps, so that many tie.
    const all = Array.from({ length: 2000 }, () => Array.from({ length: size }, () => Math.floor(12 * random.uniform())));
    const front = createFront<number>();
    all.forEach((vector, i) => front.add(i, vector));
    const backwards = createFront<number>();
    for (let i = all.length - 1; i >= 0; i--) backwards.add(i, all[i]);
    const expected = all.map((_, i) => i).filter((i) => !all.some((other) => beats(other, all[i])));
    const rising = (items: readonly number[]) => [...items].sort((a, b) => a - b);
    expect(rising(front.items)).toEqual(expected);
    expect(rising(backwards.items)).toEqual(expected);
  },
);
