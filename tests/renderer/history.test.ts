import { describe, expect, test } from 'vitest';
import { committed, historyOf, redone, settled, undone } from '../../renderer/state/history';

const named = (to: number) => (from: number) => `${from} → ${to}`;

describe('history', () => {
  test('undo and redo return to every state in turn, without end', () => {
    let history = historyOf(0);
    for (let i = 1; i <= 500; i++) history = committed(history, i, named(i));
    for (let i = 499; i >= 0; i--) {
      history = undone(history);
      expect(history.present).toBe(i);
    }
    expect(undone(history)).toBe(history);
    for (let i = 1; i <= 500; i++) history = redone(history);
    expect(history.present).toBe(500);
    expect(redone(history)).toBe(history);
  });

  test('typing in one box merges into one step, named from where it began', () => {
    let history = historyOf(60);
    history = committed(history, 6, named(6), 'turns');
    history = committed(history, 64, named(64), 'turns');
    expect(history.past.map((s) => s.name)).toEqual(['60 → 64']);
    expect(undone(history).present).toBe(60);
  });

  test('leaving the box ends the merging', () => {
    let history = committed(historyOf(60), 64, named(64), 'turns');
    history = settled(history);
    history = committed(history, 70, named(70), 'turns');
    expect(history.past.map((s) => s.name)).toEqual(['60 → 64', '64 → 70']);
  });

  test('another box begins another step', () => {
    let history = committed(historyOf(1), 2, named(2), 'a');
    history = committed(history, 3, named(3), 'b');
    expect(history.past).toHaveLength(2);
  });

  test('typing back to where it began leaves no step', () => {
    let history = committed(historyOf(60), 6, named(6), 'turns');
    history = committed(history, 60, named(60), 'turns');
    expect(history.past).toEqual([]);
    expect(history.present).toBe(60);
  });

  test('a change after undo forgets what was undone, a change to nothing does not', () => {
    let history = committed(committed(historyOf(1), 2, named(2)), 3, named(3));
    history = undone(history);
    expect(committed(history, 2, named(2)).future).toHaveLength(1);
    expect(committed(history, 9, named(9)).future).toEqual([]);
  });

  test('typing after an undo does not merge with the step undone', () => {
    let history = committed(historyOf(60), 64, named(64), 'turns');
    history = undone(history);
    history = committed(history, 70, named(70), 'turns');
    expect(history.past.map((s) => s.name)).toEqual(['60 → 70']);
  });
});
