import type { Action } from './action';

interface Keys {
  key: string;
  code: string;
  ctrlKey: boolean;
  metaKey: boolean;
  shiftKey: boolean;
  altKey: boolean;
}

/** Whether a pressed key is an action's shortcut. With Alt the key's place counts, since Alt changes what it types. */
export function isPressed(shortcut: string, event: Keys, mac: boolean): boolean {
  const parts = shortcut.split('+');
  const key = parts.at(-1) ?? '';
  const wants = (part: string) => parts.includes(part);
  const command = mac ? event.metaKey : event.ctrlKey;
  const other = mac ? event.ctrlKey : event.metaKey;
  if (other || command !== wants('Ctrl') || event.shiftKey !== wants('Shift') || event.altKey !== wants('Alt')) return false;
  if (wants('Alt')) return event.code === `Key${key}` || event.code === `Digit${key}`;
  return event.key.toUpperCase() === key;
}

/** A shortcut as this machine writes it. */
export function shortcutText(shortcut: string, mac: boolean): string {
  if (!mac) return shortcut;
  return shortcut.replace('Ctrl', '⌘').replace('Shift', '⇧').replace('Alt', '⌥').replaceAll('+', '');
}

/** Listens for every action's shortcut. Returns how to stop. */
export function listenForKeys(actions: readonly Action[], mac: boolean, perform: (action: Action) => void): () => void {
  const listener = (event: KeyboardEvent) => {
    const action = actions.find((a) => a.shortcut !== undefined && isPressed(a.shortcut, event, mac));
    if (!action) return;
    event.preventDefault();
    perform(action);
  };
  window.addEventListener('keydown', listener);
  return () => window.removeEventListener('keydown', listener);
}
