import { expect, test } from 'vitest';
import { passing } from '../../../core/numeric/passing';

// Between 2 and 4 from 10 to 30: 25 at 2 + 2 · 15/20 = 3.5. From nothing at 0 to 10 at 2: 5 at 1.
test.each([
  [25, 3.5],
  [5, 1],
  [10, 2],
])('%i is passed at %f', (most, place) => expect(passing([2, 4, 6], [10, 30, 20], most)).toBeCloseTo(place, 12));

test('what never comes is never passed', () => expect(passing([2, 4, 6], [10, 30, 20], 30)).toBeUndefined());
