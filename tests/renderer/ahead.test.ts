import { expect, test } from 'vitest';
import type { Design } from '../../core';
import { withValueAt } from '../../renderer/path';
import { createAhead } from '../../renderer/state/ahead';
import { demo } from '../demo';

const cabin = demo('hill-cabin');
const turns = (n: number): Design => withValueAt(cabin, 'winding.turns', n);

/** A solver that answers with the turns when told to, in order. */
function pretended() {
  const asked: number[] = [];
  const waiting: (() => void)[] = [];
  const solve = ({ winding }: Design) => {
    asked.push(winding.turns);
    return new Promise<number>((resolve) => waiting.push(() => resolve(winding.turns)));
  };
  const answerOne = async () => {
    waiting.shift()?.();
    await new Promise((resolve) => setTimeout(resolve));
  };
  return { asked, solve, answerOne };
}

test('steps to come are worked out one after another, three of them, and are at hand', async () => {
  const { asked, solve, answerOne } = pretended();
  const ahead = createAhead(solve);
  for (const n of [60, 61]) ahead.follow(turns(n));
  expect(asked).toEqual([]);
  ahead.follow(turns(62));
  expect(asked).toEqual([63]);
  expect(ahead.answerTo(turns(63))).toBeUndefined();
  for (let i = 0; i < 3; i++) await answerOne();
  expect(asked).toEqual([63, 64, 65]);
  expect(ahead.answerTo(turns(63))).toBe(63);
  expect(ahead.answerTo(turns(64))).toBeUndefined();
  ahead.follow(turns(63));
  expect(asked).toEqual([63, 64, 65, 66]);
  expect(ahead.answerTo(turns(64))).toBe(64);
});

test('a turn elsewhere drops what was worked out, and asks for no more of it', async () => {
  const { asked, solve, answerOne } = pretended();
  const ahead = createAhead(solve);
  for (const n of [60, 61, 62]) ahead.follow(turns(n));
  await answerOne();
  ahead.follow(turns(50));
  expect(ahead.answerTo(turns(63))).toBeUndefined();
  await answerOne();
  expect(asked).toEqual([63, 64]);
  ahead.follow(turns(49));
  ahead.follow(turns(48));
  expect(asked).toEqual([63, 64, 47]);
});

test('a step that comes before it is worked out is followed all the same', async () => {
  const { asked, solve, answerOne } = pretended();
  const ahead = createAhead(solve);
  for (const n of [60, 61, 62, 63]) ahead.follow(turns(n));
  await answerOne();
  expect(asked).toEqual([63, 64]);
  await answerOne();
  expect(ahead.answerTo(turns(64))).toBe(64);
});

test('nothing is asked for beyond what an entry may be', () => {
  const { asked, solve } = pretended();
  const ahead = createAhead(solve);
  for (const n of [3, 2, 1]) ahead.follow(turns(n));
  expect(asked).toEqual([]);
});
