import { setView, viewStore, type ThemeChoice } from '../state/view';
import { always, type Action } from './action';

const words: Record<ThemeChoice, string> = { system: 'as the system', light: 'light', dark: 'dark' };
const following: Record<ThemeChoice, ThemeChoice> = { system: 'light', light: 'dark', dark: 'system' };
const next = () => following[viewStore.getState().theme];

export const theme: Action = {
  id: 'theme',
  label: () => `Colours: ${words[viewStore.getState().theme]}; next ${words[next()]}`,
  shortcut: 'Alt+T',
  group: 'View',
  enabled: always,
  perform: () => setView({ theme: next() }),
};
