import { expect, test } from 'vitest';
import { isPressed, shortcutText } from '../../renderer/actions/keys';

const none = { key: '', code: '', ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

test('a shortcut wants exactly its own modifiers', () => {
  expect(isPressed('Ctrl+Z', { ...none, key: 'z', code: 'KeyZ', ctrlKey: true }, false)).toBe(true);
  expect(isPressed('Ctrl+Z', { ...none, key: 'Z', code: 'KeyZ', ctrlKey: true, shiftKey: true }, false)).toBe(false);
  expect(isPressed('Ctrl+Shift+Z', { ...none, key: 'Z', code: 'KeyZ', ctrlKey: true, shiftKey: true }, false)).toBe(true);
  expect(isPressed('Ctrl+Z', { ...none, key: 'z', code: 'KeyZ' }, false)).toBe(false);
});

test('Ctrl is ⌘ on a Mac, and Ctrl there is not', () => {
  expect(isPressed('Ctrl+S', { ...none, key: 's', code: 'KeyS', metaKey: true }, true)).toBe(true);
  expect(isPressed('Ctrl+S', { ...none, key: 's', code: 'KeyS', ctrlKey: true }, true)).toBe(false);
});

test('with Alt the place of the key counts, whatever it types there', () => {
  expect(isPressed('Alt+1', { ...none, key: '¡', code: 'Digit1', altKey: true }, true)).toBe(true);
  expect(isPressed('Alt+N', { ...none, key: '˜', code: 'KeyN', altKey: true }, true)).toBe(true);
});

test('shortcuts are written as the machine writes them', () => {
  expect(shortcutText('Ctrl+Shift+S', true)).toBe('⌘⇧S');
  expect(shortcutText('Ctrl+Shift+S', false)).toBe('Ctrl+Shift+S');
});
