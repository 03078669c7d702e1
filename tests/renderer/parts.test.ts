import { describe, expect, test } from 'vitest';
import { fileName } from '../../renderer/actions/file-name';
import { rangeError } from '../../renderer/parts/quantity-text';
import { movement } from '../../renderer/parts/result-list';
import { valueAt, withValueAt } from '../../renderer/path';

const shown = (v: number) => `${v} mm`;

describe('a number out of range', () => {
  test('is told the range and itself, in the user’s unit', () => {
    expect(rangeError(9, { min: 1, max: 5 }, shown)).toBe('Must be between 1 mm and 5 mm; this is 9 mm.');
    expect(rangeError(0, { min: 1, max: 5 }, shown)).toContain('0 mm');
    for (const value of [1, 3, 5]) expect(rangeError(value, { min: 1, max: 5 }, shown)).toBeNull();
  });

  test('that must be whole or even is told so', () => {
    expect(rangeError(2.5, { min: 1, max: 5, whole: 'any' }, shown)).toBe('Must be a whole number, such as 2 mm or 3 mm; this is 2.5 mm.');
    expect(rangeError(3, { min: 1, max: 5, whole: 'even' }, shown)).toBe('Must be an even number, such as 2 mm or 4 mm; this is 3 mm.');
    expect(rangeError(4.5, { min: 1, max: 5, whole: 'even' }, shown)).toContain('such as 4 mm; this is 4.5');
    expect(rangeError(4, { min: 1, max: 5, whole: 'even' }, shown)).toBeNull();
  });
});

describe('a result that moved', () => {
  test('says by how much, and keeps quiet about less than a reader could see', () => {
    expect(movement(12, 10)).toBe(2);
    expect(movement(10, 12)).toBe(-2);
    expect(movement(10, 10.0001)).toBeNull();
    expect(movement(0, 0)).toBeNull();
  });

  test('from or to nothing did not move', () => {
    expect(movement(null, 3)).toBeNull();
    expect(movement(3, null)).toBeNull();
  });
});

describe('paths', () => {
  test('reach into what is there and stop where it ends', () => {
    expect(valueAt({ a: { b: 1 } }, 'a.b')).toBe(1);
    expect(valueAt({ a: { b: 1 } }, 'a.c.d')).toBeUndefined();
    expect(valueAt(undefined, 'a')).toBeUndefined();
  });

  test('a change leaves the old as it was, and undefined takes an entry out', () => {
    const old = { a: { b: 1, c: 2 }, d: {} };
    const changed = withValueAt(old, 'a.b', 3);
    expect(changed).toEqual({ a: { b: 3, c: 2 }, d: {} });
    expect(changed.d).toBe(old.d);
    expect(old.a.b).toBe(1);
    expect(withValueAt(old, 'a.b', undefined)).toEqual({ a: { c: 2 }, d: {} });
  });
});

test('a title becomes a file name that no system dislikes', () => {
  expect(fileName('Hill cabin, 24 V', 'gapwright')).toBe('Hill cabin, 24 V.gapwright');
  expect(fileName('a/b\\c:d*e?"<>|\n', 'pdf')).toBe('a b c d e.pdf');
  expect(fileName('  ..', 'pdf')).toBe('design.pdf');
  expect(fileName('', 'pdf')).toBe('design.pdf');
  expect(fileName('x'.repeat(300), 'pdf').length).toBeLessThan(100);
});
