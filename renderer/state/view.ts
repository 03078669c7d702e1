import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { UnitPreferences } from '../units';
import type { OwnPreset } from './own-presets';
import type { RecentDesign } from './recent';

export type ThemeChoice = 'system' | 'light' | 'dark';
export type Paper = 'a4' | 'letter';

export interface Message {
  severity: 'success' | 'error';
  text: string;
  /** Details one to a line. */
  lines?: string[];
}

export interface ViewState extends UnitPreferences {
  theme: ThemeChoice;
  paper: Paper;
  worksheet: string;
  /** Rows of tables that the user keeps. */
  ownPresets: OwnPreset[];
  /** Designs last opened or saved. */
  recent: RecentDesign[];
  message: Message | null;
  /** The result whose working is open. */
  working: string | null;
  /** A choice to make before something is lost, or a list to choose from. */
  dialog:
    | { kind: 'discard'; go: () => void }
    | { kind: 'start' }
    | { kind: 'demos' }
    | { kind: 'recent' }
    | { kind: 'to-heed' }
    | { kind: 'comparison' }
    | { kind: 'recovery'; text: string }
    | null;
}

export const viewStore = createStore<ViewState>(() => ({
  length: 'mm',
  wire: 'metric',
  temperature: 'C',
  theme: 'system',
  paper: 'a4',
  worksheet: 'magnets',
  ownPresets: [],
  recent: [],
  message: null,
  working: null,
  dialog: null,
}));

export function useView<T>(select: (state: ViewState) => T): T {
  return useStore(viewStore, select);
}

export function setView(change: Partial<ViewState>): void {
  viewStore.setState(change);
}

export function unitPreferences({ length, wire, temperature }: ViewState): UnitPreferences {
  return { length, wire, temperature };
}
